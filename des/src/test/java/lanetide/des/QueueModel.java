package lanetide.des;

import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.LongSupplier;
import lanetide.des.stats.Tally;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * A queue of the textbooks: customers who arrive at random, or machines that fail and come back, before equal servers.
 * It is built on the module's own resource.
 *
 * @param name what it is called; its streams have the same name
 * @param servers number of servers
 * @param queueLimit how many may wait
 * @param source mean time between arrivals in textbook units; of machines, mean life of one
 * @param machines number of machines, 0 for arrivals from outside
 * @param service law of the service time
 * @param meanService its mean in textbook units
 */
record QueueModel(
        String name, int servers, int queueLimit, double source, int machines, ServiceLaw service, double meanService) {

    /** One unit of the textbook's time; long enough that rounding to milliseconds does not matter. */
    private static final double UNIT_MS = 1e6;

    /** What one replication yields after its warm-up, in textbook units and shares. */
    record Seen(
            double meanWait,
            double sojourn,
            double queue,
            double present,
            double idle,
            double delayed,
            double over5,
            double refused) {}

    static QueueModel open(String name, int servers, double arrivalRate, ServiceLaw service, double meanService) {
        return new QueueModel(name, servers, Integer.MAX_VALUE, 1 / arrivalRate, 0, service, meanService);
    }

    /** Whoever finds all servers busy goes away. */
    static QueueModel loss(String name, int servers, double load) {
        return new QueueModel(name, servers, 0, 1 / load, 0, ServiceLaw.EXPONENTIAL, 1);
    }

    static QueueModel repair(String name, int repairmen, int machines, double meanLife, double meanRepair) {
        return new QueueModel(
                name, repairmen, Integer.MAX_VALUE, meanLife, machines, ServiceLaw.EXPONENTIAL, meanRepair);
    }

    /** @param streams gives the generator of a name */
    Seen replicate(Function<String, UniformRandomProvider> streams, int warmUp, int customers) {
        return new Run(streams, warmUp, customers).run();
    }

    private final class Run {

        private final int warmUp;
        private final int last;
        private final Simulator simulator = new Simulator();
        private final Resource server = new Resource(name, servers);
        private final LongSupplier sourceMs;
        private final LongSupplier serviceMs;
        private final Tally waits = new Tally("wait");
        private final Tally sojourns = new Tally("sojourn");
        private final Tally delayed = new Tally("share delayed");
        private final Tally over5 = new Tally("share over 5");
        private TimeWeighted present = new TimeWeighted(0, 0);
        private TimeWeighted queue = new TimeWeighted(0, 0);
        private TimeWeighted idle = new TimeWeighted(0, 1);
        private int arrived;
        private int refused;
        private Seen seen;

        Run(Function<String, UniformRandomProvider> streams, int warmUp, int customers) {
            this.warmUp = warmUp;
            this.last = warmUp + customers;
            this.sourceMs = millis(ServiceLaw.EXPONENTIAL.sampler(streams.apply(name + "/source"), source));
            this.serviceMs = millis(service.sampler(streams.apply(name + "/service"), meanService));
        }

        private LongSupplier millis(DoubleSupplier units) {
            return () -> Math.round(units.getAsDouble() * UNIT_MS);
        }

        Seen run() {
            for (int source = 0; source < Math.max(1, machines); source++) {
                scheduleArrival();
            }
            simulator.run();
            return seen;
        }

        private void scheduleArrival() {
            simulator.schedule(sourceMs.getAsLong(), 0, "arrival", this::arrive);
        }

        /** Nobody is let in after the last customer, upon whose arrival everything is noted. */
        private void arrive() {
            if (arrived == last) {
                return;
            }
            if (arrived == warmUp) {
                restart();
            }
            boolean counted = arrived++ >= warmUp;
            long customerMs = serviceMs.getAsLong();
            if (present.value() < (double) servers + queueLimit) {
                enter(customerMs, counted);
            } else {
                refused++;
            }
            if (arrived == last) {
                seen = seen();
            } else if (machines == 0) {
                scheduleArrival();
            }
        }

        private void restart() {
            long nowMs = simulator.nowMs();
            present = new TimeWeighted(nowMs, present.value());
            queue = new TimeWeighted(nowMs, queue.value());
            idle = new TimeWeighted(nowMs, idle.value());
            refused = 0;
        }

        private void enter(long customerMs, boolean counted) {
            change(1);
            long arrivedMs = simulator.nowMs();
            server.acquire(() -> {
                if (counted) {
                    served(simulator.nowMs() - arrivedMs);
                }
                simulator.schedule(customerMs, 0, "departure", () -> depart(arrivedMs, counted));
            });
        }

        private void served(long waitedMs) {
            waits.add(waitedMs / UNIT_MS);
            delayed.add(waitedMs > 0 ? 1 : 0);
            over5.add(waitedMs > 5 * UNIT_MS ? 1 : 0);
        }

        private void depart(long arrivedMs, boolean counted) {
            server.release();
            change(-1);
            if (counted) {
                sojourns.add((simulator.nowMs() - arrivedMs) / UNIT_MS);
            }
            if (machines > 0) {
                scheduleArrival();
            }
        }

        private void change(int by) {
            double now = present.value() + by;
            present.set(simulator.nowMs(), now);
            queue.set(simulator.nowMs(), Math.max(0, now - servers));
            idle.set(simulator.nowMs(), now == 0 ? 1 : 0);
        }

        private Seen seen() {
            long nowMs = simulator.nowMs();
            return new Seen(
                    waits.mean(),
                    sojourns.mean(),
                    queue.mean(nowMs),
                    present.mean(nowMs),
                    idle.mean(nowMs),
                    delayed.mean(),
                    over5.mean(),
                    (double) refused / (last - warmUp));
        }
    }
}
