package lanetide.oilflow.ball;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * A whole ball.
 *
 * @param cover its shell
 * @param core what lies beneath
 */
public record BallSpec(Coverstock cover, BallCore core) {
    /** Width of the contact (m): an eighth of a board; contact mechanics gives 2.6 to 4.2 mm. */
    public static final double CONTACT_M = LaneGeometry.BOARD_M / 8;

    /** Most revolutions of a ball between foul line and pins. */
    public static final int MAX_REVOLUTIONS = 24;

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
     * The way that one turn of the ball lays on the lane when it rolls.
     *
     * @return metres
     */
    public double turnM() {
        return 2 * Math.PI * radiusM();
    }

    /**
     * The surface that the tracks of one shot cover: a strip of {@link #CONTACT_M} for the first turn, and as much more
     * for each other one as the flare has moved it aside.
     *
     * @return square metres
     */
    public double tracksM2() {
        return turnM() * CONTACT_M * (1 + (1 - cover.flareOverlap()) * (MAX_REVOLUTIONS - 1));
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
