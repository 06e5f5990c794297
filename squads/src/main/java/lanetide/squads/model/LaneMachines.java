package lanetide.squads.model;

/**
 * The centre's lane machines.
 *
 * @param count machines that work side by side, at least 1
 * @param stripMsPerLane time to clean a lane (ms), at least 0
 * @param oilMsPerLane time to oil a lane (ms), at least 0. Cleaning and oiling one lane takes under two minutes (common
 *     practice, no source)
 */
public record LaneMachines(int count, long stripMsPerLane, long oilMsPerLane) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public LaneMachines {
        if (count < 1 || stripMsPerLane < 0 || oilMsPerLane < 0) {
            throw new IllegalArgumentException("lane machines: count " + count + " must be at least 1, times "
                    + stripMsPerLane + " ms and " + oilMsPerLane + " ms at least 0");
        }
    }
}
