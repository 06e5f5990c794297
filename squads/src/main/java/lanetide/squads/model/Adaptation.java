package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * How a bowler reacts to what he saw on a lane. All values are assumptions; a scenario may set them.
 *
 * @param seesBoards standard deviation of the bowler's reading of where his ball met the pins (boards), 0 to 5
 * @param deadBandBoards smallest believed miss that makes him move (boards), 0 to 10
 * @param gain share of the believed miss that a move takes out, 0 (never moves) to 1.5
 * @param memoryShots number of shots on a lane his belief averages over, 1 to 50
 */
public record Adaptation(double seesBoards, double deadBandBoards, double gain, double memoryShots) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Adaptation {
        Require.inRange(seesBoards, "reading error (boards)", 0, 5);
        Require.inRange(deadBandBoards, "dead band (boards)", 0, 10);
        Require.inRange(gain, "gain", 0, 1.5);
        Require.inRange(memoryShots, "memory (shots)", 1, 50);
    }
}
