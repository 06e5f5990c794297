package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.LongUnaryOperator;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Random calls to an event list that puts off what is far from few events on, compared with the JDK's priority queue. */
class LazyQueueTest {

    private final EventPool pool = new EventPool();
    private final LazyQueue list = new LazyQueue(pool, 16);
    private final List<ScheduledEvent> pending = new ArrayList<>();
    private long nowMs;
    private long sequence;

    /** Spreads of delays: ties, narrow, wide, and so uneven that most events lie near and some very far. */
    @ParameterizedTest(name = "{0} delays, seed {1}")
    @CsvSource({"equal, 1", "narrow, 2", "narrow, 3", "wide, 4", "wide, 5", "uneven, 6", "uneven, 7", "uneven, 8"})
    void theListHasTheOrderOfAPriorityQueue(String delays, long seed) {
        UniformRandomProvider random = new RandomStreams(seed).stream("calls");
        PriorityQueue<ScheduledEvent> expected = new PriorityQueue<>((a, b) -> a == b ? 0 : precedes(a, b) ? -1 : 1);
        LongUnaryOperator delay = delaysOf(delays, random);
        for (int step = 0; step < 6_000; step++) {
            int draw = random.nextInt(100);
            if (draw < (step < 3_000 ? 60 : 25) || pending.isEmpty()) {
                expected.add(schedule(nowMs + delay.applyAsLong(step), random.nextInt(3)));
            } else if (draw < 75) {
                ScheduledEvent first = expected.remove();
                assertThat(list.removeFirst(first.timeMs() - 1))
                        .as("step %d", step)
                        .isNull();
                assertThat(list.removeFirst(first.timeMs())).as("step %d", step).isSameAs(first);
                nowMs = first.timeMs();
                drop(first);
            } else {
                ScheduledEvent victim = pending.get(random.nextInt(pending.size()));
                expected.remove(victim);
                list.remove(victim);
                drop(victim);
            }
            assertThat(list.size()).isEqualTo(expected.size());
        }
        while (!expected.isEmpty()) {
            assertThat(list.removeFirst(Long.MAX_VALUE)).isSameAs(expected.remove());
        }
        assertThat(list.size()).isZero();
        assertThat(list.removeFirst(Long.MAX_VALUE)).isNull();
    }

    private static boolean precedes(ScheduledEvent a, ScheduledEvent b) {
        return a.precedes(b);
    }

    private static LongUnaryOperator delaysOf(String delays, UniformRandomProvider random) {
        return step -> switch (delays) {
            case "equal" -> 5;
            case "narrow" -> random.nextInt(20);
            case "wide" -> random.nextLong(1_000_000_000);
            default -> random.nextInt(4) == 0 ? random.nextLong(1_000_000_000) : random.nextInt(10);
        };
    }

    private ScheduledEvent schedule(long timeMs, int phase) {
        ScheduledEvent event = pool.take();
        event.become(phase, "event", () -> {});
        event.moveTo(timeMs, 0, sequence++);
        list.add(event);
        pending.add(event);
        return event;
    }

    private void drop(ScheduledEvent event) {
        pending.remove(event);
        pool.giveBack(event);
    }
}
