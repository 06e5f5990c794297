package lanetide.oilflow.motion;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.ForwardRollSplit;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.friction.MixedLubrication;
import lanetide.oilflow.lane.LaneSurface;

/**
 * A ball on a lane: what the laws say of their contact.
 *
 * @param ball the ball
 * @param friction how slippery the contact is
 * @param split how its oil parts between lane and ball
 */
public record Contact(BallSpec ball, FrictionLaw friction, FilmSplit split) {
    /**
     * The contact of a ball with a surface under mixed lubrication.
     *
     * @param ball the ball
     * @param surface the lane
     * @param split how oil parts
     * @return the contact
     */
    public static Contact between(BallSpec ball, LaneSurface surface, FilmSplit split) {
        return new Contact(ball, MixedLubrication.between(surface, ball.cover()), split);
    }

    /**
     * The contact of a ball with a surface under the usual laws.
     *
     * @param ball the ball
     * @param surface the lane
     * @return the contact
     */
    public static Contact between(BallSpec ball, LaneSurface surface) {
        return between(ball, surface, new ForwardRollSplit(ForwardRollSplit.USUAL_COVERAGE_PER_UM));
    }
}
