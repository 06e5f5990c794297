package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import lanetide.oilflow.lane.LaneGeometry;
import org.junit.jupiter.api.Test;

/**
 * Worked examples of a ball that slides, then rolls. Their gravity is 9.81 m/s^2 or 32.2 ft/s^2, the kernel's 9.80665:
 * the coefficient of friction is scaled so that its product with gravity, which is all that the motion depends on, is
 * theirs.
 */
class SlidingBallTest {
    private static final double KERNEL_GRAVITY = 9.80665;
    private static final double RADIUS_M = 0.1085;
    /**
     * 2/5 of a uniform sphere. With no spin at the start, the radius itself does not enter the motion of the centre.
     */
    private static final double UNIFORM_GYRATION_M = RADIUS_M * Math.sqrt(0.4);

    private static final double FOOT_M = LaneGeometry.FOOT_M;
    /** 1e-4 of the value, in per cent. */
    private static final double TENTH_PER_MILLE = 0.01;

    /**
     * Source: Halliday, Resnick and Walker, Fundamentals of Physics, chapter 11 (inputs from memory, results computed).
     */
    @Test
    void aBallThrownWithoutSpinRollsAfter8Metres59() {
        RowMarch march = straight(8.5, 0, 0.21 * 9.81, UNIFORM_GYRATION_M);
        double time = 2.0 / 7 * 8.5 / (0.21 * 9.81);
        assertThat(march.rollTimeS().orElseThrow()).isCloseTo(time, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.rollDistanceM().orElseThrow())
                .isCloseTo(8.5 * time - 0.5 * 0.21 * 9.81 * time * time, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.speedMps()).isCloseTo(5.0 / 7 * 8.5, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.rollTimeS().orElseThrow()).isCloseTo(1.179, within(0.0005));
        assertThat(march.rollDistanceM().orElseThrow()).isCloseTo(8.589, within(0.0005));
        assertThat(march.speedMps()).isCloseTo(6.071, within(0.0005));
    }

    /** Source: Physics Forums, thread 394359 (inputs and accelerations; time, distance and speed computed). */
    @Test
    void aSlowerBallOnASlickerLaneRollsAfter8Metres62() {
        RowMarch march = straight(8.10, 0, 0.19 * 9.81, UNIFORM_GYRATION_M);
        assertThat(march.rollTimeS().orElseThrow()).isCloseTo(1.2417, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.rollDistanceM().orElseThrow()).isCloseTo(8.621, within(0.0005));
        assertThat(march.speedMps()).isCloseTo(5.786, within(0.0005));
        double acceleration = (8.10 - march.speedMps()) / march.rollTimeS().orElseThrow();
        assertThat(acceleration).isCloseTo(1.864, within(0.0005));
        double spinUp = march.speedMps() / 0.11 / march.rollTimeS().orElseThrow();
        assertThat(spinUp).isCloseTo(42.36, within(0.005));
    }

    /**
     * Source: a solved textbook problem (circumference 27 in, radius of gyration 3.28 in, 20 ft/s, friction 0.20). No
     * rule allows that core, so no BallSpec holds it; but the centre of a ball knows its core only by k/(1+k) times the
     * slip it starts with. A legal ball with the backspin that makes this product the same moves alike.
     */
    @Test
    void aCoreOutsideTheRulesSlides18Feet66() {
        double illegal = Math.pow(3.28 * 2 * Math.PI / 27, 2);
        double legal = 0.4;
        double speed = 20 * FOOT_M;
        double slip = speed * illegal / (1 + illegal) * (1 + legal) / legal;
        RowMarch march = straight(speed, speed - slip, 0.20 * 32.2 * FOOT_M, UNIFORM_GYRATION_M);
        double distanceFt = 20 * 20 / (2 * 0.20 * 32.2) * (1 - Math.pow(1 + illegal, -2));
        assertThat(distanceFt).isCloseTo(18.6566, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.rollDistanceM().orElseThrow() / FOOT_M)
                .isCloseTo(distanceFt, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.speedMps() / FOOT_M).isCloseTo(12.637, withinPercentage(TENTH_PER_MILLE));
    }

    /** Source: a solved dynamics problem (diameter 8.5 in, 25 ft/s, friction 0.10; backspin of 9 rad/s from memory). */
    @Test
    void aBallWithBackspinSlides52Feet46() {
        double radiusM = 4.25 * 0.0254;
        Delivery delivery = new Delivery(LaneGeometry.WIDTH_M / 2, 0, 25 * FOOT_M, 0, -9 * radiusM);
        RowMarch march = FrictionMap.uniform(0.10 * 32.2 * FOOT_M / KERNEL_GRAVITY)
                .roll(delivery, radiusM, radiusM * Math.sqrt(0.4));
        double slip = 25 + 9 * 4.25 / 12;
        double time = 2.0 / 7 * slip / (0.10 * 32.2);
        assertThat(march.rollTimeS().orElseThrow()).isCloseTo(time, withinPercentage(TENTH_PER_MILLE));
        assertThat(march.rollTimeS().orElseThrow()).isCloseTo(2.501, within(0.0005));
        assertThat(march.speedMps() / FOOT_M).isCloseTo(16.95, within(0.005));
        assertThat(march.rollDistanceM().orElseThrow() / FOOT_M).isCloseTo(52.46, within(0.005));
    }

    @Test
    void onceTheBallRollsItGoesStraightOnAtItsRollingSpeed() {
        Delivery delivery = new Delivery(LaneGeometry.boardToMetres(15), -0.4, 7, 1.2, 4);
        RowMarch march = FrictionMap.uniform(0.3).roll(delivery, RADIUS_M, UNIFORM_GYRATION_M);
        double leftM = LaneGeometry.HEAD_PIN_M - march.rollDistanceM().orElseThrow();
        double rollingVy = 7 - 2.0 / 7 * (7 - 4);
        double rollingVx = -0.4 + 2.0 / 7 * (0.4 + 1.2);
        assertThat(march.timeS())
                .isCloseTo(march.rollTimeS().orElseThrow() + leftM / rollingVy, withinPercentage(TENTH_PER_MILLE));
        double lastTenFeet = march.positionM(LaneGeometry.HEAD_PIN_M) - march.positionM(50 * FOOT_M);
        assertThat(lastTenFeet).isCloseTo(10 * FOOT_M * rollingVx / rollingVy, withinPercentage(TENTH_PER_MILLE));
    }

    @Test
    void aBallThatRollsFromTheStartKeepsItsSpeedAndHeading() {
        Delivery delivery = new Delivery(0.4, 0.2, 8, 0.2, 8);
        RowMarch march = FrictionMap.uniform(0.3).roll(delivery, RADIUS_M, UNIFORM_GYRATION_M);
        assertThat(march.slipMps()).isZero();
        assertThat(march.rollTimeS().orElseThrow()).isZero();
        assertThat(march.timeS()).isCloseTo(LaneGeometry.HEAD_PIN_M / 8, within(1e-12));
        assertThat(march.positionM(LaneGeometry.HEAD_PIN_M))
                .isCloseTo(0.4 + 0.025 * LaneGeometry.HEAD_PIN_M, within(1e-12));
    }

    @Test
    void aBallLaidInTheGutterStaysThere() {
        Delivery delivery = new Delivery(-0.05, 0, 8, 0, 4);
        RowMarch march = FrictionMap.uniform(0.1).roll(delivery, RADIUS_M, UNIFORM_GYRATION_M);
        assertThat(march.reachedPins()).isFalse();
        assertThat(march.path(10).exitBoard()).isLessThan(0.5);
        assertThat(march.path(10).reachedPins()).isFalse();
    }

    @Test
    void aBallThatWouldNeverReachThePinsIsRefused() {
        Delivery delivery = new Delivery(0.5, 0, 2, 0, -8);
        FrictionMap lane = FrictionMap.uniform(0.1);
        assertThatThrownBy(() -> lane.roll(delivery, RADIUS_M, UNIFORM_GYRATION_M))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("never reaches the pins");
    }

    private static RowMarch straight(double speedMps, double surfaceMps, double decelerationMps2, double gyrationM) {
        Delivery delivery = new Delivery(LaneGeometry.WIDTH_M / 2, 0, speedMps, 0, surfaceMps);
        return FrictionMap.uniform(decelerationMps2 / KERNEL_GRAVITY).roll(delivery, RADIUS_M, gyrationM);
    }
}
