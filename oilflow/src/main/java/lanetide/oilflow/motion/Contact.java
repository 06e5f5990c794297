package lanetide.oilflow.motion;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.friction.FrictionModel;
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
     * Oil on the ball at a shot of its usual kind: what the towel has left of earlier ones.
     *
     * @return millilitres
     */
    public double oilInPlayMl() {
        return BallOil.afterTowelMl(ball);
    }

    /**
     * The contact of a ball with a surface under the usual laws.
     *
     * @param ball the ball
     * @param surface the lane
     * @return the contact
     */
    public static Contact between(BallSpec ball, LaneSurface surface) {
        return new Contact(
                ball, FrictionModel.MIXED_LUBRICATION.between(surface, ball.cover()), SplitModel.FORWARD_ROLL.law());
    }
}
