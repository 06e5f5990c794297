package lanetide.squads.model;

import java.util.Objects;
import lanetide.oilflow.Require;

/**
 * How a bowler reacts to what he saw on a lane. All values are assumptions; a scenario may set them.
 *
 * @param seesBoards standard deviation of the bowler's reading of where his ball met the pins (boards), 0 to 5
 * @param deadBandBoards smallest believed miss that makes him move (boards), 0 to 10
 * @param gain share of the believed miss that a move takes out, 0 (never moves) to 1.5
 * @param patienceShots shots on a lane since the last move there before he moves again, 1 to 50
 * @param reckoning what he reckons with besides his own balls
 */
public record Adaptation(
        double seesBoards, double deadBandBoards, double gain, int patienceShots, Reckoning reckoning) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     * @throws NullPointerException if {@code reckoning} is null
     */
    public Adaptation {
        Require.inRange(seesBoards, "reading error (boards)", 0, 5);
        Require.inRange(deadBandBoards, "dead band (boards)", 0, 10);
        Require.inRange(gain, "gain", 0, 1.5);
        Require.inRange(patienceShots, "patience (shots)", 1, 50);
        Objects.requireNonNull(reckoning, "reckoning");
    }

    /**
     * The same bowler on lanes that stay as they are, where nobody's balls change anything.
     *
     * @return one who goes by his own balls alone
     */
    public Adaptation byOwnBalls() {
        return new Adaptation(
                seesBoards, deadBandBoards, gain, patienceShots, Reckoning.byOwnBalls(reckoning.driftBoards()));
    }
}
