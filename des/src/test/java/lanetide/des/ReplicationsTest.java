package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@Timeout(20)
class ReplicationsTest {

    private static final int REPLICATIONS = 40;

    @Test
    void theResultIsTheSameForAnyNumberOfThreads() {
        List<Long> oneThread = Replications.run(REPLICATIONS, 1, ReplicationsTest::randomWalk, done -> {});
        assertThat(oneThread).hasSize(REPLICATIONS).doesNotHaveDuplicates();
        assertThat(Replications.run(REPLICATIONS, 2, ReplicationsTest::randomWalk, done -> {}))
                .isEqualTo(oneThread);
        assertThat(Replications.run(REPLICATIONS, 8, ReplicationsTest::randomWalk, done -> {}))
                .isEqualTo(oneThread);
    }

    /** The time at which a thousand events of random spacing have run. */
    private static long randomWalk(int replication) {
        UniformRandomProvider random = new RandomStreams(1).forReplication(replication).stream("steps");
        Simulator simulator = new Simulator();
        Runnable step = new Runnable() {
            @Override
            public void run() {
                if (simulator.executedEvents() < 1000) {
                    simulator.schedule(random.nextInt(1_000_000), 0, "step", this);
                }
            }
        };
        step.run();
        simulator.run();
        return simulator.nowMs();
    }

    @Test
    void resultsStandInTheOrderOfTheReplicationsWhateverTheOrderOfTheirEnds() {
        CountDownLatch othersDone = new CountDownLatch(9);
        List<Integer> results = Replications.run(
                10,
                2,
                i -> {
                    if (i == 0) {
                        await(othersDone);
                    }
                    return i;
                },
                done -> othersDone.countDown());
        assertThat(results).isEqualTo(IntStream.range(0, 10).boxed().toList());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void progressCountsUpByOneAndIsNeverReportedConcurrently(int threads) {
        List<Integer> progress = new ArrayList<>();
        AtomicBoolean reporting = new AtomicBoolean();
        AtomicBoolean overlap = new AtomicBoolean();
        Replications.run(REPLICATIONS, threads, i -> i, done -> {
            overlap.compareAndSet(false, !reporting.compareAndSet(false, true));
            progress.add(done);
            randomWalk(done); // takes long enough for another report to come in, were that possible
            reporting.set(false);
        });
        assertThat(progress)
                .isEqualTo(IntStream.rangeClosed(1, REPLICATIONS).boxed().toList());
        assertThat(overlap).isFalse();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void theFailureWithTheLowestNumberIsRethrownForAnyNumberOfThreads(int threads) {
        AtomicInteger running = new AtomicInteger();
        assertThatThrownBy(() -> Replications.run(
                        REPLICATIONS,
                        threads,
                        i -> {
                            running.incrementAndGet();
                            try {
                                return failFrom(5, i);
                            } finally {
                                running.decrementAndGet();
                            }
                        },
                        done -> {}))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("replication 5 failed");
        assertThat(running).hasValue(0);
    }

    private static int failFrom(int firstToFail, int replication) {
        if (replication >= firstToFail) {
            throw new IllegalStateException("replication " + replication + " failed");
        }
        return replication;
    }

    /** Replication 0 keeps the caller waiting, so that nothing but the failure of 1 can keep 2 from being started. */
    @Test
    void afterAFailureNoFurtherReplicationIsStarted() {
        CountDownLatch furtherStarted = new CountDownLatch(1);
        AtomicBoolean started = new AtomicBoolean();
        assertThatThrownBy(() -> Replications.run(
                        1000,
                        2,
                        i -> {
                            if (i == 0) {
                                started.set(countsDownWithin200Ms(furtherStarted));
                            } else if (i > 1) {
                                furtherStarted.countDown();
                            }
                            return i == 1 ? failFrom(1, i) : i;
                        },
                        done -> {}))
                .hasMessage("replication 1 failed");
        assertThat(started).isFalse();
    }

    @Test
    void afterAFailureRunningReplicationsAreInterruptedAndWaitedFor() {
        CountDownLatch secondStarted = new CountDownLatch(1);
        AtomicBoolean secondEnded = new AtomicBoolean();
        assertThatThrownBy(() -> Replications.run(
                        2,
                        2,
                        i -> {
                            if (i == 0) {
                                await(secondStarted);
                                throw new IllegalStateException("replication 0 failed");
                            }
                            secondStarted.countDown();
                            runUntilInterrupted();
                            secondEnded.set(true);
                            return i;
                        },
                        done -> {}))
                .hasMessage("replication 0 failed");
        assertThat(secondEnded).isTrue();
    }

    @Test
    void anErrorOrAFailingProgressReportReachesTheCallerToo() {
        AssertionError error = new AssertionError("broken model");
        assertThatThrownBy(() -> Replications.run(
                        2,
                        2,
                        i -> {
                            throw error;
                        },
                        done -> {}))
                .isSameAs(error);
        assertThatThrownBy(() -> Replications.run(2, 2, i -> i, done -> {
                    throw new IllegalStateException("broken report");
                }))
                .hasMessage("broken report");
    }

    @Test
    void interruptingTheCallerStopsAllReplicationsAndKeepsTheInterruptStatus() {
        Thread caller = Thread.currentThread();
        AtomicInteger ended = new AtomicInteger();
        try {
            assertThatExceptionOfType(CancellationException.class)
                    .isThrownBy(() -> Replications.run(
                            100,
                            2,
                            i -> {
                                if (i == 0) {
                                    caller.interrupt();
                                }
                                runUntilInterrupted();
                                return ended.incrementAndGet();
                            },
                            done -> {}))
                    .withMessage("interrupted after 0 of 100 replications");
        } finally {
            // Also clears the status, so that it cannot leak into other tests.
            assertThat(Thread.interrupted()).isTrue();
        }
        assertThat(ended.get()).isBetween(1, 2);
    }

    @Test
    void theListOfResultsCannotBeChanged() {
        List<Integer> results = Replications.run(1, 1, i -> i, done -> {});
        assertThatExceptionOfType(UnsupportedOperationException.class).isThrownBy(() -> results.add(1));
    }

    @Test
    void fewerThanOneReplicationOrThreadIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Replications.run(0, 1, i -> i, done -> {}))
                .withMessageContaining("replications is 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Replications.run(1, -2, i -> i, done -> {}))
                .withMessageContaining("threads is -2");
    }

    private static void runUntilInterrupted() {
        Simulator simulator = new Simulator();
        Runnable tick = new Runnable() {
            @Override
            public void run() {
                if (!Thread.currentThread().isInterrupted()) {
                    simulator.schedule(1, 0, "tick", this);
                }
            }
        };
        tick.run();
        simulator.run();
    }

    private static boolean countsDownWithin200Ms(CountDownLatch latch) {
        try {
            return latch.await(200, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
