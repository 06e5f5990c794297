package lanetide.squads.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;

class NarrowingTest {
    private static final int MANY = 40_000;

    /**
     * Jointly normal, var(answer) 4, var(reading) 9, covariance 4.5, error of the reading 2: the deviation is 0.781394
     * of what it was (conditional normal distribution, closed form). Luck of variance 1 on top changes nothing.
     */
    @Test
    void aReadingNarrowsAsTheConditionalNormalDistributionSays() {
        RandomGenerator random = new Well19937c(9);
        double[] answers = new double[MANY];
        double[] readings = new double[MANY];
        for (int i = 0; i < MANY; i++) {
            double common = random.nextGaussian();
            answers[i] = 2 * common + random.nextGaussian();
            readings[i] = 3 * (0.75 * common + Math.sqrt(1 - 0.75 * 0.75) * random.nextGaussian());
        }
        assertThat(new Narrowing(answers, 1).by(readings, 4)).isCloseTo(1 - 0.781394, within(0.01));
        assertThat(new Narrowing(answers, 1).chance(readings)).isLessThan(1e-9);
    }

    /** In 200 tables of 200 sets. */
    @Test
    void aReadingThatTellsNothingPromisesNextToNothing() {
        RandomGenerator random = new Well19937c(4);
        double promised = 0;
        for (int table = 0; table < 200; table++) {
            double[] answers = new double[200];
            double[] readings = new double[200];
            for (int i = 0; i < 200; i++) {
                answers[i] = random.nextGaussian();
                readings[i] = random.nextGaussian();
            }
            promised += new Narrowing(answers, 0.5).by(readings, 0) / 200;
        }
        assertThat(promised).isLessThan(0.01);
    }

    @Test
    void whereOnlyLuckMovesAnAnswerNothingCanNarrowIt() {
        assertThat(new Narrowing(new double[] {1, 2, 3, 4}, 5).by(new double[] {1, 2, 3, 4}, 0))
                .isZero();
    }

    @Test
    void aReadingThatIsAlwaysTheSameTellsNothing() {
        Narrowing narrowing = new Narrowing(new double[] {1, 2, 3, 4}, 0);
        assertThat(narrowing.by(new double[] {7, 7, 7, 7}, 0)).isZero();
        assertThat(narrowing.chance(new double[] {7, 7, 7, 7})).isEqualTo(1);
    }
}
