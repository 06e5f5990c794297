package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class SimulatorTest {

    private final Simulator simulator = new Simulator();
    private final List<String> seen = new ArrayList<>();

    /** Schedules an event that notes its label and the time at which it runs. */
    private EventHandle note(long timeMs, int phase, String label) {
        return simulator.scheduleAt(timeMs, phase, label, () -> seen.add(label + "@" + simulator.nowMs()));
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
            assertThat(simulator.pendingEvents()).isZero();
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
    class Handles {

        @Test
        void aHandleTellsWhatWasScheduled() {
            EventHandle handle = note(10, 3, "release");
            assertThat(handle.timeMs()).isEqualTo(10);
            assertThat(handle.phase()).isEqualTo(3);
            assertThat(handle.label()).isEqualTo("release");
            assertThat(handle.isPending()).isTrue();
            assertThat(handle).hasToString("event 'release' at 10 ms, phase 3");
        }

        @Test
        void aCancelledEventNeverRuns() {
            EventHandle handle = note(10, 0, "a");
            note(20, 0, "b");
            assertThat(handle.cancel()).isTrue();
            assertThat(handle.isPending()).isFalse();
            assertThat(simulator.pendingEvents()).isEqualTo(1);
            simulator.run();
            assertThat(seen).containsExactly("b@20");
            assertThat(simulator.executedEvents()).isEqualTo(1);
        }

        @Test
        void anEventIsCancelledOnlyOnce() {
            EventHandle handle = note(10, 0, "a");
            assertThat(handle.cancel()).isTrue();
            assertThat(handle.cancel()).isFalse();
        }

        @Test
        void anEventThatHasRunCanBeNeitherCancelledNorRescheduled() {
            EventHandle handle = note(10, 0, "release");
            simulator.run();
            assertThat(handle.isPending()).isFalse();
            assertThat(handle.cancel()).isFalse();
            assertThatIllegalStateException()
                    .isThrownBy(() -> handle.reschedule(20))
                    .withMessageContaining("'release'");
            assertThat(simulator.pendingEvents()).isZero();
        }

        @Test
        void aCancelledEventCannotBeRescheduled() {
            EventHandle handle = note(10, 0, "release");
            handle.cancel();
            assertThatIllegalStateException()
                    .isThrownBy(() -> handle.reschedule(20))
                    .withMessageContaining("'release'");
        }

        @Test
        void anActionMayCancelAnotherEventOfTheSameTime() {
            EventHandle[] victim = new EventHandle[1];
            simulator.schedule(
                    10, 0, "canceller", () -> assertThat(victim[0].cancel()).isTrue());
            victim[0] = note(10, 0, "victim");
            note(10, 0, "bystander");
            simulator.run();
            assertThat(seen).containsExactly("bystander@10");
        }

        @Test
        void anEventIsNoLongerPendingInItsOwnAction() {
            EventHandle[] self = new EventHandle[1];
            self[0] = simulator.schedule(10, 0, "self", () -> {
                assertThat(self[0].isPending()).isFalse();
                assertThat(self[0].cancel()).isFalse();
                assertThatIllegalStateException().isThrownBy(() -> self[0].reschedule(20));
                seen.add("checked");
            });
            simulator.run();
            assertThat(seen).containsExactly("checked");
        }

        @Test
        void aRescheduledEventRunsAtItsNewTimeOnly() {
            EventHandle later = note(10, 0, "later");
            EventHandle sooner = note(30, 0, "sooner");
            note(20, 0, "fixed");
            later.reschedule(40);
            sooner.reschedule(5);
            assertThat(later.timeMs()).isEqualTo(40);
            simulator.run();
            assertThat(seen).containsExactly("sooner@5", "fixed@20", "later@40");
        }

        @Test
        void reschedulingToTheSameTimePutsAnEventBehindItsEquals() {
            EventHandle first = note(10, 0, "first");
            note(10, 0, "second");
            first.reschedule(10);
            simulator.run();
            assertThat(seen).containsExactly("second@10", "first@10");
        }

        @Test
        void anEventCannotBeRescheduledIntoThePast() {
            EventHandle handle = note(50, 0, "release");
            simulator.runUntil(20);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> handle.reschedule(19))
                    .withMessageContaining("timeMs of event 'release' is 19")
                    .withMessageContaining("20 ms");
            simulator.run();
            assertThat(seen).containsExactly("release@50");
        }

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
            assertThat(simulator.pendingEvents()).isZero();
        }

        @Test
        void aTimeInThePastIsRefused() {
            simulator.runUntil(100);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> simulator.scheduleAt(99, 0, "release", () -> {}))
                    .withMessageContaining("timeMs of event 'release' is 99")
                    .withMessageContaining("100 ms");
        }

        @Test
        void aDelayBeyondTheEndOfTimeIsRefused() {
            simulator.runUntil(1);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> simulator.schedule(Long.MAX_VALUE, 0, "release", () -> {}))
                    .withMessageContaining("delayMs of event 'release' is 9223372036854775807")
                    .withMessageContaining("at most 9223372036854775806");
            assertThat(simulator
                            .schedule(Long.MAX_VALUE - 1, 0, "last", () -> {})
                            .timeMs())
                    .isEqualTo(Long.MAX_VALUE);
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
        void runningUntilATimeIncludesEventsAtThatTimeAndThoseTheyScheduleForIt() {
            simulator.schedule(10, 0, "chain", () -> note(10, 0, "chained"));
            note(11, 0, "after");
            simulator.runUntil(10);
            assertThat(seen).containsExactly("chained@10");
            assertThat(simulator.nowMs()).isEqualTo(10);
            assertThat(simulator.pendingEvents()).isEqualTo(1);
        }

        @Test
        void runningUntilATimeSetsTheClockToItThoughNoEventIsThere() {
            simulator.runUntil(25);
            assertThat(simulator.nowMs()).isEqualTo(25);
            note(30, 0, "a");
            simulator.runUntil(29);
            assertThat(seen).isEmpty();
            assertThat(simulator.nowMs()).isEqualTo(29);
            simulator.runUntil(29);
            assertThat(simulator.nowMs()).isEqualTo(29);
        }

        @Test
        void runningUntilAPastTimeIsRefused() {
            simulator.runUntil(25);
            assertThatIllegalArgumentException()
                    .isThrownBy(() -> simulator.runUntil(24))
                    .withMessageContaining("24")
                    .withMessageContaining("25 ms");
        }

        @Test
        void stoppingEndsTheRunAfterThePresentEventAndLeavesTheClockThere() {
            simulator.schedule(10, 0, "stopper", () -> {
                simulator.stop();
                seen.add("still in the action");
            });
            note(10, 0, "same time");
            simulator.runUntil(50);
            assertThat(seen).containsExactly("still in the action");
            assertThat(simulator.nowMs()).isEqualTo(10);
            simulator.runUntil(50);
            assertThat(seen).containsExactly("still in the action", "same time@10");
            assertThat(simulator.nowMs()).isEqualTo(50);
        }

        @Test
        void stoppingOutsideARunChangesNothing() {
            note(10, 0, "a");
            simulator.stop();
            simulator.run();
            assertThat(seen).containsExactly("a@10");
        }

        @Test
        void aConditionIsAskedBeforeEachEvent() {
            note(10, 0, "a");
            note(20, 0, "b");
            note(30, 0, "c");
            simulator.runWhile(() -> seen.size() < 2);
            assertThat(seen).containsExactly("a@10", "b@20");
            assertThat(simulator.nowMs()).isEqualTo(20);
            simulator.runWhile(() -> false);
            assertThat(simulator.pendingEvents()).isEqualTo(1);
        }

        @Test
        void anActionThatThrowsEndsTheRunAndLeavesAllElseInPlace() {
            IllegalStateException broken = new IllegalStateException("broken");
            note(10, 0, "before");
            EventHandle thrower = simulator.schedule(20, 0, "thrower", () -> {
                throw broken;
            });
            note(30, 0, "after");

            assertThatThrownBy(simulator::run).isSameAs(broken);
            assertThat(simulator.nowMs()).isEqualTo(20);
            assertThat(simulator.executedEvents()).isEqualTo(2);
            assertThat(simulator.pendingEvents()).isEqualTo(1);
            assertThat(thrower.isPending()).isFalse();

            simulator.run();
            assertThat(seen).containsExactly("before@10", "after@30");
        }
    }
}
