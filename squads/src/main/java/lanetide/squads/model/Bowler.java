package lanetide.squads.model;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;

/**
 * One bowler.
 *
 * @param id name, alone in the squad
 * @param hand delivery side
 * @param style how he throws
 * @param level how good he is
 * @param cover shell of the ball he throws at full racks
 * @param spareCover shell of the ball he throws at spares
 */
public record Bowler(String id, Hand hand, PlayingStyle style, Level level, Coverstock cover, Coverstock spareCover) {
    /**
     * Checks the name.
     *
     * @throws IllegalArgumentException if {@code id} is blank
     */
    public Bowler {
        Require.named(id, "bowler");
    }
}
