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

    /**
     * How long they take over some lanes: rounds of all machines times the time of a lane.
     *
     * @param lanes number of lanes, at least 1
     * @param conditioning what is done to them
     * @return the time (ms); 0 for nothing done
     */
    public long durationMs(int lanes, Conditioning conditioning) {
        long rounds = (lanes - 1L) / count + 1;
        return switch (conditioning) {
            case NONE -> 0;
            case STRIP_AND_OIL -> rounds * (stripMsPerLane + oilMsPerLane);
            case OIL_OVER -> rounds * oilMsPerLane;
        };
    }
}
