package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * Lane courtesy: a bowler waits while a neighbour within so many lanes is on the approach. Of those who are ready, the
 * bowler on the right goes first (bowlcentralohio etiquette, as quoted).
 *
 * @param lanes lanes to either side that count as neighbours, 0 (no courtesy) to 2
 * @param approachMs how long a bowler is on the approach before he releases (ms), 0 to 60 000
 */
public record LaneCourtesy(int lanes, long approachMs) {
    /** Nobody waits for a neighbour. */
    public static final LaneCourtesy NONE = new LaneCourtesy(0, 0);

    /** One lane, as most events ask for; six seconds on the approach (assumption). */
    public static final LaneCourtesy USUAL = new LaneCourtesy(1, 6_000);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public LaneCourtesy {
        Require.inRange(lanes, "lane courtesy (lanes)", 0, 2);
        Require.inRange((double) approachMs, "time on the approach (ms)", 0, 60_000);
    }
}
