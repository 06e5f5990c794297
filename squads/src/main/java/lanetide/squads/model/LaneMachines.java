package lanetide.squads.model;

import java.util.Map;
import lanetide.oilflow.film.LaidRatio;

/**
 * The centre's lane machines: either such as clean and oil a lane in one pass, or cleaners and oilers apart.
 *
 * @param combined machines that clean and oil, at least 1 where there are no others, else 0
 * @param cleaners machines that only clean, at least 1 where {@code combined} is 0, else 0
 * @param oilers machines that only oil, at least 1 where {@code combined} is 0, else 0
 * @param stripMsPerLane time to clean a lane (ms), at least 0
 * @param oilMsPerLane time to oil a lane (ms), at least 0. Cleaning and oiling one lane takes under two minutes (trade
 *     article on dual patterns, 2008-09)
 * @param walkMsPerPair time to move a machine past two lanes (ms), at least 0
 * @param laid what they lay on a lane, of what they are set to, by lane number; on lanes that are missing all of it
 */
public record LaneMachines(
        int combined,
        int cleaners,
        int oilers,
        long stripMsPerLane,
        long oilMsPerLane,
        long walkMsPerPair,
        Map<Integer, LaidRatio> laid) {
    /** One machine at the times used where a scenario says nothing (assumption). */
    public static final LaneMachines USUAL = new LaneMachines(1, 0, 0, 45_000, 45_000, 10_000);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public LaneMachines {
        laid = Map.copyOf(laid);
        boolean sound = combined >= 1 ? cleaners == 0 && oilers == 0 : combined == 0 && cleaners >= 1 && oilers >= 1;
        if (!sound || Math.min(stripMsPerLane, Math.min(oilMsPerLane, walkMsPerPair)) < 0) {
            throw new IllegalArgumentException("lane machines: " + combined + " that clean and oil, " + cleaners
                    + " cleaners and " + oilers + " oilers must be either at least 1 of the first kind or at least 1 of"
                    + " both others; times " + stripMsPerLane + ", " + oilMsPerLane + " and " + walkMsPerPair
                    + " ms must be at least 0");
        }
    }

    /**
     * Machines that lay on every lane what they are set to.
     *
     * @param combined machines that clean and oil
     * @param cleaners machines that only clean
     * @param oilers machines that only oil
     * @param stripMsPerLane time to clean a lane (ms)
     * @param oilMsPerLane time to oil a lane (ms)
     * @param walkMsPerPair time to move a machine past two lanes (ms)
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public LaneMachines(
            int combined, int cleaners, int oilers, long stripMsPerLane, long oilMsPerLane, long walkMsPerPair) {
        this(combined, cleaners, oilers, stripMsPerLane, oilMsPerLane, walkMsPerPair, Map.of());
    }

    /**
     * What they lay on a lane.
     *
     * @param lane its number
     * @return of what they are set to
     */
    public LaidRatio laid(int lane) {
        return laid.getOrDefault(lane, LaidRatio.WHOLE);
    }

    /**
     * The same machines laying otherwise.
     *
     * @param others what they lay on a lane, of what they are set to, by lane number
     * @return the machines
     */
    public LaneMachines laying(Map<Integer, LaidRatio> others) {
        return new LaneMachines(combined, cleaners, oilers, stripMsPerLane, oilMsPerLane, walkMsPerPair, others);
    }

    /**
     * The most lanes that can be worked on at once.
     *
     * @return the number of machines
     */
    public int most() {
        return combined + cleaners + oilers;
    }

    /**
     * So many of these machines; cleaners and oilers apart always work all.
     *
     * @param count machines that clean and oil, 1 to {@link #most()}
     * @return the machines
     */
    public LaneMachines only(int count) {
        return combined == 0 ? this : new LaneMachines(count, 0, 0, stripMsPerLane, oilMsPerLane, walkMsPerPair, laid);
    }
}
