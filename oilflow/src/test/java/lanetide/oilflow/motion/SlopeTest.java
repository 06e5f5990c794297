package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.lane.Topography;
import lanetide.oilflow.motion.RefereeMatch.Difference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Balls on lanes that are not level, against textbook mechanics of a sphere on an incline and an adaptive integration.
 */
class SlopeTest {
    private static final double G = 9.80665;
    private static final double LENGTH_M = LaneGeometry.HEAD_PIN_M;
    private static final double MIDDLE_M = LaneGeometry.WIDTH_M / 2;
    private static final BallSpec BALL =
            BallSpec.of(Catalogue.shipped().covers().get("medium-reactive"));
    private static final double KAPPA = BALL.inertiaRatio();
    /** A slope that the rules do not allow, so that small terms show. */
    private static final double SLOPE = 0.005;

    /** Halliday, Resnick and Walker: a sphere rolling down an incline gains g sin(theta)/(1 + kappa). */
    @ParameterizedTest
    @ValueSource(doubles = {SLOPE, -SLOPE})
    void aRollingBallIsPulledAsideByFiveSeventhsOfTheSlope(double rise) {
        RowMarch march = roll(new Delivery(MIDDLE_M, 0, 7, 0, 7), 0.05, plane(rise, 0));

        double timeS = LENGTH_M / 7;
        assertThat(march.timeS()).isCloseTo(timeS, within(1e-9));
        assertThat(march.positionM(LENGTH_M))
                .isCloseTo(MIDDLE_M - 0.5 * G * rise / (1 + KAPPA) * timeS * timeS, within(1e-6));
        assertThat(march.slipMps()).isZero();
    }

    /** The same, toward the pins: v^2 = v0^2 + 2 g s L/(1 + kappa). */
    @Test
    void aBallThatRollsDownTheLaneGainsSpeed() {
        RowMarch march = roll(new Delivery(MIDDLE_M, 0, 6, 0, 6), 0.05, plane(0, -SLOPE));

        assertThat(march.speedMps()).isCloseTo(Math.sqrt(36 + 2 * G * SLOPE / (1 + KAPPA) * LENGTH_M), within(1e-5));
    }

    /** Block on an incline: v^2 = v0^2 - 2 g (mu - s) L while a ball without spin slides all the way. */
    @Test
    void aSlidingBallThatGoesDownhillIsBrakedByFrictionLessSlope() {
        double friction = 0.03;
        RowMarch march = roll(new Delivery(MIDDLE_M, 0, 9, 0, 0), friction, plane(0, -SLOPE));

        double speedMps = Math.sqrt(81 - 2 * G * (friction - SLOPE) * LENGTH_M);
        assertThat(march.speedMps()).isCloseTo(speedMps, within(1e-4));
        assertThat(march.timeS()).isCloseTo((9 - speedMps) / (G * (friction - SLOPE)), within(1e-4));
        assertThat(march.positionM(LENGTH_M)).isCloseTo(MIDDLE_M, within(1e-12));
    }

    /** A thrown body: without friction the ball falls aside by half g s t^2, and its slip turns. */
    @Test
    void aBallWithoutFrictionIsPulledAsideByTheWholeSlope() {
        RowMarch march = roll(new Delivery(MIDDLE_M, 0, 8, 0, 2), 0, plane(SLOPE, 0));

        double timeS = LENGTH_M / 8;
        assertThat(march.positionM(LENGTH_M)).isCloseTo(MIDDLE_M - 0.5 * G * SLOPE * timeS * timeS, within(1e-6));
        assertThat(march.slipMps()).isCloseTo(Math.hypot(6, G * SLOPE * timeS), within(1e-5));
    }

    /** The spin is not pulled: v + kappa S gains g s t, whatever the friction (impulse of gravity alone). */
    @Test
    void ofBallAndSpinTogetherOnlyGravityChangesTheMomentum() {
        Delivery delivery =
                Delivery.of(Release.ofTradeUnits(18, 350, 45, 0), BALL.radiusM(), MIDDLE_M, Math.toRadians(1));
        RowMarch march = roll(delivery, 0.2, plane(SLOPE, 0));

        assertThat(march.slipMps()).isZero();
        double vx = march.speedMps() * Math.sin(march.entryAngleRad());
        double before = delivery.vxMps() + KAPPA * delivery.sxMps();
        assertThat((1 + KAPPA) * vx).isCloseTo(before - G * SLOPE * march.timeS(), within(1e-9));
    }

    @Test
    void theRefereeMeetsTheClosedFormsOnASlope() {
        OilFilm even = even(0.05, plane(SLOPE, 0));
        AdaptivePath rolling =
                AdaptivePath.of(new Delivery(MIDDLE_M, 0, 7, 0, 7), Hand.RIGHT, KAPPA, film -> film, even);
        double aside = 0.5 * G * SLOPE / (1 + KAPPA) * LENGTH_M * LENGTH_M / 49;
        assertThat(LaneGeometry.boardToMetres(rolling.arrivalBoard())).isCloseTo(MIDDLE_M - aside, within(1e-8));

        OilFilm down = even(0.03, plane(0, -SLOPE));
        AdaptivePath sliding =
                AdaptivePath.of(new Delivery(MIDDLE_M, 0, 9, 0, 0), Hand.RIGHT, KAPPA, film -> film, down);
        assertThat(sliding.speedMps()).isCloseTo(Math.sqrt(81 - 2 * G * (0.03 - SLOPE) * LENGTH_M), within(1e-8));
    }

    @Test
    void onLanesOutOfLevelTheMarchIsWithinAHundredthOfABoardAndTwoHundredthsOfADegree() {
        Difference usual = RefereeMatch.onShapedLanes().get(0);

        assertThat(usual.pinShots()).as(usual.toString()).isGreaterThan(RefereeMatch.SHOTS / 2);
        assertThat(usual.gutterShotsOfOneOnly()).as(usual.toString()).isZero();
        assertThat(usual.worstBoards()).as(usual.toString()).isLessThan(0.01);
        assertThat(usual.worstDeg()).as(usual.toString()).isLessThan(0.02);
    }

    @Test
    void aSurveyThatFindsTheLaneLevelChangesNothing() {
        Delivery delivery = Delivery.of(Release.ofTradeUnits(18, 350, 45, 10), BALL.radiusM(), 0.5, Math.toRadians(1));
        RowMarch level = roll(delivery, Hand.RIGHT, fresh(Topography.FLAT));
        RowMarch surveyed = roll(delivery, Hand.RIGHT, fresh(new LaneSurvey(List.of(new Station(3, 0, 0)))));

        assertThat(surveyed.positionM(LENGTH_M)).isCloseTo(level.positionM(LENGTH_M), within(1e-5));
        assertThat(surveyed.timeS()).isCloseTo(level.timeS(), within(1e-7));
    }

    /** A left-hander on the mirror image of a lane plays the mirror image of the shot. */
    @Test
    void theOtherHandOnTheMirrorImageOfALaneArrivesAlike() {
        Delivery delivery = Delivery.of(Release.ofTradeUnits(18, 350, 45, 10), BALL.radiusM(), 0.5, Math.toRadians(1));
        LaneSurvey lane = new LaneSurvey(List.of(new Station(2, 0.001, 0.0005), new Station(12, -0.0004, -0.001)));
        LaneSurvey mirrored = new LaneSurvey(List.of(new Station(2, -0.001, 0.0005), new Station(12, 0.0004, -0.001)));
        RowMarch right = roll(delivery, Hand.RIGHT, fresh(lane));
        RowMarch left = roll(delivery, Hand.LEFT, fresh(mirrored));

        assertThat(left.positionM(LENGTH_M)).isCloseTo(right.positionM(LENGTH_M), within(1e-12));
        assertThat(right.positionM(LENGTH_M))
                .isNotCloseTo(roll(delivery, Hand.RIGHT, fresh(Topography.FLAT)).positionM(LENGTH_M), within(0.001));
    }

    private static RowMarch roll(Delivery delivery, double friction, Topography shape) {
        RowMarch march = new RowMarch(LaneGrid.DEFAULT);
        march.read(delivery, Hand.RIGHT, new Contact(BALL, film -> film, FilmSplit.NONE), even(friction, shape));
        return march;
    }

    private static RowMarch roll(Delivery delivery, Hand hand, OilFilm film) {
        RowMarch march = new RowMarch(LaneGrid.DEFAULT);
        march.read(
                delivery,
                hand,
                Contact.between(BALL, Catalogue.shipped().surfaces().get("hard-synthetic")),
                film);
        return march;
    }

    private static OilFilm even(double friction, Topography shape) {
        OilFilm film = OilFilm.bare(LaneGrid.DEFAULT, shape);
        Arrays.fill(film.cellsUm(), friction);
        return film;
    }

    private static OilFilm fresh(Topography shape) {
        return OilFilm.fresh(OilPattern.of("test", 39 * LaneGeometry.FOOT_M, 26, 3), LaneGrid.DEFAULT)
                .on(shape);
    }

    private static Topography plane(double riseAcross, double riseAlong) {
        return new Topography() {
            @Override
            public double riseAcross(double fromRightM, double alongM) {
                return riseAcross;
            }

            @Override
            public double riseAlong(double fromRightM, double alongM) {
                return riseAlong;
            }
        };
    }
}
