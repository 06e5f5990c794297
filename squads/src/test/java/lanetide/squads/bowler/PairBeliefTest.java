package lanetide.squads.bowler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.filter.DefaultMeasurementModel;
import org.apache.commons.math3.filter.DefaultProcessModel;
import org.apache.commons.math3.filter.KalmanFilter;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.DiagonalMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PairBeliefTest {
    private static final double DRIFT = 0.3;

    /** Source: the Kalman filter of Apache Commons Math, one observation at a time, with the numbers of the README. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void isTheKalmanFilterOfALibrary(long seed) {
        Random random = new Random(seed);
        PairBelief belief = new PairBelief(DRIFT, 0);
        RealVector mean = new ArrayRealVector(3);
        double drift = DRIFT / 6;
        RealMatrix covariance =
                new Array2DRowRealMatrix(new double[][] {{0.25, 0.175, 0}, {0.175, 0.25, 0}, {0, 0, drift * drift}});
        for (int ball = 0; ball < 200; ball++) {
            int side = random.nextInt(2);
            double miss = 3 * random.nextGaussian();
            double variance = 1 + random.nextDouble(5);
            KalmanFilter reference = reference(mean, covariance, side, variance);
            reference.predict();
            reference.correct(new double[] {miss});
            mean = reference.getStateEstimationVector();
            covariance = reference.getErrorCovarianceMatrix();

            belief.see(side, miss, variance);

            assertThat(belief.miss(0)).as("seed %d", seed).isCloseTo(mean.getEntry(0), within(1e-9));
            assertThat(belief.miss(1)).as("seed %d", seed).isCloseTo(mean.getEntry(1), within(1e-9));
        }
    }

    /** The same with four unknowns, where others' balls are watched between his own. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {4, 5, 6})
    void isTheKalmanFilterOfALibraryWhenHeWatchesOthers(long seed) {
        Random random = new Random(seed);
        PairBelief belief = new PairBelief(DRIFT, 0.6);
        RealVector mean = new ArrayRealVector(new double[] {0, 0, 0.1, 0});
        RealMatrix covariance = new Array2DRowRealMatrix(
                new double[][] {{0.25, 0.175, 0, 0}, {0.175, 0.25, 0, 0}, {0, 0, 0.0025, 0}, {0, 0, 0, 1}});
        for (int ball = 0; ball < 200; ball++) {
            int side = random.nextInt(2);
            boolean own = random.nextInt(4) == 0;
            double off = 3 * random.nextGaussian();
            double variance = 1 + random.nextDouble(5);
            KalmanFilter reference = watching(mean, covariance, side, own, variance);
            reference.predict();
            reference.correct(new double[] {off});
            mean = reference.getStateEstimationVector();
            covariance = reference.getErrorCovarianceMatrix();

            if (own) {
                belief.see(side, off, variance);
            } else {
                belief.watch(side, off, variance);
            }

            assertThat(belief.miss(0)).as("seed %d", seed).isCloseTo(mean.getEntry(0), within(1e-9));
            assertThat(belief.miss(1)).as("seed %d", seed).isCloseTo(mean.getEntry(1), within(1e-9));
        }
    }

    /** Time passes with his own balls only. */
    private static KalmanFilter watching(
            RealVector mean, RealMatrix covariance, int side, boolean own, double variance) {
        double step = own ? 0.5 : 0;
        RealMatrix passes =
                new Array2DRowRealMatrix(new double[][] {{1, 0, step, 0}, {0, 1, step, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}});
        RealMatrix unsteady =
                new DiagonalMatrix(own ? new double[] {0.005, 0.005, 0.00005, 0.01125} : new double[] {0, 0, 0, 0});
        RealMatrix seen = new Array2DRowRealMatrix(1, 4);
        seen.setEntry(0, side, 1);
        seen.setEntry(0, 3, own ? 0 : 1);
        return new KalmanFilter(
                new DefaultProcessModel(passes, new Array2DRowRealMatrix(4, 1), unsteady, mean, covariance),
                new DefaultMeasurementModel(seen, new Array2DRowRealMatrix(new double[][] {{variance}})));
    }

    private static KalmanFilter reference(RealVector mean, RealMatrix covariance, int side, double variance) {
        RealMatrix halfARound = new Array2DRowRealMatrix(new double[][] {{1, 0, 0.5}, {0, 1, 0.5}, {0, 0, 1}});
        RealMatrix unsteady = new Array2DRowRealMatrix(new double[][] {{0.005, 0, 0}, {0, 0.005, 0}, {0, 0, 0.00005}});
        RealMatrix seen = new Array2DRowRealMatrix(1, 3);
        seen.setEntry(0, side, 1);
        return new KalmanFilter(
                new DefaultProcessModel(halfARound, new Array2DRowRealMatrix(3, 1), unsteady, mean, covariance),
                new DefaultMeasurementModel(seen, new Array2DRowRealMatrix(new double[][] {{variance}})));
    }

    @Test
    void aBallOnOneLaneTeachesLessAboutTheOther() {
        PairBelief belief = new PairBelief(DRIFT, 0);

        belief.see(0, 4, 4);

        assertThat(belief.miss(0)).isBetween(0.1, 1.0);
        assertThat(belief.miss(1)).isBetween(0.05, 0.9 * belief.miss(0));
    }

    @Test
    void whoSeesASteadyDriftForeseesIt() {
        PairBelief foreseeing = new PairBelief(DRIFT, 0);
        for (int ball = 0; ball < 200; ball++) {
            foreseeing.see(ball % 2, 0.05 * ball, 4);
        }

        assertThat(foreseeing.miss(0)).isCloseTo(0.05 * 200, within(0.2));
    }

    @Test
    void onNewLanesHeExpectsTheMissHeHad() {
        PairBelief belief = new PairBelief(0, 0);
        for (int ball = 0; ball < 100; ball++) {
            belief.see(ball % 2, ball % 2, 0.01);
        }

        belief.moveOn();

        assertThat(belief.miss(0)).isCloseTo(0.5, within(0.1));
        assertThat(belief.miss(1)).isEqualTo(belief.miss(0));
    }

    @Test
    void withoutAnyErrorTheLastBallIsBelieved() {
        PairBelief belief = new PairBelief(0, 0);

        belief.see(1, 3, 0);

        assertThat(belief.miss(1)).isCloseTo(3, within(1e-12));
    }
}
