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
 * @param towelShare film that a towel leaves on the ball at most, as a share of its roughness, at least 0
 */
public record Contact(BallSpec ball, FrictionLaw friction, FilmSplit split, double towelShare) {
    /**
     * A contact of a ball that is wiped as usual.
     *
     * @param ball as above
     * @param friction as above
     * @param split as above
     */
    public Contact(BallSpec ball, FrictionLaw friction, FilmSplit split) {
        this(ball, friction, split, BallOil.DEFAULT_TOWEL_SHARE);
    }

    /**
     * Oil on the ball at a shot of its usual kind: what the towel has left of earlier ones.
     *
     * @return millilitres
     */
    public double oilInPlayMl() {
        return BallOil.afterTowelMl(ball, towelShare);
    }

    /**
     * A clean ball of this contact, wiped as it is between its shots.
     *
     * @return its oil
     */
    public BallOil cleanBall() {
        return new BallOil(ball, towelShare);
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
