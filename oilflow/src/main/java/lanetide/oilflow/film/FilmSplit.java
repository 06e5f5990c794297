package lanetide.oilflow.film;

/**
 * How the oil in a contact parts between lane and ball. One law serves both thinning and carrydown: it lifts oil where
 * the lane is wet and the ball dry, and lays it where the ball is wet and the lane dry.
 */
@FunctionalInterface
public interface FilmSplit {
    /** A split that moves no oil: the lane stays as it is. */
    FilmSplit NONE = (laneUm, broughtUm, speedRatio) -> laneUm;

    /**
     * Film left on the lane behind the contact. What the lane loses, the ball gains.
     *
     * @param laneUm film on the lane before the contact (um), at least 0
     * @param broughtUm oil that the ball's surface brings, for each length of lane: its film times the speed ratio (um)
     * @param speedRatio speed of the ball's surface over speed of the ball, at least 0
     * @return film on the lane behind the contact (um), at least 0 and at most {@code laneUm + broughtUm}
     */
    double laneLeftUm(double laneUm, double broughtUm, double speedRatio);
}
