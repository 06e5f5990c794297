package lanetide.oilflow.ball;

/**
 * A whole ball.
 *
 * @param cover its shell
 * @param core what lies beneath
 */
public record BallSpec(Coverstock cover, BallCore core) {
    /**
     * A ball of usual mass.
     *
     * @param cover its shell
     * @param radiusM radius (m), within {@link BallCore}'s limits
     * @param gyrationRadiusM radius of gyration (m), within {@link BallCore}'s limits
     */
    public BallSpec(Coverstock cover, double radiusM, double gyrationRadiusM) {
        this(cover, new BallCore(radiusM, gyrationRadiusM, BallCore.DEFAULT.massKg()));
    }

    /**
     * The ball a cover is cast on.
     *
     * @param cover its shell
     * @return the ball
     */
    public static BallSpec of(Coverstock cover) {
        return new BallSpec(cover, cover.core());
    }

    /**
     * Radius.
     *
     * @return metres
     */
    public double radiusM() {
        return core.radiusM();
    }

    /**
     * Squared ratio of radius of gyration to radius; 0.4 for a uniform sphere.
     *
     * @return the dimensionless moment of inertia
     */
    public double inertiaRatio() {
        double ratio = core.gyrationRadiusM() / core.radiusM();
        return ratio * ratio;
    }
}
