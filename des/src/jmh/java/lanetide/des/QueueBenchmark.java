package lanetide.des;

import java.util.PriorityQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.DoubleSupplier;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.eventlist.EventList;
import umontreal.ssj.simevents.eventlist.Henriksen;
import umontreal.ssj.simevents.eventlist.SplayTree;

/**
 * A million customers through M/M/1 at rho 0.8: the mean wait. All sides draw the same numbers from the same generator,
 * keep the times of arrival in the same ring and add up the waits in the same way, so that what differs is the kernel.
 * The floor is Lindley's recursion, which needs no events at all (D. V. Lindley, Proceedings of the Cambridge
 * Philosophical Society 48, 1952). The peers are the JDK's priority queue, as one would write without this module, and
 * the simulator of SSJ with two of its event lists.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@State(Scope.Thread)
public class QueueBenchmark {

    private static final int CUSTOMERS = 1_000_000;
    private static final double UNIT_MS = 1e6;

    /** What all sides share: draws, ring of arrivals, sum of waits. */
    static final class Customers {

        private final DoubleSupplier gaps;
        private final DoubleSupplier services;
        private final double[] ring = new double[1 << 16];
        private int head;
        private int tail;
        private int arrived;
        private int served;
        private double waits;

        Customers() {
            RandomStreams streams = new RandomStreams(1);
            gaps = exponential(streams.stream("arrivals"), UNIT_MS / 0.8);
            services = exponential(streams.stream("services"), UNIT_MS);
        }

        private static DoubleSupplier exponential(UniformRandomProvider random, double mean) {
            return ZigguratSampler.Exponential.of(random, mean)::sample;
        }

        double gap() {
            return gaps.getAsDouble();
        }

        double service() {
            return services.getAsDouble();
        }

        boolean more() {
            return ++arrived < CUSTOMERS;
        }

        void line(double now) {
            ring[tail++ & (ring.length - 1)] = now;
        }

        void serve(double now) {
            waits += now - ring[head++ & (ring.length - 1)];
            served++;
        }

        boolean anyWaiting() {
            return head != tail;
        }

        double meanWait() {
            if (served != CUSTOMERS) {
                throw new IllegalStateException("served " + served);
            }
            return waits / served / UNIT_MS;
        }
    }

    @Benchmark
    public double lindley() {
        Customers customers = new Customers();
        double wait = 0;
        customers.line(0);
        customers.serve(0);
        while (customers.more()) {
            wait = Math.max(0, wait + customers.service() - customers.gap());
            customers.line(0);
            customers.serve(wait);
        }
        return customers.meanWait();
    }

    @Benchmark
    public double kernel() {
        return new OnKernel().run();
    }

    @Benchmark
    public double kernelWithResource() {
        return new OnResource().run();
    }

    @Benchmark
    public double peerPriorityQueue() {
        return new OnPriorityQueue().run();
    }

    @Benchmark
    public double peerSsjSplayTree() {
        return new OnSsj(new SplayTree()).run();
    }

    @Benchmark
    public double peerSsjHenriksen() {
        return new OnSsj(new Henriksen()).run();
    }

    private static final class OnKernel {

        private final Customers customers = new Customers();
        private final Simulator simulator = new Simulator();
        private final Runnable arrival = this::arrive;
        private final Runnable departure = this::depart;
        private boolean busy;

        double run() {
            simulator.schedule((long) customers.gap(), 0, "arrival", arrival);
            simulator.run();
            return customers.meanWait();
        }

        private void arrive() {
            customers.line(simulator.nowMs());
            if (!busy) {
                serve();
            }
            if (customers.more()) {
                simulator.schedule((long) customers.gap(), 0, "arrival", arrival);
            }
        }

        private void serve() {
            busy = true;
            customers.serve(simulator.nowMs());
            simulator.schedule((long) customers.service(), 0, "departure", departure);
        }

        private void depart() {
            busy = false;
            if (customers.anyWaiting()) {
                serve();
            }
        }
    }

    /** The queue is that of the resource. */
    private static final class OnResource {

        private final Customers customers = new Customers();
        private final Simulator simulator = new Simulator();
        private final Resource server = new Resource("server", 1);
        private final Runnable arrival = this::arrive;
        private final Runnable service = this::serve;
        private final Runnable departure = server::release;

        double run() {
            simulator.schedule((long) customers.gap(), 0, "arrival", arrival);
            simulator.run();
            return customers.meanWait();
        }

        private void arrive() {
            customers.line(simulator.nowMs());
            server.acquire(service);
            if (customers.more()) {
                simulator.schedule((long) customers.gap(), 0, "arrival", arrival);
            }
        }

        private void serve() {
            customers.serve(simulator.nowMs());
            simulator.schedule((long) customers.service(), 0, "departure", departure);
        }
    }

    private static final class OnPriorityQueue {

        record Event(long timeMs, int phase, long sequence, Runnable action) implements Comparable<Event> {

            @Override
            public int compareTo(Event other) {
                if (timeMs != other.timeMs) {
                    return Long.compare(timeMs, other.timeMs);
                }
                int byPhase = Integer.compare(phase, other.phase);
                return byPhase != 0 ? byPhase : Long.compare(sequence, other.sequence);
            }
        }

        private final Customers customers = new Customers();
        private final PriorityQueue<Event> events = new PriorityQueue<>();
        private final Runnable arrival = this::arrive;
        private final Runnable departure = this::depart;
        private long nowMs;
        private long sequence;
        private boolean busy;

        double run() {
            schedule(customers.gap(), arrival);
            while (!events.isEmpty()) {
                Event event = events.remove();
                nowMs = event.timeMs();
                event.action().run();
            }
            return customers.meanWait();
        }

        private void schedule(double delayMs, Runnable action) {
            events.add(new Event(nowMs + (long) delayMs, 0, sequence++, action));
        }

        private void arrive() {
            customers.line(nowMs);
            if (!busy) {
                serve();
            }
            if (customers.more()) {
                schedule(customers.gap(), arrival);
            }
        }

        private void serve() {
            busy = true;
            customers.serve(nowMs);
            schedule(customers.service(), departure);
        }

        private void depart() {
            busy = false;
            if (customers.anyWaiting()) {
                serve();
            }
        }
    }

    /** As its tutorial does: an event is an object of its own class, here used again, which spares it garbage. */
    private static final class OnSsj {

        private final Customers customers = new Customers();
        private final umontreal.ssj.simevents.Simulator simulator = new umontreal.ssj.simevents.Simulator();
        private final Event arrival;
        private final Event departure;
        private boolean busy;

        OnSsj(EventList list) {
            simulator.init(list);
            arrival = new Event(simulator) {
                @Override
                public void actions() {
                    arrive();
                }
            };
            departure = new Event(simulator) {
                @Override
                public void actions() {
                    depart();
                }
            };
        }

        double run() {
            arrival.schedule(customers.gap());
            simulator.start();
            return customers.meanWait();
        }

        private void arrive() {
            customers.line(simulator.time());
            if (!busy) {
                serve();
            }
            if (customers.more()) {
                arrival.schedule(customers.gap());
            }
        }

        private void serve() {
            busy = true;
            customers.serve(simulator.time());
            departure.schedule(customers.service());
        }

        private void depart() {
            busy = false;
            if (customers.anyWaiting()) {
                serve();
            }
        }
    }
}
