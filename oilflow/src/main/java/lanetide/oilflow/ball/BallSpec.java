package lanetide.oilflow.ball;

import lanetide.oilflow.Require;

/**
 * A ball as the rules measure it.
 *
 * @param cover its shell
 * @param radiusM radius (m); circumference 26.704 to 27.002 in, so 0.10795 to 0.10916 m (USBC specification of 2012)
 * @param gyrationRadiusM radius of gyration (m); 2.46 to 2.80 in, so 0.0625 to 0.0712 m (USBC, approvals from July 2010)
 */
public record BallSpec(Coverstock cover, double radiusM, double gyrationRadiusM) {
    /** Radius of the ball (m) that the worked examples use: 27 in round. */
    public static final double USUAL_RADIUS_M = 0.1085;

    /** Usual radius of gyration (m): 2.55 in. */
    public static final double USUAL_GYRATION_M = 2.55 * 0.0254;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public BallSpec {
        Require.inRange(radiusM, "ball radius (m)", 0.1079, 0.1092);
        Require.inRange(gyrationRadiusM, "radius of gyration (m)", 2.46 * 0.0254 - 1e-9, 2.80 * 0.0254 + 1e-9);
    }

    /**
     * A ball of usual size and core.
     *
     * @param cover its shell
     * @return the ball
     */
    public static BallSpec of(Coverstock cover) {
        return new BallSpec(cover, USUAL_RADIUS_M, USUAL_GYRATION_M);
    }

    /**
     * Squared ratio of radius of gyration to radius; 0.4 for a uniform sphere.
     *
     * @return the dimensionless moment of inertia
     */
    public double inertiaRatio() {
        double ratio = gyrationRadiusM / radiusM;
        return ratio * ratio;
    }
}
