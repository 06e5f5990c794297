package lanetide.squads.play;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.ForwardRollSplit;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;

/**
 * The laws and the grid an event is played under. Immutable, so that all playings share it.
 *
 * @param grid the grid films are kept on
 * @param split how oil parts between lane and ball
 * @param carry what the pins do
 */
public record Physics(LaneGrid grid, FilmSplit split, PinCarry carry) {
    /**
     * The usual laws.
     *
     * @return mixed lubrication, forward-roll film splitting, the usual grid
     */
    public static Physics usual() {
        return new Physics(
                LaneGrid.USUAL, new ForwardRollSplit(ForwardRollSplit.USUAL_COVERAGE_PER_UM), new PinCarry());
    }

    /**
     * A cover on a surface.
     *
     * @param cover the ball's shell
     * @param surface the lane
     * @return their contact
     */
    public Contact contact(Coverstock cover, LaneSurface surface) {
        return Contact.between(BallSpec.of(cover), surface, split);
    }
}
