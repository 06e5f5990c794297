package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleSupplier;
import lanetide.des.random.RandomStreams;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.correlation.Covariance;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EnsembleSmootherTest {
    private static final RealMatrix MODEL = new Array2DRowRealMatrix(new double[][] {{1, 2}, {.5, -1}, {2, .3}});
    private static final double[] PRIOR_MEAN = {.5, -1};
    private static final RealMatrix PRIOR = new Array2DRowRealMatrix(new double[][] {{1, .3}, {.3, 2}});
    private static final RealMatrix NOISE = MatrixUtils.createRealDiagonalMatrix(new double[] {.25, .5, 1});
    private static final double[] DATA = {1.2, .4, -.7};
    private static final int MEMBERS = 100_000;

    /** The linear normal case has a closed form: covariance (P^-1 + G' R^-1 G)^-1, worked out here on its own. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void severalInflatedStepsOfALinearModelEndAtTheExactPosterior(long seed) {
        for (List<Double> inflations : List.of(List.of(4.0, 4.0, 4.0, 4.0), new FitPlan(1, 1).inflations())) {
            double[][] members = drawn(normal(seed));
            for (double inflation : inflations) {
                double[][] said = said(members);
                members =
                        EnsembleSmoother.step(members, said, DATA, NOISE.scalarMultiply(inflation), normal(seed + 10));
                seed++;
            }
            RealMatrix information = inverse(PRIOR)
                    .add(MODEL.transpose().multiply(inverse(NOISE)).multiply(MODEL));
            RealMatrix exact = inverse(information);
            double[] mean =
                    exact.operate(new Array2DRowRealMatrix(inverse(PRIOR).operate(PRIOR_MEAN))
                            .add(new Array2DRowRealMatrix(
                                    MODEL.transpose().multiply(inverse(NOISE)).operate(DATA)))
                            .getColumn(0));
            // Worked out elsewhere as well, in double precision by closed forms.
            assertThat(mean[0]).isCloseTo(.195792, within(1e-6));
            assertThat(exact.getEntry(0, 1)).isCloseTo(-.060854, within(1e-6));
            RealMatrix found = new Covariance(members).getCovarianceMatrix();
            for (int i = 0; i < 2; i++) {
                int at = i;
                assertThat(Arrays.stream(members)
                                .mapToDouble(member -> member[at])
                                .average()
                                .orElseThrow())
                        .isCloseTo(mean[i], within(.012));
                for (int j = 0; j < 2; j++) {
                    assertThat(found.getEntry(i, j)).isCloseTo(exact.getEntry(i, j), within(.004));
                }
            }
        }
    }

    /** What members' own luck has put in must not be put in again. */
    @Test
    void luckThatMembersHaveInWhatTheySayCountsOnce() {
        DoubleSupplier normal = normal(5);
        double[][] members = drawn(normal);
        double[][] said = said(members);
        RealMatrix half = NOISE.scalarMultiply(.5);
        RealMatrix lower = new CholeskyDecomposition(half).getL();
        for (double[] one : said) {
            double[] luck =
                    lower.operate(new double[] {normal.getAsDouble(), normal.getAsDouble(), normal.getAsDouble()});
            Arrays.setAll(one, r -> one[r] + luck[r]);
        }
        double[][] moved = EnsembleSmoother.step(members, said, DATA, half, normal);
        RealMatrix found = new Covariance(moved).getCovarianceMatrix();
        assertThat(found.getEntry(0, 0)).isCloseTo(.152185, within(.004));
        assertThat(found.getEntry(1, 1)).isCloseTo(.078058, within(.004));
    }

    private static double[][] drawn(DoubleSupplier normal) {
        RealMatrix lower = new CholeskyDecomposition(PRIOR).getL();
        double[][] members = new double[MEMBERS][];
        for (int i = 0; i < MEMBERS; i++) {
            double[] off = lower.operate(new double[] {normal.getAsDouble(), normal.getAsDouble()});
            members[i] = new double[] {PRIOR_MEAN[0] + off[0], PRIOR_MEAN[1] + off[1]};
        }
        return members;
    }

    private static double[][] said(double[][] members) {
        return Arrays.stream(members).map(MODEL::operate).toArray(double[][]::new);
    }

    private static RealMatrix inverse(RealMatrix matrix) {
        return new LUDecomposition(matrix).getSolver().getInverse();
    }

    private static DoubleSupplier normal(long seed) {
        return ZigguratSampler.NormalizedGaussian.of(new RandomStreams(seed).stream("test"))::sample;
    }
}
