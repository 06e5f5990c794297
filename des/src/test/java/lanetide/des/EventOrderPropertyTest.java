package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Random calls to the simulator, compared with a plain list that is sorted whenever its first entry is wanted. */
class EventOrderPropertyTest {

    private static final int STEPS = 20_000;

    /** What the reference knows of a pending event. */
    private record Expected(long timeMs, int phase, int number, EventHandle handle) {}

    private static final Comparator<Expected> ORDER = Comparator.comparingLong(Expected::timeMs)
            .thenComparingInt(Expected::phase)
            .thenComparingInt(Expected::number);

    private final Simulator simulator = new Simulator();
    private final List<Expected> pending = new ArrayList<>();
    private final List<EventHandle> gone = new ArrayList<>();
    private String lastExecuted = "";
    private int number;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anyMixtureOfCallsKeepsTheOrderOfASortedList(long seed) {
        UniformRandomProvider random = new RandomStreams(seed).stream("calls");
        int mostPending = 0;
        for (int step = 0; step < STEPS; step++) {
            String where = "seed " + seed + ", step " + step;
            // The list grows in the first half and shrinks in the second.
            callAnything(random, step < STEPS / 2 ? 50 : 25, where);
            assertThat(simulator.pendingEvents()).as(where).isEqualTo(pending.size());
            mostPending = Math.max(mostPending, pending.size());
        }
        while (!pending.isEmpty()) {
            executeNext("seed " + seed + ", at the end");
        }
        assertThat(gone).as("seed %d", seed).noneMatch(EventHandle::isPending).noneMatch(EventHandle::cancel);
        assertThat(mostPending).as("seed %d", seed).isGreaterThan(1000);
    }

    private void callAnything(UniformRandomProvider random, int schedulePercent, String where) {
        int draw = random.nextInt(100);
        if (draw < schedulePercent || pending.isEmpty()) {
            schedule(random);
        } else if (draw < schedulePercent + 15) {
            cancel(random, where);
        } else if (draw < schedulePercent + 35) {
            reschedule(random);
        } else {
            executeNext(where);
        }
    }

    /** Times and phases from narrow ranges, so that ties are frequent. */
    private void schedule(UniformRandomProvider random) {
        long timeMs = simulator.nowMs() + random.nextInt(50);
        int phase = random.nextInt(-2, 3);
        String label = "event " + number;
        EventHandle handle = simulator.scheduleAt(timeMs, phase, label, () -> lastExecuted = label);
        pending.add(new Expected(timeMs, phase, number++, handle));
    }

    private void cancel(UniformRandomProvider random, String where) {
        Expected victim = pending.remove(random.nextInt(pending.size()));
        assertThat(victim.handle().cancel()).as(where).isTrue();
        gone.add(victim.handle());
    }

    private void reschedule(UniformRandomProvider random) {
        Expected moved = pending.remove(random.nextInt(pending.size()));
        long timeMs = simulator.nowMs() + random.nextInt(50);
        moved.handle().reschedule(timeMs);
        pending.add(new Expected(timeMs, moved.phase(), number++, moved.handle()));
    }

    private void executeNext(String where) {
        pending.sort(ORDER);
        Expected next = pending.remove(0);
        long executed = simulator.executedEvents();
        simulator.runWhile(() -> simulator.executedEvents() == executed);
        assertThat(lastExecuted).as(where).isEqualTo(next.handle().label());
        assertThat(simulator.nowMs()).as(where).isEqualTo(next.timeMs());
        gone.add(next.handle());
    }
}
