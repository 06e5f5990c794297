package lanetide.squads.bowler;

import lanetide.oilflow.Require;

/**
 * What a bowler knows of his own balls on the line he brings: practice elsewhere on such a pattern has taught him. He
 * takes it for every line and lane he comes to.
 *
 * @param usualMissBoards where his balls meet the pins on average, less the pocket (boards)
 * @param perArrowBoard boards at the pins for each board by which his release misses the arrow; below 0 on a pattern
 *     that brings a miss back
 * @param unexplainedBoards standard deviation at the pins among balls that missed the arrow alike (boards), at least 0
 * @param scatterBoards standard deviation at the pins of all his balls (boards), at least 0
 * @param usualEntryRad angle at which they meet the pins on average (rad)
 */
public record LineFeel(
        double usualMissBoards,
        double perArrowBoard,
        double unexplainedBoards,
        double scatterBoards,
        double usualEntryRad) {
    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if {@code unexplainedBoards} is not from 0 to 40
     */
    public LineFeel {
        Require.inRange(unexplainedBoards, "unexplained scatter (boards)", 0, 40);
    }

    /** What a ball says of the line: its miss, less what is usual and what the release did. */
    double missOfLine(double missBoards, double missAtArrowsBoards) {
        return missBoards - usualMissBoards - perArrowBoard * missAtArrowsBoards;
    }
}
