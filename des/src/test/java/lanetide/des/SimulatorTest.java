package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SimulatorTest {

    private final Simulator simulator = new Simulator();
    private final List<String> seen = new ArrayList<>();

    /** Schedules an event that notes its label and the time at which it runs. */
    private void note(long timeMs, int phase, String label) {
        simulator.scheduleAt(timeMs, phase, label, () -> seen.add(label + "@" + simulator.nowMs()));
    }

    @Nested
    class Order {

        @Test
        void eventsRunByTimeWhateverTheOrderOfScheduling() {
            note(30, 0, "c");
            note(10, 0, "a");
            note(20, 0, "b");
            simulator.run();
            assertThat(seen).containsExactly("a@10", "b@20", "c@30");
            assertThat(simulator.nowMs()).isEqualTo(30);
            assertThat(simulator.executedEvents()).isEqualTo(3);
        }

        @Test
        void atTheSameTimeTheLowerPhaseRunsFirst() {
            note(10, 5, "late");
            note(10, -3, "early");
            note(10, Integer.MAX_VALUE, "last");
            note(10, Integer.MIN_VALUE, "first");
            simulator.run();
            assertThat(seen).containsExactly("first@10", "early@10", "late@10", "last@10");
        }

        @Test
        void atTheSameTimeAndPhaseTheFirstScheduledRunsFirst() {
            for (int i = 0; i < 100; i++) {
                note(7, 1, "e" + i);
            }
            simulator.run();
            assertThat(seen).hasSize(100).startsWith("e0@7", "e1@7", "e2@7").endsWith("e98@7", "e99@7");
            assertThat(seen).isEqualTo(inOrderOfNumber());
        }

        private List<String> inOrderOfNumber() {
            List<String> expected = new ArrayList<>();
            for (int i = 0; i < 100; i++) {
                expected.add("e" + i + "@7");
            }
            return expected;
        }

        @Test
        void anEventScheduledForNowRunsNowAfterThePresentOneEvenIfItsPhaseIsLower() {
            simulator.schedule(10, 5, "present", () -> note(10, 0, "lower phase"));
            note(10, 9, "higher phase");
            simulator.run();
            assertThat(seen).containsExactly("lower phase@10", "higher phase@10");
        }

        @Test
        void theClockStandsAtTheTimeOfTheEventWhileItsActionRuns() {
            assertThat(simulator.nowMs()).isZero();
            simulator.schedule(
                    5,
                    0,
                    "outer",
                    () -> simulator.schedule(5, 0, "inner", () -> seen.add("inner@" + simulator.nowMs())));
            simulator.run();
            assertThat(seen).containsExactly("inner@10");
        }

        @Test
        void theLastMillisecondThatCanBeCountedCanBeReached() {
            note(Long.MAX_VALUE, 0, "end of time");
            simulator.run();
            assertThat(simulator.nowMs()).isEqualTo(Long.MAX_VALUE);
        }
    }

    @Nested
    class Actions {

        @Test
        void anActionMayScheduleItselfAnew() {
            Runnable tick = new Runnable() {
                @Override
                public void run() {
                    seen.add("tick@" + simulator.nowMs());
                    if (seen.size() < 4) {
                        simulator.schedule(10, 0, "tick", this);
                    }
                }
            };
            simulator.schedule(0, 0, "tick", tick);
            simulator.run();
            assertThat(seen).containsExactly("tick@0", "tick@10", "tick@20", "tick@30");
        }
    }

    @Nested
    class Refusals {

        @Test
        void aNegativeDelayIsRefused() {
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> simulator.schedule(-1, 0, "release", () -> {}))
                    .withMessageContaining("delayMs of event 'release' is -1");
        }

        @Test
        void aTimeInThePastIsRefused() {
            note(100, 0, "now");
            simulator.run();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> simulator.scheduleAt(99, 0, "release", () -> {}))
                    .withMessageContaining("timeMs of event 'release' is 99")
                    .withMessageContaining("100 ms");
        }

        @Test
        void aDelayBeyondTheEndOfTimeIsRefused() {
            note(1, 0, "now");
            simulator.run();
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> simulator.schedule(Long.MAX_VALUE, 0, "release", () -> {}))
                    .withMessageContaining("delayMs of event 'release' is 9223372036854775807")
                    .withMessageContaining("at most 9223372036854775806");
            simulator.schedule(Long.MAX_VALUE - 1, 0, "last", () -> {});
            simulator.run();
            assertThat(simulator.nowMs()).isEqualTo(Long.MAX_VALUE);
        }

        @Test
        void anEventNeedsALabelAndAnAction() {
            assertThatNullPointerException()
                    .isThrownBy(() -> simulator.schedule(1, 0, null, () -> {}))
                    .withMessage("label");
            assertThatNullPointerException()
                    .isThrownBy(() -> simulator.schedule(1, 0, "release", null))
                    .withMessage("action");
        }

        @Test
        void runningWithinARunIsRefused() {
            simulator.schedule(10, 0, "greedy", simulator::run);
            assertThatIllegalStateException()
                    .isThrownBy(simulator::run)
                    .withMessageContaining("already running at 10 ms");
        }
    }

    @Nested
    class Runs {

        @Test
        void whatIsScheduledAfterARunRunsInTheNext() {
            note(10, 0, "a");
            simulator.run();
            note(10, 0, "b");
            note(20, 0, "c");
            simulator.run();
            assertThat(seen).containsExactly("a@10", "b@10", "c@20");
        }

        @Test
        void anActionThatThrowsEndsTheRunAndLeavesAllElseInPlace() {
            IllegalStateException broken = new IllegalStateException("broken");
            note(10, 0, "before");
            simulator.schedule(20, 0, "thrower", () -> {
                throw broken;
            });
            note(30, 0, "after");

            assertThatThrownBy(simulator::run).isSameAs(broken);
            assertThat(simulator.nowMs()).isEqualTo(20);
            assertThat(simulator.executedEvents()).isEqualTo(2);
            assertThat(seen).containsExactly("before@10");

            simulator.run();
            assertThat(seen).containsExactly("before@10", "after@30");
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
    }
}
