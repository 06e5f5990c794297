package lanetide.cli.lines;

import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Level;

/**
 * A kind of bowler whose line is asked for.
 *
 * @param style how he throws
 * @param hand delivery side
 * @param cover shell of his ball
 * @param level how good he is: how far his shots scatter
 */
public record Kind(PlayingStyle style, Hand hand, Coverstock cover, Level level) {
    /** The kind that a bowler is, with his strike ball. */
    public static Kind of(Bowler bowler) {
        return new Kind(bowler.style(), bowler.hand(), bowler.cover(), bowler.level());
    }
}
