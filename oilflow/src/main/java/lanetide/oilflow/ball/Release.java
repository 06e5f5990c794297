package lanetide.oilflow.ball;

import lanetide.oilflow.Require;

/**
 * How the ball leaves the hand.
 *
 * @param speedMps speed of the ball (m/s), 4 to 13
 * @param spinRadps rate of turning (rad/s), 0 to 75 (716 rpm)
 * @param axisRotationRad angle between the ball's heading and the direction its surface drives it to, toward the
 *     bowler's far side (rad), 0 to pi/2
 * @param axisTiltRad tilt of the axis out of the horizontal (rad), 0 to 1.2; it takes cos(tilt) of the spin's drive
 */
public record Release(double speedMps, double spinRadps, double axisRotationRad, double axisTiltRad) {
    /** Metres per second in a mile per hour, exact. */
    public static final double MPH_MPS = 0.44704;

    /** Radians per second in a revolution per minute. */
    public static final double RPM_RADPS = StrictMath.PI / 30;

    private static final double MIN_SPEED_MPS = 4;
    private static final double MAX_SPEED_MPS = 13;
    private static final double MAX_SPIN_RADPS = 75;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Release {
        Require.inRange(speedMps, "ball speed (m/s)", MIN_SPEED_MPS, MAX_SPEED_MPS);
        Require.inRange(spinRadps, "rev rate (rad/s)", 0, MAX_SPIN_RADPS);
        Require.inRange(axisRotationRad, "axis rotation (rad)", 0, StrictMath.PI / 2);
        Require.inRange(axisTiltRad, "axis tilt (rad)", 0, 1.2);
    }

    /**
     * A release in the trade's units.
     *
     * @param speedMph speed (miles per hour)
     * @param revRateRpm rev rate (rpm)
     * @param axisRotationDeg axis rotation (degrees)
     * @param axisTiltDeg axis tilt (degrees)
     * @return the release
     */
    public static Release ofTradeUnits(double speedMph, double revRateRpm, double axisRotationDeg, double axisTiltDeg) {
        return new Release(
                speedMph * MPH_MPS,
                revRateRpm * RPM_RADPS,
                StrictMath.toRadians(axisRotationDeg),
                StrictMath.toRadians(axisTiltDeg));
    }

    /**
     * The same release with another speed and rev rate, kept within the ranges above.
     *
     * @param speedFactor factor on the speed
     * @param spinFactor factor on the rev rate
     * @return the changed release
     */
    public Release scaled(double speedFactor, double spinFactor) {
        return new Release(
                Math.max(MIN_SPEED_MPS, Math.min(MAX_SPEED_MPS, speedMps * speedFactor)),
                Math.max(0, Math.min(MAX_SPIN_RADPS, spinRadps * spinFactor)),
                axisRotationRad,
                axisTiltRad);
    }
}
