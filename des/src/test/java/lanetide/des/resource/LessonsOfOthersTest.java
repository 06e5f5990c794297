package lanetide.des.resource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import lanetide.des.EventHandle;
import lanetide.des.Replications;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.des.resource.Request.State;
import org.apache.commons.rng.UniformRandomProvider;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What users of general simulation frameworks stumbled over, by their public issue trackers; each lesson is the name of a
 * test.
 */
class LessonsOfOthersTest {

    private final Simulator simulator = new Simulator();
    private final List<String> seen = new ArrayList<>();

    private Consumer<Request> note(String what) {
        return request -> seen.add(what + " " + request.label() + "@" + simulator.nowMs());
    }

    private void at(long timeMs, Runnable action) {
        simulator.scheduleAt(timeMs, 0, "step", action);
    }

    /** A request that notes all it is told. */
    private RequestDraft noted(Resource resource, String label, int priority) {
        return resource.newRequest(label)
                .priority(priority)
                .whenGranted(note("granted"))
                .whenPreempted(note("preempted"))
                .whenTimedOut(note("timed out"))
                .whenRefused(note("refused"));
    }

    private RequestDraft timed(Resource resource, String label, int priority, long holdMs) {
        return noted(resource, label, priority).holdFor(holdMs, 0, note("done"));
    }

    /** r-simmer/simmer issue 187. */
    @Test
    void theClockNeverGoesBackThoughPreemptionsInterruptsAndTimeOutsFallTogether() {
        Resource resource = new Resource(simulator, "machine", 2, QueueDiscipline.PREEMPTIVE_PRIORITY);
        UniformRandomProvider random = new RandomStreams(5).stream("storm");
        List<Long> clockMs = new ArrayList<>();
        simulator.addTraceListener(entry -> clockMs.add(entry.clockMs()));
        for (int i = 0; i < 2_000; i++) {
            RequestDraft draft = timed(resource, "r" + i, random.nextInt(5), random.nextInt(20))
                    .patienceMs(random.nextInt(40));
            long interruptMs = random.nextInt(10);
            simulator.scheduleAt(random.nextInt(4_000), 0, "ask", () -> {
                Request request = draft.submit();
                simulator.schedule(interruptMs, 0, "halt", () -> interruptFor(request, interruptMs));
            });
        }
        simulator.run();
        assertThat(clockMs).isSorted();
        assertThat(resource.statistics().preemptions()).isGreaterThan(100);
        assertThat(resource.statistics().timeOuts()).isGreaterThan(100);
        assertThat(resource.inUse()).isZero();
        assertThat(resource.waiting()).isZero();
    }

    private void interruptFor(Request request, long spanMs) {
        if (!request.state().isOver()) {
            request.interrupt("fault");
            simulator.schedule(spanMs, 0, "repaired", () -> {
                if (!request.state().isOver()) {
                    request.resume();
                }
            });
        }
    }

    @Nested
    class CancelledOrPreemptedRequestsLeaveNoGhosts {

        /** heal-research/SimSharp 15, r-simmer/simmer 94, cristiklein/simpy 7. */
        @Test
        void aCancelledRequestIsNeverServedAndCountsNoMoreAsWaiting() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "holder", 0, 10).submit();
            Request ghost = noted(resource, "ghost", 0).submit();
            noted(resource, "next", 0).submit();
            assertThat(ghost.cancel()).isTrue();
            assertThat(ghost.cancel()).isFalse();
            assertThat(resource.waiting()).isEqualTo(1);
            simulator.run();
            assertThat(seen).containsExactly("granted holder@0", "done holder@10", "granted next@10");
            assertThat(resource.inUse()).isEqualTo(1);
        }

        /** r-simmer/simmer 75, 227: the end of a displaced hold must not fire. */
        @Test
        void theEndOfADisplacedHoldDoesNotHappenAtItsOldTime() {
            Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY);
            timed(resource, "low", 5, 10).submit();
            at(4, () -> timed(resource, "high", 1, 20).submit());
            simulator.run();
            assertThat(seen)
                    .containsExactly(
                            "granted low@0",
                            "preempted low@4",
                            "granted high@4",
                            "done high@24",
                            "granted low@24",
                            "done low@30");
        }

        @Test
        void aRequestThatIsCancelledWhenPreemptedIsGone() {
            Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY);
            Request low = resource.newRequest("low")
                    .priority(5)
                    .holdFor(10, 0, note("done"))
                    .whenPreempted(Request::cancel)
                    .submit();
            at(4, () -> timed(resource, "high", 1, 1).submit());
            simulator.run();
            assertThat(seen).containsExactly("granted high@4", "done high@5");
            assertThat(low.state()).isEqualTo(State.CANCELLED);
            assertThat(resource.inUse() + resource.waiting() + simulator.pendingEvents())
                    .isZero();
        }

        /** hsma6_des_book 70: cancel and release are two things, and the wrong one says so. */
        @Test
        void whatWaitsIsCancelledAndWhatHoldsIsReleasedAndTheWrongCallIsRefused() {
            Resource resource = new Resource(simulator, "machine", 1);
            Request holder = noted(resource, "holder", 0).submit();
            Request waiter = noted(resource, "waiter", 0).submit();
            assertThat(holder.cancel()).isFalse();
            assertThatIllegalStateException()
                    .isThrownBy(waiter::release)
                    .withMessage(
                            "request 'waiter' of 'machine' is WAITING, and holds nothing to release; cancel it instead");
            holder.release();
            assertThatIllegalStateException()
                    .isThrownBy(holder::release)
                    .withMessage("request 'holder' of 'machine' is RELEASED, and holds nothing to release");
            assertThat(waiter.state()).isEqualTo(State.HOLDING);
        }
    }

    /** ppsim 16, macro-main 36, GEMS 18, TLOmodel 70, sim-tools 89, roadrunner 98, ssm-simulators 63. */
    @Test
    void theSameSeedGivesTheSameRunWhateverElseRunsBesideIt() {
        List<List<String>> runs = Replications.run(8, 4, i -> storyOf(new RandomStreams(11)), done -> {});
        assertThat(runs).hasSize(8).allMatch(story -> story.equals(runs.get(0)));
        assertThat(runs.get(0)).hasSizeGreaterThan(200);
    }

    private static List<String> storyOf(RandomStreams streams) {
        Simulator simulator = new Simulator();
        List<String> story = new ArrayList<>();
        simulator.addTraceListener(entry -> story.add(entry.toString()));
        Resource resource = new Resource(simulator, "machine", 2, QueueDiscipline.PREEMPTIVE_PRIORITY);
        UniformRandomProvider random = streams.stream("requests");
        for (int i = 0; i < 100; i++) {
            RequestDraft draft =
                    resource.newRequest("r" + i).priority(random.nextInt(3)).holdFor(random.nextInt(30), 0, done -> {});
            simulator.scheduleAt(random.nextInt(500), 0, "ask", draft::submit);
        }
        simulator.run();
        return story;
    }

    @Nested
    class TiesNeedATotalOrder {

        /** SpaDES 236, ConcurrentSim PR 101, LEAN 2625. */
        @Test
        void equalRequestsAreServedInTheOrderOfSubmission() {
            Resource resource = new Resource(
                    simulator, "machine", 1, QueueDiscipline.by(Comparator.comparing(request -> "all alike")));
            for (int i = 0; i < 50; i++) {
                timed(resource, "r" + i, 0, 0).submit();
            }
            simulator.run();
            List<String> done =
                    seen.stream().filter(line -> line.startsWith("done")).toList();
            assertThat(done).hasSize(50);
            for (int i = 0; i < 50; i++) {
                assertThat(done.get(i)).isEqualTo("done r" + i + "@0");
            }
        }

        /** aisimulate PR 182: a statistic that was taken before other events of its time. */
        @Test
        void averagesOverTimeDoNotDependOnWhatElseHappensAtTheSameTime() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "r", 0, 10).submit();
            List<Double> means = new ArrayList<>();
            simulator.scheduleAt(
                    10, -1, "before", () -> means.add(resource.statistics().meanInUse()));
            simulator.scheduleAt(
                    10, 1, "after", () -> means.add(resource.statistics().meanInUse()));
            simulator.run();
            assertThat(means).containsExactly(1.0, 1.0);
        }
    }

    /** eclipse-mosaic PR 263, Simu5G 123, inference-sim 733. */
    @Test
    void theLowerPriorityNumberGoesFirstAsTheLowerPhaseDoes() {
        Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PRIORITY);
        timed(resource, "holder", 9, 10).submit();
        timed(resource, "seven", 7, 10).submit();
        timed(resource, "minus one", -1, 10).submit();
        timed(resource, "three", 3, 10).submit();
        simulator.run();
        assertThat(seen)
                .containsSubsequence(
                        "granted holder@0", "granted minus one@10", "granted three@20", "granted seven@30");
    }

    /** kalasim 49, salabim, trace-viewer 1046: ends that miss equality in floating point. */
    @Test
    void holdsThatEndTogetherEndInTheSameWholeMillisecondHoweverTheyAreCutUp() {
        Resource resource = new Resource(simulator, "machines", 2);
        Request cut = timed(resource, "cut", 0, 1_000).submit();
        timed(resource, "whole", 0, 1_300).submit();
        for (int i = 1; i <= 3; i++) {
            at(300L * i, () -> cut.interrupt("pause"));
            at(300L * i + 100, cut::resume);
        }
        simulator.run();
        assertThat(seen).endsWith("done whole@1300", "done cut@1300");
    }

    @Nested
    class PreemptionSaysWhoHasToGo {

        private Resource machines(int capacity) {
            return new Resource(simulator, "machines", capacity, QueueDiscipline.PREEMPTIVE_PRIORITY);
        }

        /** r-simmer/simmer 53. */
        @Test
        void equalPriorityDoesNotPreempt() {
            Resource resource = machines(1);
            timed(resource, "first", 3, 10).submit();
            timed(resource, "equal", 3, 10).submit();
            simulator.run();
            assertThat(seen).containsExactly("granted first@0", "done first@10", "granted equal@10", "done equal@20");
        }

        /** r-simmer/simmer 59, 114; Ciw PR 85. */
        @Test
        void ofSeveralHoldersTheOneThatWouldBeServedLastHasToGo() {
            Resource resource = machines(3);
            timed(resource, "a", 4, 100).submit();
            timed(resource, "b", 7, 100).submit();
            timed(resource, "c", 7, 100).submit();
            at(10, () -> noted(resource, "urgent", 1).submit());
            at(20, () -> noted(resource, "urgent too", 1).submit());
            simulator.runUntil(30);
            assertThat(seen).containsSubsequence("preempted c@10", "granted urgent@10", "preempted b@20");
            assertThat(resource.inUse()).isEqualTo(3);
        }

        @Test
        void nobodyHasToGoIfThatWouldNotBeEnough() {
            Resource resource = machines(3);
            noted(resource, "strong", 1).units(2).submit();
            noted(resource, "weak", 9).submit();
            Request large = noted(resource, "large", 5).units(2).submit();
            assertThat(large.state()).isEqualTo(State.WAITING);
            assertThat(seen).containsExactly("granted strong@0", "granted weak@0");
        }

        @Test
        void aLargeRequestDisplacesAsManyAsItNeeds() {
            Resource resource = machines(3);
            timed(resource, "a", 6, 100).submit();
            timed(resource, "b", 7, 100).submit();
            timed(resource, "c", 8, 100).submit();
            timed(resource, "large", 5, 10).units(2).submit();
            simulator.runUntil(50);
            assertThat(seen)
                    .containsExactly(
                            "granted a@0",
                            "granted b@0",
                            "granted c@0",
                            "preempted c@0",
                            "preempted b@0",
                            "granted large@0",
                            "done large@10",
                            "granted b@10",
                            "granted c@10");
        }

        /** r-simmer/simmer 125: an owner that asks twice. */
        @Test
        void noRequestPreemptsAnotherOfTheSameOwner() {
            Resource resource = machines(1);
            Object owner = new Object();
            Request mine = noted(resource, "mine", 5).owner(owner).submit();
            Request second = noted(resource, "second", 1).owner(owner).submit();
            assertThat(mine.state()).isEqualTo(State.HOLDING);
            assertThat(second.state()).isEqualTo(State.WAITING);
            mine.release();
            assertThat(second.state()).isEqualTo(State.HOLDING);
        }

        /** r-simmer/simmer 246: capacity that a schedule cuts. */
        @Test
        void aScheduledCutLetsHoldersFinish() {
            Resource resource = machines(2);
            timed(resource, "a", 1, 30).submit();
            timed(resource, "b", 2, 40).submit();
            timed(resource, "c", 3, 10).submit();
            at(10, () -> resource.setCapacity(1));
            at(20, () -> assertThat(resource.inUse()).isEqualTo(2));
            simulator.run();
            assertThat(seen)
                    .containsExactly(
                            "granted a@0", "granted b@0", "done a@30", "done b@40", "granted c@40", "done c@50");
            assertThat(resource.statistics().utilisation()).isEqualTo(1);
        }

        @ParameterizedTest
        @MethodSource("disciplines")
        void anImmediateCutDisplacesTheOneThatWouldBeServedLastWhateverTheDiscipline(QueueDiscipline discipline) {
            Resource resource = new Resource(simulator, "machines", 2, discipline);
            timed(resource, "a", 1, 30).submit();
            timed(resource, "b", 2, 40).submit();
            timed(resource, "c", 3, 10).submit();
            at(10, () -> resource.setCapacityAtOnce(1));
            at(20, () -> resource.setCapacityAtOnce(0));
            at(25, () -> resource.setCapacity(1));
            simulator.run();
            assertThat(seen)
                    .containsExactly(
                            "granted a@0",
                            "granted b@0",
                            "preempted b@10",
                            "preempted a@20",
                            "granted a@25",
                            "done a@35",
                            "granted b@35",
                            "done b@65",
                            "granted c@65",
                            "done c@75");
        }

        private static Stream<QueueDiscipline> disciplines() {
            return Stream.of(QueueDiscipline.FIRST_COME, QueueDiscipline.PRIORITY, QueueDiscipline.PREEMPTIVE_PRIORITY);
        }

        @Test
        void aFullQueueRefusesNewcomersButTakesBackWhoIsDisplaced() {
            Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY, 1);
            timed(resource, "holder", 5, 10).submit();
            timed(resource, "waiter", 5, 10).submit();
            Request refused = timed(resource, "refused", 5, 10).submit();
            timed(resource, "urgent", 1, 10).submit();
            simulator.run();
            assertThat(refused.state()).isEqualTo(State.REFUSED);
            assertThat(resource.statistics().refusals()).isEqualTo(1);
            assertThat(resource.statistics().maxQueueLength()).isEqualTo(2);
            assertThat(seen)
                    .containsSubsequence("refused refused@0", "done urgent@10", "done holder@20", "done waiter@30");
        }
    }

    @Nested
    class StatisticsAgreeWithTheEvents {

        /** r-simmer/simmer 67: time in service longer than the time that has passed. */
        @Test
        void nobodyHoldsOrWaitsLongerThanTimeHasPassed() {
            Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY);
            Request low = timed(resource, "low", 5, 10).submit();
            at(4, () -> timed(resource, "high", 1, 20).submit());
            at(6, () -> low.interrupt("fault"));
            at(26, low::resume);
            simulator.run();
            assertThat(low.heldMs()).isEqualTo(10);
            assertThat(low.waitedMs()).isEqualTo(22);
            assertThat(simulator.nowMs()).isEqualTo(32);
        }

        /** From the first event on, before anything was granted, and after a restart in the middle of a hold. */
        @Test
        void useAndQueueAreAveragedOverTheTimeThatPassed() {
            Resource resource = new Resource(simulator, "machines", 2);
            ResourceStatistics statistics = resource.statistics();
            assertThatIllegalStateException()
                    .isThrownBy(statistics::utilisation)
                    .withMessageContaining("'machines' needs time to pass, but the clock still stands at 0 ms");
            at(10, () -> {
                timed(resource, "a", 0, 10).submit();
                timed(resource, "b", 0, 30).submit();
                timed(resource, "c", 0, 10).submit();
            });
            simulator.run();
            assertThat(simulator.nowMs()).isEqualTo(40);
            assertThat(statistics.meanInUse()).isEqualTo((10 + 30 + 10) / 40.0);
            assertThat(statistics.utilisation()).isEqualTo((10 + 30 + 10) / 80.0);
            assertThat(statistics.meanQueueLength()).isEqualTo(10 / 40.0);
            assertThat(statistics.waitsMs().count()).isEqualTo(3);
            assertThat(statistics.waitsMs().max()).isEqualTo(10);
            statistics.restart();
            simulator.runUntil(50);
            assertThat(statistics.utilisation()).isZero();
            assertThat(statistics.waitsMs().count()).isZero();
        }

        @Test
        void theQueueHoldsAsMuchTimeAsItsRequestsWaited() {
            Resource resource = new Resource(simulator, "machine", 2, QueueDiscipline.PREEMPTIVE_PRIORITY);
            UniformRandomProvider random = new RandomStreams(7).stream("requests");
            List<Request> requests = new ArrayList<>();
            for (int i = 0; i < 500; i++) {
                RequestDraft draft = resource.newRequest("r" + i)
                        .priority(random.nextInt(4))
                        .holdFor(random.nextInt(50), 0, done -> {})
                        .patienceMs(random.nextInt(300));
                simulator.scheduleAt(random.nextInt(9_000), 0, "ask", () -> requests.add(draft.submit()));
            }
            simulator.run();
            double endMs = simulator.nowMs();
            double waitedMs =
                    (double) requests.stream().mapToLong(Request::waitedMs).sum();
            double heldMs =
                    (double) requests.stream().mapToLong(Request::heldMs).sum();
            ResourceStatistics statistics = resource.statistics();
            assertThat(statistics.meanQueueLength() * endMs).isCloseTo(waitedMs, within());
            assertThat(statistics.meanInUse() * endMs).isCloseTo(heldMs, within());
            assertThat(statistics.waitsMs().count() + statistics.timeOuts()).isEqualTo(500);
            assertThat(statistics.preemptions()).isGreaterThan(20);
        }

        private org.assertj.core.data.Offset<Double> within() {
            return org.assertj.core.data.Offset.offset(1e-6);
        }
    }

    @Nested
    class Interrupts {

        /** salabim 24.0.16. */
        @Test
        void interruptsNestAndTheHoldGoesOnAfterTheLastResumption() {
            Resource resource = new Resource(simulator, "machine", 1);
            List<String> causes = new ArrayList<>();
            Request request = timed(resource, "r", 0, 10)
                    .whenInterrupted((r, cause) -> causes.add(cause + "@" + simulator.nowMs()))
                    .submit();
            at(2, () -> request.interrupt("jam"));
            at(3, () -> request.interrupt("lights out"));
            at(5, request::resume);
            at(9, request::resume);
            simulator.run();
            assertThat(causes).containsExactly("jam@2", "lights out@3");
            assertThat(seen).containsExactly("granted r@0", "done r@17");
            assertThatIllegalStateException()
                    .isThrownBy(request::resume)
                    .withMessage("request 'r' of 'machine' is RELEASED, and cannot be resumed");
        }

        /** kalasim, salabim 24.0.8: an interrupt while waiting. */
        @Test
        void anInterruptedRequestKeepsItsPlaceAndItsPatienceButIsPassedOver() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "holder", 0, 10).submit();
            Request waiter = timed(resource, "waiter", 0, 10).patienceMs(15).submit();
            timed(resource, "second", 0, 10).submit();
            timed(resource, "third", 0, 10).submit();
            at(4, () -> waiter.interrupt("fault"));
            at(16, waiter::resume);
            simulator.run();
            assertThat(seen)
                    .containsExactly(
                            "granted holder@0",
                            "done holder@10",
                            "granted second@10",
                            "done second@20",
                            "granted waiter@20",
                            "done waiter@30",
                            "granted third@30",
                            "done third@40");
        }

        /** hsma6 29: what could be served when the wait began, or when it goes on, must not stall. */
        @Test
        void aResumedRequestIsServedAtOnceIfAUnitIsFree() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "holder", 0, 10).submit();
            Request waiter = timed(resource, "waiter", 0, 5).submit();
            waiter.interrupt("fault");
            at(20, waiter::resume);
            simulator.run();
            assertThat(seen)
                    .containsExactly("granted holder@0", "done holder@10", "granted waiter@20", "done waiter@25");
        }

        @Test
        void anInterruptedHolderCanBePreemptedAndWaitsUntilItIsResumed() {
            Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY);
            Request low = timed(resource, "low", 5, 10).submit();
            at(3, () -> low.interrupt("fault"));
            at(4, () -> timed(resource, "high", 1, 6).submit());
            at(30, low::resume);
            simulator.run();
            assertThat(seen).endsWith("done high@10", "granted low@30", "done low@37");
        }

        @Test
        void aResumptionWithoutAnInterruptIsRefused() {
            Resource resource = new Resource(simulator, "machine", 1);
            Request request = noted(resource, "r", 0).submit();
            assertThatIllegalStateException()
                    .isThrownBy(request::resume)
                    .withMessage("request 'r' of 'machine' is HOLDING, is not interrupted and cannot be resumed");
        }
    }

    @Nested
    class ARequestWithATimeOutWithdrawsCleanly {

        /** SimSharp 45, Ciw 63. */
        @Test
        void whoLosesPatienceLeavesTheQueueAndNothingBehind() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "holder", 0, 10).submit();
            Request impatient = timed(resource, "impatient", 0, 5).patienceMs(4).submit();
            timed(resource, "next", 0, 5).submit();
            simulator.run();
            assertThat(seen)
                    .containsExactly(
                            "granted holder@0",
                            "timed out impatient@4",
                            "done holder@10",
                            "granted next@10",
                            "done next@15");
            assertThat(impatient.state()).isEqualTo(State.TIMED_OUT);
            assertThat(resource.statistics().givenUpMs().mean()).isEqualTo(4);
            assertThat(simulator.pendingEvents()).isZero();
        }

        @Test
        void whoIsServedInTimeHasNoTimeOutLeft() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "holder", 0, 10).submit();
            timed(resource, "patient", 0, 100).patienceMs(11).submit();
            simulator.runUntil(10);
            assertThat(simulator.pendingEvents()).isEqualTo(1);
            simulator.run();
            assertThat(seen).endsWith("granted patient@10", "done patient@110");
        }

        @Test
        void whoCanBeServedInTheLastMillisecondIsServed() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "holder", 0, 10).submit();
            timed(resource, "just in time", 0, 1).patienceMs(10).submit();
            simulator.run();
            assertThat(seen).containsSubsequence("granted just in time@10", "done just in time@11");
        }

        @Test
        void noPatienceMeansThisMillisecondOrNever() {
            Resource resource = new Resource(simulator, "machine", 1);
            timed(resource, "now", 0, 10).patienceMs(0).submit();
            timed(resource, "never", 0, 10).patienceMs(0).submit();
            simulator.run();
            assertThat(seen).containsExactly("granted now@0", "timed out never@0", "done now@10");
        }

        @Test
        void patienceLastsOverAGrantThatWasTakenBackBeforeItWasTold() {
            Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY);
            Request holder =
                    noted(resource, "holder", 1).whenGranted(request -> {}).submit();
            Request low = noted(resource, "low", 5).patienceMs(30).submit();
            noted(resource, "trigger", 4)
                    .whenGranted(request -> {
                        request.release();
                        noted(resource, "high", 1).submit();
                    })
                    .submit();
            at(10, holder::release);
            simulator.run();
            assertThat(seen).containsExactly("granted high@10", "timed out low@30");
            assertThat(low.state()).isEqualTo(State.TIMED_OUT);
        }
    }

    /** salabim's silent capping of negative delays. */
    @Test
    void nothingIsCappedInSilence() {
        Resource resource = new Resource(simulator, "machine", 2);
        RequestDraft draft = resource.newRequest("r");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> draft.holdFor(-1, 0, done -> {}))
                .withMessageContaining("holdMs of request 'r' is -1, but must be at least 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> draft.patienceMs(-1))
                .withMessageContaining("patienceMs of request 'r' is -1, but must be at least 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> draft.units(3))
                .withMessage(
                        "units of request 'r' is 3, but must be at least 1 and at most 2, the capacity of 'machine'");
        assertThatIllegalArgumentException().isThrownBy(() -> draft.units(0));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> resource.setCapacity(-1))
                .withMessage("capacity is -1, but must be at least 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Resource(simulator, "none", 0))
                .withMessage("capacity is 0, but must be at least 1");
        EventHandle event = simulator.schedule(3, 0, "later", () -> {});
        simulator.runUntil(2);
        assertThatIllegalArgumentException().isThrownBy(() -> event.reschedule(1));
    }
}
