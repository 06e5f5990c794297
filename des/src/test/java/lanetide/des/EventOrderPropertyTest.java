package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import java.util.PriorityQueue;
import java.util.function.LongSupplier;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Events that schedule none to three others at random, compared with the priority queue of the JDK. */
class EventOrderPropertyTest {

    private static final int EVENTS = 20_000;
    private static int seeds;
    private static long compared;

    private record Expected(long timeMs, int phase, int number) {}

    private final PriorityQueue<Expected> expected = new PriorityQueue<>(Comparator.comparingLong(Expected::timeMs)
            .thenComparingInt(Expected::phase)
            .thenComparingInt(Expected::number));
    private final Simulator simulator = new Simulator();
    private UniformRandomProvider random;
    private LongSupplier delaysMs;
    private int scheduled;
    private int mostPending;

    /** Spreads of delays: ties alone, many ties, few, and so uneven that most events lie near and some very far. */
    @ParameterizedTest(name = "{0} delays, seed {1}")
    @CsvSource({"equal, 1", "narrow, 2", "narrow, 3", "wide, 4", "wide, 5", "uneven, 6", "uneven, 7", "uneven, 8"})
    void eventsRunInTheOrderOfAPriorityQueue(String delays, long seed) {
        random = new RandomStreams(seed).stream("calls");
        delaysMs = delaysOf(delays);
        scheduleOne();
        scheduleOne();
        simulator.run();
        assertThat(expected).as("left over").isEmpty();
        assertThat(simulator.executedEvents()).isEqualTo(scheduled);
        assertThat(mostPending).as("most pending").isGreaterThan(1000);
        seeds++;
        compared += simulator.executedEvents();
    }

    @AfterAll
    static void theReadmeSaysHowManyWereCompared() {
        ReadmeRow.says(
                "random schedule and run, ties, near and far events",
                compared + " events of " + seeds + " seeds equal");
    }

    private LongSupplier delaysOf(String delays) {
        return () -> switch (delays) {
            case "equal" -> 5;
            case "narrow" -> random.nextInt(20);
            case "wide" -> random.nextLong(1_000_000_000);
            default -> random.nextInt(4) == 0 ? random.nextLong(1_000_000_000) : random.nextInt(10);
        };
    }

    private void scheduleOne() {
        Expected event = new Expected(simulator.nowMs() + delaysMs.getAsLong(), random.nextInt(-2, 3), scheduled++);
        expected.add(event);
        mostPending = Math.max(mostPending, expected.size());
        simulator.scheduleAt(event.timeMs(), event.phase(), "event", () -> runs(event));
    }

    /** More are scheduled than run at first, then about as many, then none. */
    private void runs(Expected event) {
        assertThat(event).as("event %d", event.number()).isEqualTo(expected.remove());
        assertThat(simulator.nowMs()).isEqualTo(event.timeMs());
        int most = scheduled < EVENTS / 2 ? 4 : scheduled < EVENTS ? 3 : 1;
        int more = expected.isEmpty() ? most - 1 : random.nextInt(most);
        for (int i = 0; i < more; i++) {
            scheduleOne();
        }
    }
}
