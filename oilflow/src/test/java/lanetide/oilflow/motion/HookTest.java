package lanetide.oilflow.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The release of Ji, Yang, Dominguez, Hooper and Bester, AIP Advances 15, 045222 (2025): 17.9 mph, 416 rpm, 45 degrees
 * of axis rotation, 1.8 degrees to the right, laid down on board 12. The results are computed from these inputs: the
 * final direction in closed form, the two-zone paths by a fine time march independent of this kernel.
 */
class HookTest {
    private static final Release RELEASE = Release.ofTradeUnits(17.9, 416, 45, 0);
    private static final double RADIUS_M = 0.1085;
    private static final double GYRATION_M = 2.55 * 0.0254;
    private static final double MPH_MPS = 0.44704;
    private static final LaneGrid FINE = new LaneGrid(8, 4);

    @Test
    void noFrictionMapChangesTheDirectionAndSpeedOfTheRollingBall() {
        int rolling = 0;
        for (int seed = 1; seed <= 100; seed++) {
            RandomGenerator random = new Well19937c(seed);
            double endFt = 36 + 8 * random.nextDouble();
            double oiled = 0.01 + 0.03 * random.nextDouble();
            double dry = 0.2 + 0.15 * random.nextDouble();
            FrictionMap lane = new FrictionMap(
                    LaneGrid.DEFAULT, (board, feet) -> (feet < endFt ? oiled : dry) * (0.5 + random.nextDouble()));
            RowMarch march = lane.roll(delivery(12), RADIUS_M, GYRATION_M);
            if (march.reachedPins() && march.slipMps() == 0) {
                rolling++;
                assertThat(Math.toDegrees(march.entryAngleRad()))
                        .as("direction (degrees) on the map of seed %d", seed)
                        .isCloseTo(5.58, within(0.02));
                assertThat(march.speedMps() / MPH_MPS)
                        .as("speed (mph) on the map of seed %d", seed)
                        .isCloseTo(15.29, within(0.02));
            }
        }
        assertThat(rolling).as("maps on which the ball came to roll").isGreaterThan(60);
    }

    @ParameterizedTest(name = "radius of gyration {0} in: {1} degrees")
    @CsvSource({"2.46, 5.14", "2.55, 5.58", "2.70, 6.34", "2.80, 6.85"})
    void aLowerRadiusOfGyrationHooksLess(double gyrationIn, double directionDeg) {
        RowMarch march = FrictionMap.uniform(0.2).roll(delivery(20), RADIUS_M, gyrationIn * 0.0254);
        assertThat(march.slipMps()).isZero();
        assertThat(Math.toDegrees(march.entryAngleRad())).isCloseTo(directionDeg, within(0.02));
    }

    @Test
    void theTwoZoneLaneOf4And20HundredthsGivesTheComputedPath() {
        RowMarch march = zones(feet -> feet < 40 ? 0.04 : 0.20);
        assertThat(boardAt(march, 15)).isCloseTo(8.10, within(0.05));
        BallPath path = march.path(40 * LaneGeometry.FOOT_M);
        assertThat(path.breakpointBoard()).isCloseTo(7.11, within(0.05));
        assertThat(path.breakpointM() / LaneGeometry.FOOT_M)
                .isCloseTo(27.1, within(FINE.rowLengthM() / LaneGeometry.FOOT_M));
        assertThat(path.exitBoard()).isCloseTo(8.29, within(0.05));
        assertThat(path.arrivalBoard()).isCloseTo(25.2, within(0.05));
        assertThat(path.timeS()).isCloseTo(2.445, within(0.001));
    }

    @Test
    void theTwoZoneLaneOf25And200ThousandthsBringsTheShotToThePocket() {
        RowMarch march = zones(feet -> feet < 40 ? 0.025 : 0.20);
        BallPath path = march.path(40 * LaneGeometry.FOOT_M);
        assertThat(path.breakpointBoard()).isCloseTo(4.21, within(0.05));
        assertThat(path.exitBoard()).isCloseTo(4.22, within(0.05));
        assertThat(path.arrivalBoard()).isCloseTo(18.065, within(0.05));
    }

    /** Changes of the second lane: what oil loss and carrydown do to a fixed shot. */
    @ParameterizedTest(
            name =
                    "+{0} to 20 ft, +{1} to 40 ft, oil to {2} ft, {4} from 40 to {3} ft: board {5} at 40 ft, {6} at the pins")
    @CsvSource({
        "0,      0,      40, 40, 0,    4.22, 18.06",
        "0.0085, 0,      40, 40, 0,    5.91, 20.69",
        "0,      0.0085, 40, 40, 0,    4.80, 19.57",
        "0.0085, 0.0085, 40, 40, 0,    6.50, 22.17",
        "0,      0,      41, 40, 0,    4.22, 17.07",
        "0,      0,      40, 44, 0.10, 4.22, 15.94",
        "0,      0,      40, 46, 0.05, 4.22, 13.21"
    })
    void headLossSendsTheShotHighAndCarrydownLight(
            double inHeads, double inMiddle, double oilFt, double carriedFt, double carried, double exit, double pins) {
        RowMarch march = zones(feet -> {
            if (feet < oilFt) {
                return 0.025 + (feet < 20 ? inHeads : inMiddle);
            }
            return feet < carriedFt ? carried : 0.20;
        });
        assertThat(boardAt(march, 40)).isCloseTo(exit, within(0.1));
        assertThat(march.arrivalBoard()).isCloseTo(pins, within(0.1));
    }

    /** Rows of a foot serve as well as finer ones for the two zones. */
    @ParameterizedTest(name = "{0} rows a foot")
    @CsvSource({"1", "2", "8"})
    void theRowsOfTheGridDoNotShowInTheTwoZonePath(int rowsPerFoot) {
        RowMarch march = new FrictionMap(new LaneGrid(8, rowsPerFoot), (board, feet) -> feet < 40 ? 0.025 : 0.20)
                .roll(delivery(12), RADIUS_M, GYRATION_M);
        assertThat(march.arrivalBoard()).isCloseTo(18.065, within(0.02));
    }

    private static RowMarch zones(DoubleUnaryOperator frictionAtFeet) {
        return new FrictionMap(FINE, (board, feet) -> frictionAtFeet.applyAsDouble(feet))
                .roll(delivery(12), RADIUS_M, GYRATION_M);
    }

    private static Delivery delivery(double board) {
        return Delivery.of(RELEASE, RADIUS_M, LaneGeometry.boardToMetres(board), Math.toRadians(1.8));
    }

    private static double boardAt(RowMarch march, double feet) {
        return LaneGeometry.metresToBoard(march.positionM(feet * LaneGeometry.FOOT_M));
    }
}
