package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * What all bowlers of an event have in common.
 *
 * @param knowledge what they go by when they choose their lines
 * @param tiringShare share of his speed that a bowler has lost after {@link #TIRING_BALLS} balls at full racks, 0 to
 *     0.1; it is lost evenly, and none beyond
 * @param scoring how it is scored
 */
public record Bowling(Knowledge knowledge, double tiringShare, Scoring scoring) {
    /** As bowlers are: they learn from what they see and are told, keep their speed, and are scored by the rules. */
    public static final Bowling USUAL = new Bowling(Knowledge.SEEN_AND_TOLD, 0, Scoring.USUAL);

    /**
     * Six bouts of twelve balls, over which elite bowlers' speed fell (Seiferheld and others, Sensors 23, 8284, 2023;
     * by how much was not found).
     */
    public static final int TIRING_BALLS = 72;

    /**
     * Checks the range above.
     *
     * @throws IllegalArgumentException if {@code tiringShare} lies outside its range
     */
    public Bowling {
        Require.inRange(tiringShare, "share of speed lost", 0, 0.1);
    }

    /**
     * What is left of a bowler's speed.
     *
     * @param balls balls he has thrown at full racks
     * @return a factor, 1 for a fresh bowler
     */
    public double speedFactor(int balls) {
        return 1 - tiringShare * Math.min(balls, TIRING_BALLS) / TIRING_BALLS;
    }
}
