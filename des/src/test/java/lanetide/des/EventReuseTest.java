package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.lang.ref.WeakReference;
import lanetide.des.random.RandomStreams;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The kernel uses the object of an event again; nobody outside must notice, other than by the missing garbage. */
class EventReuseTest {

    private final Simulator simulator = new Simulator();

    @Test
    void theHandleOfAnEventThatIsOverHasNoPowerOverTheNextOne() {
        EventHandle old = simulator.schedule(1, 2, "old", () -> {});
        simulator.run();
        EventHandle next = simulator.schedule(5, 0, "next", () -> {});
        assertThat(old.isPending()).isFalse();
        assertThat(old.cancel()).isFalse();
        assertThatIllegalStateException().isThrownBy(() -> old.reschedule(9)).withMessageContaining("'old'");
        assertThat(next.isPending()).isTrue();
        assertThat(next.timeMs()).isEqualTo(6);
        assertThat(old).hasToString("event 'old' at 1 ms, phase 2");
    }

    @Test
    void theHandleOfACancelledEventHasNoPowerOverTheNextOne() {
        EventHandle old = simulator.schedule(1, 0, "old", () -> {});
        old.cancel();
        EventHandle next = simulator.schedule(1, 0, "next", () -> {});
        assertThat(old.cancel()).isFalse();
        assertThat(next.isPending()).isTrue();
        next.reschedule(7);
        assertThat(old.timeMs()).isEqualTo(1);
        assertThat(simulator.pendingEvents()).isEqualTo(1);
    }

    @Test
    void anEventThatIsOverKeepsNothingInMemory() {
        WeakReference<Object> carried = scheduleWithLuggage();
        simulator.run();
        for (int i = 0; i < 50 && carried.get() != null; i++) {
            System.gc();
        }
        assertThat(carried.get()).isNull();
        assertThat(simulator.executedEvents()).isEqualTo(1);
    }

    private WeakReference<Object> scheduleWithLuggage() {
        Object luggage = new Object();
        simulator.schedule(1, 0, "carry", () -> assertThat(luggage).isNotNull());
        return new WeakReference<>(luggage);
    }

    @ParameterizedTest(name = "{0} pending events")
    @ValueSource(ints = {100, 20_000})
    void aSteadySimulationMakesNoGarbage(int pending) {
        UniformRandomProvider random = new RandomStreams(1).stream("delays");
        Runnable hold = new Runnable() {
            @Override
            public void run() {
                simulator.post(1 + random.nextInt(1_000_000), 0, "hold", this);
            }
        };
        for (int i = 0; i < pending; i++) {
            hold.run();
        }
        bytesPerEvent(100_000);
        assertThat(bytesPerEvent(100_000)).isLessThan(0.5);
    }

    /** Not 0, since the list makes two small objects when its horizon moves, and the measurement some of its own. */
    private double bytesPerEvent(int events) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        long end = simulator.executedEvents() + events;
        long before = threads.getThreadAllocatedBytes(id);
        simulator.runWhile(() -> simulator.executedEvents() < end);
        return (double) (threads.getThreadAllocatedBytes(id) - before) / events;
    }
}
