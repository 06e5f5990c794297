package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.Tally;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SequentialRunTest {

    private static final StoppingRule RULE = new StoppingRule(0.3, 0.95, 10, 500);

    private static double normal(int replication) {
        return ZigguratSampler.NormalizedGaussian.of(new RandomStreams(8).forReplication(replication).stream("x"))
                .sample();
    }

    private static StoppedRun<Double> run(StoppingRule rule, int threads, IntFunction<Double> model) {
        return Replications.runUntil(rule, threads, model, x -> new double[] {x}, done -> {});
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 8})
    void theRunStopsAtTheFirstReplicationThatIsEnoughWhateverTheNumberOfThreads(int threads) {
        StoppedRun<Double> run = run(RULE, threads, SequentialRunTest::normal);
        Tally all = new Tally();
        int expected = 0;
        while (expected < 10 || all.meanInterval(0.95).halfWidth() > 0.3) {
            all.add(normal(expected++));
        }
        assertThat(run.results()).hasSize(expected).startsWith(normal(0), normal(1));
        assertThat(run.isNarrowEnough()).isTrue();
        assertThat(run.halfWidth()).isEqualTo(all.meanInterval(0.95).halfWidth());
        assertThat(run.projected()).isEqualTo(expected);
        assertThat(expected).isBetween(20, 100);
    }

    @Test
    void theFloorIsRunEvenIfThereIsNoSpread() {
        assertThat(run(RULE, 2, i -> 1.0).results()).hasSize(10);
    }

    @Test
    void theCapEndsWhatCannotBeReachedAndSaysHowManyItWouldTake() {
        StoppedRun<Double> run = run(new StoppingRule(0.01, 0.95, 10, 200), 2, SequentialRunTest::normal);
        assertThat(run.isNarrowEnough()).isFalse();
        assertThat(run.results()).hasSize(200);
        assertThat(run.halfWidth()).isCloseTo(1.96 / Math.sqrt(200), within(0.02));
        assertThat((double) run.projected()).isCloseTo(1.96 * 1.96 / 0.01 / 0.01, within(8_000.0));
    }

    @Test
    void everyMeasureMustBeNarrowEnough() {
        StoppedRun<Double> run = Replications.runUntil(
                new StoppingRule(1, 0.95, 10, 500),
                2,
                SequentialRunTest::normal,
                x -> new double[] {x, 4 * x},
                done -> {});
        assertThat(run.results()).hasSizeGreaterThan(40);
        assertThat(run.isNarrowEnough()).isTrue();
    }

    @Test
    void aFailureIsThatOfTheLowestNumberWhateverTheNumberOfThreads() {
        for (int threads : new int[] {1, 2, 5}) {
            assertThatThrownBy(() -> run(RULE, threads, i -> {
                        if (i == 12 || i == 13) {
                            throw new IllegalStateException("replication " + i);
                        }
                        return 10 * normal(i);
                    }))
                    .hasMessage("replication 12");
        }
    }

    @Test
    void progressCountsOn() {
        List<Integer> done = new ArrayList<>();
        Replications.runUntil(RULE, 1, SequentialRunTest::normal, x -> new double[] {x}, done::add);
        assertThat(done).startsWith(1, 2, 3).isSorted().doesNotHaveDuplicates().hasSizeGreaterThanOrEqualTo(20);
    }

    @Test
    void aRuleThatSaysNothingIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StoppingRule(0, 0.95, 10, 20))
                .withMessage("halfWidth is 0.0, but must be finite and greater than 0");
        assertThatIllegalArgumentException().isThrownBy(() -> new StoppingRule(Double.NaN, 0.95, 10, 20));
        assertThatIllegalArgumentException().isThrownBy(() -> new StoppingRule(1, 1, 10, 20));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StoppingRule(1, 0.95, 21, 20))
                .withMessage("floor (21) must be at least 2 and at most cap (20)");
        assertThatIllegalArgumentException().isThrownBy(() -> new StoppingRule(1, 0.95, 1, 20));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Replications.runUntil(RULE, 1, i -> 1.0, x -> new double[0], done -> {}))
                .withMessageContaining("replication 0 has 0 measures");
    }
}
