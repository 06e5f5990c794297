package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * How a bowler reacts to what he saw on a lane. All values are assumptions; a scenario may set them.
 *
 * @param seesBoards standard deviation of the bowler's reading of where his ball met the pins (boards), 0 to 5
 * @param deadBandBoards smallest believed miss that makes him move (boards), 0 to 10
 * @param gain share of the believed miss that a move takes out, 0 (never moves) to 1.5
 * @param patienceShots shots on a lane since the last move there before he moves again, 1 to 50
 * @param driftBoards how fast he reckons a line goes off as the oil changes (boards a game, standard deviation of
 *     either sign), 0 to 3
 */
public record Adaptation(double seesBoards, double deadBandBoards, double gain, int patienceShots, double driftBoards) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Adaptation {
        Require.inRange(seesBoards, "reading error (boards)", 0, 5);
        Require.inRange(deadBandBoards, "dead band (boards)", 0, 10);
        Require.inRange(gain, "gain", 0, 1.5);
        Require.inRange(patienceShots, "patience (shots)", 1, 50);
        Require.inRange(driftBoards, "expected drift (boards a game)", 0, 3);
    }
}
