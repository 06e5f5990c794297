package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lanetide.des.ReadmeRow;
import lanetide.des.random.RandomStreams;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TallyTest {
    private static final List<Double> QUANTILES = new ArrayList<>();
    private static final List<Double> DEVIATIONS_OFF = new ArrayList<>();
    private static double worstBesideLibrary;

    @AfterAll
    static void theReadmeSaysHowCloseTheyCame() {
        ReadmeRow.says(
                "Student's t, five quantiles",
                QUANTILES.stream()
                        .map(t -> String.format(Locale.ROOT, "%.3f", t))
                        .collect(Collectors.joining(", ")));
        ReadmeRow.says(
                "NumAcc1 to NumAcc4: standard deviation",
                DEVIATIONS_OFF.stream().map(ReadmeRow::offBy).collect(Collectors.joining(", ")));
        ReadmeRow.says("mean, variance, range of random data", ReadmeRow.offBy(worstBesideLibrary));
    }

    private static Tally tallyOf(double... observations) {
        Tally tally = new Tally("delay");
        for (double observation : observations) {
            tally.add(observation);
        }
        return tally;
    }

    /**
     * Mean delays of ten replications of a bank, 90 % interval. Source: A. M. Law, "Simulation Modeling and Analysis",
     * chapter on output analysis for terminating systems (data from memory); mean 2.031, half-width 0.32228.
     */
    @Test
    void theIntervalOfIndependentReplicationsIsThatOfTheTextbook() {
        Tally delays = tallyOf(1.53, 1.66, 1.24, 2.34, 2.00, 1.69, 2.69, 2.86, 1.70, 2.60);
        ConfidenceInterval interval = delays.meanInterval(0.90);
        assertThat(delays.mean()).isCloseTo(2.031, within(1e-12));
        assertThat(delays.variance()).isCloseTo(0.30910, within(5e-6));
        assertThat(interval.halfWidth()).isCloseTo(0.32228, within(5e-6));
        assertThat(interval.low()).isCloseTo(1.709, within(5e-4));
        assertThat(interval.high()).isCloseTo(2.353, within(5e-4));
        assertThat(interval.level()).isEqualTo(0.90);
    }

    /**
     * Two inventory policies under common random numbers, compared by their paired differences. Source: A. M. Law,
     * "Simulation Modeling and Analysis", chapter on comparing systems (data from memory); mean 4.978, 90 % interval
     * 1.649 to 8.307.
     */
    @Test
    void theIntervalOfPairedDifferencesIsThatOfTheTextbook() {
        double[] one = {126.97, 124.31, 126.68, 122.66, 127.23};
        double[] other = {118.21, 120.22, 122.45, 122.68, 119.40};
        Tally differences = new Tally("difference of cost");
        for (int i = 0; i < one.length; i++) {
            differences.add(one[i] - other[i]);
        }
        assertThat(differences.mean()).isCloseTo(4.978, within(1e-9));
        assertThat(differences.variance() / 5).isCloseTo(2.43827, within(5e-6));
        assertThat(differences.meanInterval(0.90).low()).isCloseTo(1.649, within(5e-4));
        assertThat(differences.meanInterval(0.90).high()).isCloseTo(8.307, within(5e-4));
    }

    /**
     * Standard error 1, so that the half-width is Student's quantile. Source: NIST/SEMATECH e-Handbook of Statistical
     * Methods, section 1.3.6.7.2, critical values of Student's t.
     */
    @ParameterizedTest(name = "{0} observations at {1}: t = {2}")
    @CsvSource({"2, 0.95, 12.706", "6, 0.95, 2.571", "11, 0.90, 1.812", "21, 0.99, 2.845", "101, 0.95, 1.984"})
    void theHalfWidthIsStudentsQuantileTimesTheStandardError(int count, double level, double quantile) {
        Tally tally = new Tally();
        double spread = Math.sqrt(count * (count - 1.0) / 2);
        tally.add(spread);
        tally.add(-spread);
        for (int i = 2; i < count; i++) {
            tally.add(0);
        }
        assertThat(tally.standardError()).isCloseTo(1, within(1e-12));
        assertThat(tally.meanInterval(level).halfWidth()).isCloseTo(quantile, within(5e-4));
        QUANTILES.add(tally.meanInterval(level).halfWidth());
    }

    /**
     * Large values that differ in their last digits. Source: NIST Statistical Reference Datasets, univariate summary
     * statistics, NumAcc1 to NumAcc4; mean and standard deviation are exact by construction. The tolerance is a
     * relative error in the deviations that the rounding of the data themselves to double precision allows.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "NumAcc1,  10000002,   10000001,   10000003,    1, 1,   1e-15",
        "NumAcc2,       1.2,        1.1,        1.3,  500, 0.1, 1e-14",
        "NumAcc3, 1000000.2,  1000000.1,  1000000.3,  500, 0.1, 1e-9",
        "NumAcc4, 10000000.2, 10000000.1, 10000000.3, 500, 0.1, 1e-8"
    })
    void aSmallSpreadAboutALargeMeanKeepsItsDigits(
            String dataset, double mean, double low, double high, int pairs, double deviation, double tolerance) {
        Tally tally = tallyOf(mean);
        for (int i = 0; i < pairs; i++) {
            tally.add(low);
            tally.add(high);
        }
        assertThat(tally.mean()).isCloseTo(mean, within(mean * 1e-14));
        assertThat(tally.standardDeviation()).as(dataset).isCloseTo(deviation, within(deviation * tolerance));
        DEVIATIONS_OFF.add(tally.standardDeviation() / deviation - 1);
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void allStatisticsAgreeWithALibraryThatKeepsTheObservations(long seed) {
        UniformRandomProvider random = new RandomStreams(seed).stream("observations");
        Tally tally = new Tally();
        DescriptiveStatistics library = new DescriptiveStatistics();
        for (int i = 0; i < 1000; i++) {
            double x = 100 + Math.pow(random.nextDouble(-1, 1), 3);
            tally.add(x);
            library.addValue(x);
        }
        assertThat(tally.count()).isEqualTo(1000);
        assertThat(tally.min()).as("seed %d", seed).isEqualTo(library.getMin());
        assertThat(tally.max()).as("seed %d", seed).isEqualTo(library.getMax());
        assertThat(tally.mean()).as("seed %d", seed).isCloseTo(library.getMean(), within(1e-11));
        assertThat(tally.variance()).as("seed %d", seed).isCloseTo(library.getVariance(), within(1e-11));
        worstBesideLibrary = Math.max(worstBesideLibrary, Math.abs(tally.mean() - library.getMean()));
        worstBesideLibrary = Math.max(worstBesideLibrary, Math.abs(tally.variance() - library.getVariance()));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void whatIsNotAFiniteNumberIsRefusedAndLeavesTheTallyAsItWas(double x) {
        Tally tally = tallyOf(1, 2);
        assertThatIllegalArgumentException().isThrownBy(() -> tally.add(x)).withMessageContaining("delay is " + x);
        assertThat(tally.count()).isEqualTo(2);
        assertThat(tally.mean()).isEqualTo(1.5);
    }

    @Test
    void statisticsThatDoNotExistAreRefusedRatherThanMadeUp() {
        Tally empty = tallyOf();
        assertThatIllegalStateException().isThrownBy(empty::mean).withMessageContaining("mean of delay");
        assertThatIllegalStateException().isThrownBy(empty::min);
        assertThatIllegalStateException().isThrownBy(empty::max);
        Tally one = tallyOf(4);
        assertThat(one.mean()).isEqualTo(4);
        assertThatIllegalStateException().isThrownBy(one::variance).withMessageContaining("at least 2");
        assertThatIllegalStateException().isThrownBy(one::standardDeviation);
        assertThatIllegalStateException().isThrownBy(one::standardError);
        assertThatIllegalStateException().isThrownBy(() -> one.meanInterval(0.9));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1, -0.1, 95, Double.NaN})
    void aLevelThatIsNoProbabilityIsRefused(double level) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tallyOf(1, 2).meanInterval(level))
                .withMessageContaining("level is " + level);
    }
}
