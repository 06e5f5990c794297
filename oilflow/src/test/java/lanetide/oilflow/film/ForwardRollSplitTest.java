package lanetide.oilflow.film;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Values computed from the law of Coyle, Macosko and Scriven, Journal of Fluid Mechanics 171 (1986): t1/t2 =
 * (V1/V2)^0.65.
 */
class ForwardRollSplitTest {
    private static final double COVERAGE = ForwardRollSplit.DEFAULT_COVERAGE_PER_UM;

    /** So smooth that the coverage term is 1 for every film met here. */
    private static final ForwardRollSplit SMOOTH = new ForwardRollSplit(1000);

    private static final ForwardRollSplit DEFAULT = new ForwardRollSplit(ForwardRollSplit.DEFAULT_COVERAGE_PER_UM);

    @ParameterizedTest(name = "surface at {0} of the ball''s speed lifts {1}")
    @CsvSource({"0.3, 0.121", "0.4, 0.181", "0.5, 0.242", "0.6, 0.301", "0.8, 0.409", "1.0, 0.500"})
    void aCleanBallLiftsTheShareOfTheLaw(double speedRatio, double lifted) {
        assertThat(1 - ForwardRollSplit.exactLaneShare(speedRatio)).isCloseTo(lifted, within(1e-3));
        assertThat(1 - SMOOTH.laneLeftUm(1, 0, speedRatio)).isCloseTo(lifted, within(1e-3));
    }

    /**
     * The ball's film meets the same constant lane film turn after turn: what is left of 1 after turns 1, 2, 3 and 4.
     */
    @Test
    void aBallWithoutFlareIsSaturatedAfterThreeRevolutions() {
        double[] left = {0.758, 0.942, 0.986, 0.997};
        double onBallUm = 0;
        for (double expected : left) {
            double laneLeft = SMOOTH.laneLeftUm(1, 0.5 * onBallUm, 0.5);
            assertThat(laneLeft).isCloseTo(expected, within(1e-3));
            onBallUm = (1 + 0.5 * onBallUm - laneLeft) / 0.5;
        }
    }

    /** Past the end of the oil the ball lays its film on a dry lane: shares of a ball film of 1 by turn. */
    @ParameterizedTest(name = "at {0}: {1}, {2}, {3}")
    @CsvSource({"0.8, 0.473, 0.193, 0.079", "0.6, 0.419, 0.126, 0.038", "1.0, 0.5, 0.25, 0.125"})
    void aWetBallLaysItsFilmOnADryLaneInFadingSteps(double speedRatio, double first, double second, double third) {
        double onBallUm = 1;
        for (double expected : new double[] {first, second, third}) {
            double laid = SMOOTH.laneLeftUm(0, speedRatio * onBallUm, speedRatio);
            assertThat(laid).isCloseTo(expected, within(1e-3));
            onBallUm -= laid / speedRatio;
        }
    }

    @Test
    void theTwoFilmsLeaveInTheRatioOfTheSurfaceSpeedsToThePower65Hundredths() {
        for (double ratio = 0.1; ratio <= 1.5; ratio += 0.1) {
            double lane = SMOOTH.laneLeftUm(7, 2, ratio);
            double ball = (7 + 2 - lane) / ratio;
            assertThat(ball / lane).as("films at speed ratio %s", ratio).isCloseTo(Math.pow(ratio, 0.65), within(2e-4));
        }
    }

    @Test
    void theTableStaysCloseToTheExactLaw() {
        double worst = 0;
        for (double ratio = 0; ratio <= 2; ratio += 0.00037) {
            for (double filmUm : new double[] {0.01, 0.1, 0.3, 1, 3, 5, 20}) {
                double exact =
                        filmUm * (1 - -Math.expm1(-COVERAGE * filmUm) * (1 - ForwardRollSplit.exactLaneShare(ratio)));
                double tabulated = DEFAULT.laneLeftUm(filmUm, 0, ratio);
                worst = Math.max(worst, Math.abs(tabulated - exact) / filmUm);
            }
        }
        assertThat(worst).isLessThan(5e-5);
    }

    /** Coverage term after Walker and Fetsko, TAGA (1955): the share of the move that happens is 1 - exp(-k h). */
    @ParameterizedTest(name = "film of {0} um")
    @ValueSource(doubles = {0.05, 0.2, 0.54, 1, 2, 5})
    void aFilmThinnerThanTheRoughnessIsOnlyPartlyReached(double filmUm) {
        double lifted = 1 - DEFAULT.laneLeftUm(filmUm, 0, 1) / filmUm;
        assertThat(lifted).isCloseTo(0.5 * (1 - Math.exp(-COVERAGE * filmUm)), within(1e-4));
    }

    /** Printed values of Walker and Fetsko's equation with nothing immobilised and an even split, k = 1. */
    @ParameterizedTest(name = "{0} um: {1}")
    @CsvSource({"0.5, 0.197", "1, 0.316", "2, 0.432", "5, 0.497", "10, 0.500"})
    void withAnEvenSplitTheCoverageTermIsThatOfInkTransfer(double filmUm, double transferred) {
        double lifted = 1 - new ForwardRollSplit(1).laneLeftUm(filmUm, 0, 1) / filmUm;
        assertThat(lifted).isCloseTo(transferred, within(1e-3));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void theLaneNeverKeepsLessThanNothingNorMoreThanThereIs(long seed) {
        RandomGenerator random = new Well19937c(seed);
        for (int i = 0; i < 10_000; i++) {
            double lane = random.nextBoolean() ? 0 : Math.pow(10, 4 * random.nextDouble() - 2.5);
            double brought = random.nextBoolean() ? 0 : Math.pow(10, 4 * random.nextDouble() - 2.5);
            double ratio = 3 * random.nextDouble();
            double left = DEFAULT.laneLeftUm(lane, brought, ratio);
            assertThat(left)
                    .as("seed %d, lane %s, brought %s, ratio %s", seed, lane, brought, ratio)
                    .isBetween(0.0, lane + brought);
        }
    }

    @Test
    void aCoverageOfNothingIsRefused() {
        assertThatThrownBy(() -> new ForwardRollSplit(0)).hasMessageContaining("coverage (1/um)");
    }
}
