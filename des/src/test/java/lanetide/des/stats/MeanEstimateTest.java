package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import lanetide.des.ReadmeRow;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class MeanEstimateTest {

    /** Data from memory, A. M. Law, "Simulation Modeling and Analysis": ten bank replications. */
    @Test
    void theIntervalOfTheBankIsLaws() {
        Tally bank = tally(1.53, 1.66, 1.24, 2.34, 2.00, 1.69, 2.69, 2.86, 1.70, 2.60);
        ConfidenceInterval interval = MeanEstimate.of(bank).interval(0.90);
        assertThat(bank.mean()).isCloseTo(2.031, within(5e-4));
        assertThat(bank.variance()).isCloseTo(0.30910, within(5e-6));
        assertThat(interval.halfWidth()).isCloseTo(0.32228, within(5e-6));
        assertThat(interval.low()).isCloseTo(1.709, within(5e-4));
        assertThat(interval.high()).isCloseTo(2.353, within(5e-4));
        assertThat(interval).isEqualTo(bank.meanInterval(0.90));
        ReadmeRow.says(
                "ten bank replications: 90 % interval",
                String.format(Locale.ROOT, "%.3f ± %.5f", bank.mean(), interval.halfWidth()));
    }

    /** Data from memory, A. M. Law: five paired inventory costs. */
    @Test
    void thePairedIntervalOfTheInventoryIsLaws() {
        MeanEstimate difference = MeanEstimate.ofPairs(
                new double[] {126.97, 124.31, 126.68, 122.66, 127.23},
                new double[] {118.21, 120.22, 122.45, 122.68, 119.40});
        assertThat(difference.value()).isCloseTo(4.978, within(5e-4));
        assertThat(difference.standardError() * difference.standardError()).isCloseTo(2.43827, within(5e-6));
        assertThat(difference.interval(0.90).low()).isCloseTo(1.649, within(5e-4));
        assertThat(difference.interval(0.90).high()).isCloseTo(8.307, within(5e-4));
        ReadmeRow.says(
                "five paired inventory costs: 90 % interval",
                String.format(
                        Locale.ROOT,
                        "%.3f to %.3f",
                        difference.interval(0.90).low(),
                        difference.interval(0.90).high()));
    }

    /** Recorded results of the R package TOSTER, file test-known_results.R. */
    @Nested
    class Equivalence {

        @Test
        void oneSampleIsEquivalentAsInTheRecordedResult() {
            MeanEstimate mean = mean(300, 0.52 - 0.5, 0.5);
            EquivalenceTest test = EquivalenceTest.about0(mean, 0.1);
            assertThat(test.tLow()).isCloseTo(4.156922, within(5e-7));
            assertThat(test.pLow()).isCloseTo(2.108451e-5, within(5e-12));
            assertThat(test.tHigh()).isCloseTo(-2.771281, within(5e-7));
            assertThat(test.pHigh()).isCloseTo(0.002966762, within(5e-10));
            assertThat(test.interval(0.05).low()).isCloseTo(-0.02763041, within(5e-9));
            assertThat(test.interval(0.05).high()).isCloseTo(0.06763041, within(5e-9));
            assertThat(test.p()).isEqualTo(test.pHigh());
            assertThat(test.isEquivalent(0.05)).isTrue();
            assertThat(test.isEquivalent(0.002)).isFalse();
            ReadmeRow.says("equivalence: one sample", tAndP(test));
        }

        @Test
        void pairsAreEquivalentAsInTheRecordedResult() {
            double deviation = Math.sqrt(1.17 * 1.17 + 1.29 * 1.29 - 2 * 0.75 * 1.17 * 1.29);
            double bound = 0.4 * deviation;
            MeanEstimate difference = mean(65, 5.83 - 5.75, deviation);
            EquivalenceTest test = EquivalenceTest.about0(difference, bound);
            assertThat(bound).isCloseTo(0.350782, within(5e-7));
            assertThat(test.tLow()).isCloseTo(3.960381, within(5e-7));
            assertThat(test.pLow()).isCloseTo(9.531728e-5, within(5e-12));
            assertThat(test.tHigh()).isCloseTo(-2.489426, within(5e-7));
            assertThat(test.pHigh()).isCloseTo(0.00770235, within(5e-9));
            ReadmeRow.says("equivalence: pairs", tAndP(test));
        }

        private static String tAndP(EquivalenceTest test) {
            return String.format(Locale.ROOT, "%.6f, %.6f, p = %.7g", test.tLow(), test.tHigh(), test.p());
        }

        @Test
        void theTestAndItsIntervalAgree() {
            for (double mean = -1; mean <= 1; mean += 0.05) {
                EquivalenceTest test = EquivalenceTest.about0(new MeanEstimate(mean, 0.2, 12), 0.7);
                ConfidenceInterval interval = test.interval(0.05);
                assertThat(test.isEquivalent(0.05))
                        .as("mean %f", mean)
                        .isEqualTo(-0.7 < interval.low() && interval.high() < 0.7);
            }
        }

        @Test
        void withoutAnySpreadTheEstimateItselfDecides() {
            MeanEstimate same = MeanEstimate.ofPairs(new double[] {5, 6, 7}, new double[] {5, 6, 7});
            assertThat(same.interval(0.95)).isEqualTo(new ConfidenceInterval(0, 0, 0.95));
            assertThat(same.twoSidedP(0)).isEqualTo(1);
            assertThat(same.twoSidedP(0.1)).isZero();
            assertThat(EquivalenceTest.about0(same, 0.5).isEquivalent(0.05)).isTrue();
            assertThat(new EquivalenceTest(same, 0.5, 1).isEquivalent(0.05)).isFalse();
        }
    }

    @Test
    void whatIsNoEstimateIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> MeanEstimate.ofPairs(new double[3], new double[2]))
                .withMessage("a has 3 values and b has 2, but pairs need as many of each");
        assertThatIllegalArgumentException().isThrownBy(() -> new MeanEstimate(0, -1, 5));
        assertThatIllegalStateException().isThrownBy(() -> MeanEstimate.of(tally(1)));
        assertThatIllegalArgumentException().isThrownBy(() -> new MeanEstimate(0, 1, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new EquivalenceTest(new MeanEstimate(0, 1, 5), 1, 1));
        MeanEstimate mean = new MeanEstimate(0, 1, 5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> EquivalenceTest.about0(mean, 1).isEquivalent(0.5))
                .withMessage("alpha is 0.5, but must lie between 0 and 0.5, such as 0.05 for 5 %");
    }

    /** The estimate from what is reported of a sample. */
    private static MeanEstimate mean(int count, double mean, double standardDeviation) {
        return new MeanEstimate(mean, standardDeviation / Math.sqrt(count), count - 1);
    }

    private static Tally tally(double... values) {
        Tally tally = new Tally();
        for (double value : values) {
            tally.add(value);
        }
        return tally;
    }
}
