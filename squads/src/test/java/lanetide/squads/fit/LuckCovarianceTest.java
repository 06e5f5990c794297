package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.des.random.RandomStreams;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.api.Test;

class LuckCovarianceTest {
    private static final int READINGS = 40;

    /** Each reading has a luck common to all (deviation 2) and one of its own (deviation 1): correlation 0.8. */
    @Test
    void whatIsCommonToReadingsIsFoundAndWhatDiffersByTheSetIsNotLuck() {
        SharedStateContinuousSampler normal =
                ZigguratSampler.NormalizedGaussian.of(new RandomStreams(3).stream("test"));
        int pairs = 200;
        double[][] first = new double[pairs][READINGS];
        double[][] second = new double[pairs][READINGS];
        for (int pair = 0; pair < pairs; pair++) {
            double set = 10 * normal.sample();
            fill(first[pair], set, normal);
            fill(second[pair], set, normal);
        }
        RealMatrix luck = LuckCovariance.of(first, second);
        assertThat(luck.getEntry(0, 0)).isCloseTo(5, within(1.2));
        assertThat(luck.getEntry(0, 1) / Math.sqrt(luck.getEntry(0, 0) * luck.getEntry(1, 1)))
                .isCloseTo(.8, within(.07));
    }

    @Test
    void correlationsThatAreChanceAreTakenBackAndAReadingWithoutLuckHasNone() {
        SharedStateContinuousSampler normal =
                ZigguratSampler.NormalizedGaussian.of(new RandomStreams(4).stream("test"));
        int pairs = 30;
        double[][] first = new double[pairs][READINGS];
        double[][] second = new double[pairs][READINGS];
        for (int pair = 0; pair < pairs; pair++) {
            for (int r = 1; r < READINGS; r++) {
                first[pair][r] = normal.sample();
                second[pair][r] = normal.sample();
            }
        }
        RealMatrix luck = LuckCovariance.of(first, second);
        double squares = 0;
        for (int a = 1; a < READINGS; a++) {
            for (int b = 1; b < a; b++) {
                squares += luck.getEntry(a, b) * luck.getEntry(a, b);
            }
        }
        // Unshrunk, their mean square is one over the pairs.
        assertThat(squares / (READINGS * (READINGS - 1) / 2.0)).isLessThan(.25 / pairs);
        assertThat(luck.getRow(0)).containsOnly(0);
    }

    private static void fill(double[] readings, double set, SharedStateContinuousSampler normal) {
        double common = 2 * normal.sample();
        for (int r = 0; r < readings.length; r++) {
            readings[r] = set + common + normal.sample();
        }
    }
}
