package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.LongStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.model.PaceOfPlay;
import org.apache.commons.math3.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How long bowlers take over their shots. */
class ShotTimesTest {
    private static final int DRAWS = 200_000;

    @ParameterizedTest(name = "spread {0}, tempo {1}")
    @CsvSource({"0.1, 1", "0.2, 1", "0.6, 1.5", "1, 0.5"})
    void theMeanIsThePaceTimesTheTempoAndTheSpreadIsTheStandardDeviationOfIt(double spread, double tempo) {
        double[] ms = draws(spread, tempo);
        double meanMs = PaceOfPlay.USUAL.firstShotMs() * tempo;
        double mean = Arrays.stream(ms).average().orElseThrow();
        double sd = Math.sqrt(
                Arrays.stream(ms).map(x -> (x - mean) * (x - mean)).average().orElseThrow());

        assertThat(mean).isCloseTo(meanMs, within(4 * spread * meanMs / Math.sqrt(DRAWS)));
        assertThat(sd / meanMs).isCloseTo(spread, within(0.03 * spread));
    }

    /** Against the log-normal law of Apache Commons Math. */
    @Test
    void theTimesFollowALogNormalLaw() {
        double spread = 0.4;
        double sigma = Math.sqrt(Math.log1p(spread * spread));
        LogNormalDistribution law = new LogNormalDistribution(Math.log(22_000) - sigma * sigma / 2, sigma);
        double[] ms = draws(spread, 1);

        for (double p : new double[] {0.05, 0.25, 0.5, 0.75, 0.95}) {
            double limit = law.inverseCumulativeProbability(p);
            double below = Arrays.stream(ms).filter(x -> x <= limit).count() / (double) DRAWS;
            assertThat(below).isCloseTo(p, within(4 * Math.sqrt(p * (1 - p) / DRAWS)));
        }
    }

    @Test
    void withoutSpreadEveryShotTakesTheMean() {
        assertThat(draws(0, 1.5)).containsOnly(33_000);
    }

    private static double[] draws(double spread, double tempo) {
        ShotTimes times = new ShotTimes(
                Fixtures.withSpread(PaceOfPlay.USUAL, spread), tempo, new RandomStreams(7).stream("shot times"));
        return LongStream.range(0, DRAWS).mapToDouble(i -> times.firstShotMs()).toArray();
    }
}
