package lanetide.oilflow.motion;

import lanetide.oilflow.ball.Release;

/**
 * A ball at the foul line, in the bowler's own axes: x across from the lane edge on his delivery side, y toward the
 * pins.
 *
 * @param xM where the ball touches the lane (m from that edge)
 * @param vxMps speed across (m/s), positive away from that edge
 * @param vyMps speed toward the pins (m/s), above 0
 * @param sxMps part across of the velocity at which the spinning ball would roll without slip (m/s)
 * @param syMps part toward the pins of that velocity (m/s); negative for backspin
 */
public record Delivery(double xM, double vxMps, double vyMps, double sxMps, double syMps) {
    /**
     * A delivery as a bowler aims it.
     *
     * @param release how the ball leaves the hand
     * @param radiusM the ball's radius (m)
     * @param laydownM where it touches down (m from the lane edge on the delivery side)
     * @param launchRad launch angle (rad), positive toward that edge
     * @return the delivery
     */
    public static Delivery of(Release release, double radiusM, double laydownM, double launchRad) {
        double surfaceMps = radiusM * release.spinRadps() * StrictMath.cos(release.axisTiltRad());
        double driveRad = release.axisRotationRad() - launchRad;
        return new Delivery(
                laydownM,
                -release.speedMps() * StrictMath.sin(launchRad),
                release.speedMps() * StrictMath.cos(launchRad),
                surfaceMps * StrictMath.sin(driveRad),
                surfaceMps * StrictMath.cos(driveRad));
    }
}
