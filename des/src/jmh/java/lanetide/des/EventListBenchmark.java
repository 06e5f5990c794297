package lanetide.des;

import java.util.PriorityQueue;
import java.util.concurrent.TimeUnit;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import umontreal.ssj.simevents.Event;
import umontreal.ssj.simevents.eventlist.EventList;
import umontreal.ssj.simevents.eventlist.Henriksen;
import umontreal.ssj.simevents.eventlist.SplayTree;

/**
 * Cost of an event at a constant number of pending events, in the simulator as it is used, in what one would otherwise
 * write with the JDK's priority queue, and in the simulator of SSJ with two of its event lists. Whether SSJ's objects
 * for events are used again is up to its user; here they are.
 *
 * <p>Hold: the first event runs, and its action schedules another (hold model, D. W. Jones, "An empirical comparison of
 * priority-queue and event-set implementations", Communications of the ACM 29, 1986). Increments of time are
 * exponential with a mean of 1000 s, so that ties are rare.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class EventListBenchmark {

    private static final int OPERATIONS = 1000;

    /** The same increments for all sides, drawn before. */
    static final class Draws {

        private static final int COUNT = 1 << 16;

        private final long[] delaysMs;
        private int next;

        Draws() {
            UniformRandomProvider random = new RandomStreams(1).stream("benchmark");
            delaysMs = ZigguratSampler.Exponential.of(random, 1e6)
                    .samples(COUNT)
                    .mapToLong(Math::round)
                    .toArray();
        }

        long delayMs() {
            return delaysMs[next++ & (COUNT - 1)];
        }
    }

    /** The simulator of this module. */
    @State(Scope.Thread)
    public static class Kernel {

        @Param({"100", "1000", "100000"})
        int pending;

        private final Simulator simulator = new Simulator();
        private final Runnable hold = this::schedule;
        private final Enough enough = new Enough();
        private Draws draws;
        private int left = Integer.MAX_VALUE;

        @Setup
        public void fill() {
            draws = new Draws();
            for (int i = 0; i < pending; i++) {
                schedule();
            }
        }

        private void schedule() {
            simulator.schedule(draws.delayMs(), 0, "hold", hold);
            if (--left == 0) {
                throw enough;
            }
        }

        void hold() {
            left = OPERATIONS;
            try {
                simulator.run();
            } catch (Enough e) {
                left = Integer.MAX_VALUE;
            }
        }
    }

    /** Ends a run whose list never empties; it has no trace of calls, which would cost more than the run. */
    private static final class Enough extends RuntimeException {

        private static final long serialVersionUID = 1;

        Enough() {
            super("enough", null, false, false);
        }
    }

    /** The same work on {@link PriorityQueue}. */
    @State(Scope.Thread)
    public static class Peer {

        record PeerEvent(long timeMs, int phase, long sequence, String label, Runnable action)
                implements Comparable<PeerEvent> {

            @Override
            public int compareTo(PeerEvent other) {
                if (timeMs != other.timeMs) {
                    return Long.compare(timeMs, other.timeMs);
                }
                int byPhase = Integer.compare(phase, other.phase);
                return byPhase != 0 ? byPhase : Long.compare(sequence, other.sequence);
            }

            @Override
            public boolean equals(Object other) {
                return this == other;
            }

            @Override
            public int hashCode() {
                return Long.hashCode(sequence);
            }
        }

        @Param({"100", "1000", "100000"})
        int pending;

        private final PriorityQueue<PeerEvent> queue = new PriorityQueue<>();
        private final Runnable hold = this::schedule;
        private Draws draws;
        private long nowMs;
        private long nextSequence;

        @Setup
        public void fill() {
            draws = new Draws();
            for (int i = 0; i < pending; i++) {
                schedule();
            }
        }

        private void schedule() {
            queue.add(new PeerEvent(nowMs + draws.delayMs(), 0, nextSequence++, "hold", hold));
        }

        void hold() {
            for (int i = 0; i < OPERATIONS; i++) {
                PeerEvent event = queue.remove();
                nowMs = event.timeMs();
                event.action().run();
            }
        }
    }

    /** The same work on SSJ. */
    public abstract static class Ssj {

        private final umontreal.ssj.simevents.Simulator simulator = new umontreal.ssj.simevents.Simulator();
        private Draws draws;
        private int left;

        void fill(EventList list, int pending) {
            simulator.init(list);
            draws = new Draws();
            for (int i = 0; i < pending; i++) {
                new Hold().schedule(draws.delayMs());
            }
        }

        void hold() {
            left = OPERATIONS;
            simulator.start();
        }

        private final class Hold extends Event {

            Hold() {
                super(Ssj.this.simulator);
            }

            @Override
            public void actions() {
                schedule(draws.delayMs());
                if (--left == 0) {
                    sim.stop();
                }
            }
        }
    }

    /** SSJ with the list of Henriksen. */
    @State(Scope.Thread)
    public static class SsjHenriksen extends Ssj {

        @Param({"100", "1000", "100000"})
        int pending;

        @Setup
        public void fill() {
            fill(new Henriksen(), pending);
        }
    }

    /** SSJ with its default list. */
    @State(Scope.Thread)
    public static class SsjSplayTree extends Ssj {

        @Param({"100", "1000", "100000"})
        int pending;

        @Setup
        public void fill() {
            fill(new SplayTree(), pending);
        }
    }

    @Benchmark
    @OperationsPerInvocation(OPERATIONS)
    public void holdSsjHenriksen(SsjHenriksen peer) {
        peer.hold();
    }

    @Benchmark
    @OperationsPerInvocation(OPERATIONS)
    public void holdSsjSplayTree(SsjSplayTree peer) {
        peer.hold();
    }

    @Benchmark
    @OperationsPerInvocation(OPERATIONS)
    public void holdKernel(Kernel kernel) {
        kernel.hold();
    }

    @Benchmark
    @OperationsPerInvocation(OPERATIONS)
    public void holdPeer(Peer peer) {
        peer.hold();
    }
}
