package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.Function;
import java.util.function.LongSupplier;
import java.util.function.ToDoubleFunction;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.Tally;
import lanetide.des.stats.TimeWeighted;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The kernel, its streams and its statistics together, against closed forms of queueing theory: 20 independent
 * replications must have their mean within three standard errors of the exact value, and a standard error small enough
 * for this to mean something.
 *
 * <p>Sources: D. Gross and C. M. Harris, "Fundamentals of Queueing Theory" (3rd ed. 1998), chapters from memory: waits
 * of M/M/1 and M/M/c, machine repair and Little's formula L = lambda W (chapter 2), Pollaczek-Khinchine formula
 * Wq = rho / (1 - rho) * (1 + c2) / 2 * E[S] for M/G/1 (chapter 5).
 */
class QueueingTheoryTest {

    private static final RandomStreams STREAMS = new RandomStreams(20261125);
    private static final int REPLICATIONS = 20;
    private static final int WARM_UP = 10_000;
    private static final int CUSTOMERS = 70_000;

    /** One unit of the textbook's time; long enough that rounding to milliseconds does not matter. */
    private static final double UNIT_MS = 1e6;

    /** What one replication of an open queue yields after its warm-up, in textbook units. */
    private record Observed(double meanWait, double shareWaitingOver5, double meanQueueLength) {}

    @ParameterizedTest(name = "{0}: mean wait {3}")
    @CsvSource(
            value = {
                // queue, servers, arrivals per unit, expected mean wait
                "M/M/1 rho .5,                1, 0.5, 1",
                "M/M/1 rho .8,                1, 0.8, 4",
                "M/M/2 rho .8,                2, 1.6, 1.777778",
                "M/M/3 eye clinic,            3, 6,   0.148148",
                "M/D/1 rho .5,                1, 0.5, 0.5",
                "M/D/1 rho .8,                1, 0.8, 2",
                "M/E2/1 rho .8,               1, 0.8, 3",
                "M/U/1 on 0 to 2 rho .8,      1, 0.8, 2.666667"
            })
    void theMeanWaitIsThatOfTheory(String queue, int servers, double arrivalRate, double expected) {
        Tally meanWaits = tally(replicate(queue, servers, arrivalRate), Observed::meanWait);
        assertAgrees(meanWaits, expected);
    }

    /** P(Wq > t) = rho exp(-(mu - lambda) t): 0.8 exp(-1). */
    @Test
    void theShareOfLongWaitsIsThatOfTheory() {
        assertAgrees(tally(replicate("M/M/1 rho .8", 1, 0.8), Observed::shareWaitingOver5), 0.8 * Math.exp(-1));
    }

    /** Lq of the eye clinic (M/M/3, lambda 6, mu 3) is 8/9, from a time-weighted mean and not from the waits. */
    @Test
    void theMeanQueueLengthIsThatOfTheory() {
        assertAgrees(tally(replicate("M/M/3 eye clinic", 3, 6), Observed::meanQueueLength), 8.0 / 9);
    }

    /** From an empty M/M/1 the second customer waits lambda / (lambda + mu) / mu on average; memorylessness. */
    @Test
    void theSecondCustomerFromEmptyWaitsAsLongAsTheorySays() {
        double lambda = 0.8;
        double mu = 1;
        Tally waits = new Tally("wait of the second customer");
        Replications.run(100_000, 2, i -> secondWait(STREAMS.forReplication(i), lambda), done -> {})
                .forEach(waits::add);
        assertAgrees(waits, lambda / (lambda + mu) / mu);
    }

    /**
     * Five robots that fail after 30 hours on average, two repairmen who need 3 hours: 0.465 robots are down on average
     * (Gross and Harris, chapter 2), here to six digits.
     */
    @Test
    void asManyMachinesAreDownAsTheorySays() {
        Tally down = new Tally("machines down");
        Replications.run(REPLICATIONS, 2, i -> meanMachinesDown(STREAMS.forReplication(i)), done -> {})
                .forEach(down::add);
        assertAgrees(down, 0.464794);
    }

    private static void assertAgrees(Tally replications, double expected) {
        assertThat(replications.standardError()).isLessThan(0.02 * expected);
        assertThat(replications.mean())
                .as("%d replications, standard error %.6f", replications.count(), replications.standardError())
                .isBetween(expected - 3 * replications.standardError(), expected + 3 * replications.standardError());
    }

    private static Tally tally(List<Observed> replications, ToDoubleFunction<Observed> value) {
        Tally tally = new Tally();
        replications.stream().mapToDouble(value).forEach(tally::add);
        return tally;
    }

    private static List<Observed> replicate(String queue, int servers, double arrivalRate) {
        return Replications.run(
                REPLICATIONS,
                2,
                i -> {
                    RandomStreams streams = STREAMS.forReplication(i);
                    LongSupplier service = serviceTimes(queue).apply(streams.stream(queue + "/service"));
                    LongSupplier gaps = exponential(streams.stream(queue + "/arrivals"), 1 / arrivalRate);
                    return new OpenQueue(servers, service, gaps).run();
                },
                done -> {});
    }

    private static Function<UniformRandomProvider, LongSupplier> serviceTimes(String queue) {
        return random -> switch (queue.substring(0, queue.indexOf(' '))) {
            case "M/D/1" -> () -> millis(1);
            case "M/U/1" -> () -> millis(2 * random.nextDouble());
            case "M/E2/1" -> {
                ContinuousSampler half = ZigguratSampler.Exponential.of(random, 0.5);
                yield () -> millis(half.sample() + half.sample());
            }
            case "M/M/3" -> exponential(random, 1.0 / 3);
            case "M/M/1", "M/M/2" -> exponential(random, 1);
            default -> throw new IllegalArgumentException(queue);
        };
    }

    private static LongSupplier exponential(UniformRandomProvider random, double mean) {
        ContinuousSampler sampler = ZigguratSampler.Exponential.of(random, mean);
        return () -> millis(sampler.sample());
    }

    private static long millis(double units) {
        return Math.round(units * UNIT_MS);
    }

    private static double secondWait(RandomStreams streams, double lambda) {
        Simulator simulator = new Simulator();
        Tally waits = new Tally("wait");
        LongSupplier service = exponential(streams.stream("service"), 1);
        ServiceStation station = new ServiceStation(simulator, 1, service, waitMs -> waits.add(waitMs / UNIT_MS));
        long gapMs = exponential(streams.stream("arrival"), 1 / lambda).getAsLong();
        simulator.schedule(0, 0, "arrival", () -> station.arrive(() -> {}));
        simulator.schedule(gapMs, 0, "arrival", () -> station.arrive(() -> {}));
        simulator.run();
        return waits.sum();
    }

    private static double meanMachinesDown(RandomStreams streams) {
        long warmUpMs = millis(1_000);
        long endMs = millis(100_000);
        Simulator simulator = new Simulator();
        LongSupplier repair = exponential(streams.stream("repair"), 3);
        LongSupplier life = exponential(streams.stream("life"), 30);
        ServiceStation repairmen = new ServiceStation(simulator, 2, repair, waitMs -> {});
        TimeWeighted[] down = {new TimeWeighted(0, 0)};
        Runnable work = new Runnable() {
            @Override
            public void run() {
                simulator.schedule(life.getAsLong(), 0, "failure", this::fail);
            }

            private void fail() {
                down[0].add(simulator.nowMs(), 1);
                repairmen.arrive(() -> {
                    down[0].add(simulator.nowMs(), -1);
                    run();
                });
            }
        };
        for (int machine = 0; machine < 5; machine++) {
            work.run();
        }
        simulator.schedule(warmUpMs, 0, "warm-up ends", () -> down[0] = new TimeWeighted(warmUpMs, down[0].value()));
        simulator.runUntil(endMs);
        return down[0].mean(endMs);
    }

    /** Customers arrive at random until enough have come. */
    private static final class OpenQueue {

        private final Simulator simulator = new Simulator();
        private final Tally waits = new Tally("wait");
        private final Tally over5 = new Tally("waits over 5");
        private final ServiceStation station;
        private final LongSupplier gapsMs;
        private TimeWeighted queueLength = new TimeWeighted(0, 0);
        private int arrived;
        private int served;

        OpenQueue(int servers, LongSupplier serviceMs, LongSupplier gapsMs) {
            station = new ServiceStation(simulator, servers, serviceMs, this::observe);
            this.gapsMs = gapsMs;
        }

        Observed run() {
            simulator.schedule(gapsMs.getAsLong(), 0, "arrival", this::arrive);
            simulator.runWhile(() -> arrived < CUSTOMERS);
            double meanLength = queueLength.mean(simulator.nowMs());
            simulator.run();
            return new Observed(waits.mean(), over5.mean(), meanLength);
        }

        private void arrive() {
            if (++arrived == WARM_UP) {
                queueLength = new TimeWeighted(simulator.nowMs(), station.waiting());
            }
            station.arrive(this::noteLength);
            noteLength();
            if (arrived < CUSTOMERS) {
                simulator.schedule(gapsMs.getAsLong(), 0, "arrival", this::arrive);
            }
        }

        private void noteLength() {
            queueLength.set(simulator.nowMs(), station.waiting());
        }

        private void observe(long waitMs) {
            noteLength();
            if (++served > WARM_UP) {
                waits.add(waitMs / UNIT_MS);
                over5.add(waitMs > 5 * UNIT_MS ? 1 : 0);
            }
        }
    }
}
