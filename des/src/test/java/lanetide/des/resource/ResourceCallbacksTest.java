package lanetide.des.resource;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import lanetide.des.Simulator;
import lanetide.des.resource.Request.State;
import org.junit.jupiter.api.Test;

/** What callbacks may do, and what they are told when several changes fall into one. */
class ResourceCallbacksTest {

    private final Simulator simulator = new Simulator();
    private final Resource resource = new Resource(simulator, "machine", 1, QueueDiscipline.PREEMPTIVE_PRIORITY);
    private final List<String> seen = new ArrayList<>();

    private RequestDraft noted(String label, int priority) {
        return resource.newRequest(label)
                .priority(priority)
                .whenGranted(request -> seen.add("granted " + request.label()))
                .whenPreempted(request -> seen.add("preempted " + request.label()));
    }

    @Test
    void aFreeUnitIsGrantedBeforeSubmitReturns() {
        Request request = noted("r", 0).submit();
        assertThat(request.state()).isEqualTo(State.HOLDING);
        assertThat(seen).containsExactly("granted r");
        assertThat(simulator.pendingEvents()).isZero();
    }

    @Test
    void oneDraftMakesAsManyRequestsAsItIsSubmitted() {
        RequestDraft draft = noted("r", 0).holdFor(5, 0, request -> seen.add("done " + request.number()));
        draft.submit();
        draft.submit();
        simulator.run();
        assertThat(simulator.nowMs()).isEqualTo(10);
        assertThat(seen).containsExactly("granted r", "done 0", "granted r", "done 1");
    }

    @Test
    void aChainOfGrantsAndReleasesDoesNotNest() {
        Request first = noted("first", 0).submit();
        for (int i = 0; i < 100_000; i++) {
            resource.newRequest("link").whenGranted(Request::release).submit();
        }
        first.release();
        assertThat(resource.waiting()).isZero();
        assertThat(resource.statistics().waitsMs().count()).isEqualTo(100_001);
    }

    @Test
    void whoCancelsBeforeHearingOfTheGrantHearsNothingAndHoldsNothing() {
        Request holder = noted("holder", 0).submit();
        Request[] rival = new Request[1];
        resource.newRequest("canceller")
                .whenGranted(request -> {
                    request.release();
                    assertThat(rival[0].state()).isEqualTo(State.HOLDING);
                    assertThat(rival[0].cancel()).isTrue();
                })
                .submit();
        rival[0] = noted("rival", 0).submit();
        Request last = noted("last", 0).submit();
        holder.release();
        assertThat(rival[0].state()).isEqualTo(State.CANCELLED);
        assertThat(last.state()).isEqualTo(State.HOLDING);
        assertThat(seen).containsExactly("granted holder", "granted last");
        assertThat(resource.statistics().waitsMs().count()).isEqualTo(3);
        assertThat(resource.statistics().givenUpMs().count()).isEqualTo(1);
    }

    @Test
    void whoReleasesBeforeHearingOfThePreemptionHearsNothingAndWaitsNoMore() {
        Resource two = new Resource(simulator, "machines", 2, QueueDiscipline.PREEMPTIVE_PRIORITY);
        Request low = two.newRequest("low")
                .priority(5)
                .whenPreempted(request -> seen.add("preempted low"))
                .submit();
        two.newRequest("middle")
                .priority(3)
                .whenGranted(request -> {
                    two.newRequest("high").priority(1).submit();
                    assertThat(low.state()).isEqualTo(State.WAITING);
                    low.release();
                })
                .submit();
        assertThat(low.state()).isEqualTo(State.RELEASED);
        assertThat(two.waiting()).isZero();
        assertThat(two.inUse()).isEqualTo(2);
        assertThat(seen).isEmpty();
    }

    @Test
    void aCallbackThatThrowsLeavesTheResourceInOrderAndTheRestIsToldAfterTheNextChange() {
        IllegalStateException broken = new IllegalStateException("broken");
        Request holder = noted("holder", 0).submit();
        Request thrower = resource.newRequest("thrower")
                .whenGranted(request -> {
                    request.release();
                    throw broken;
                })
                .submit();
        Request next = noted("next", 0).submit();
        assertThatThrownBy(holder::release).isSameAs(broken);
        assertThat(thrower.state()).isEqualTo(State.RELEASED);
        assertThat(next.state()).isEqualTo(State.HOLDING);
        assertThat(seen).containsExactly("granted holder");
        resource.setCapacity(1);
        assertThat(seen).containsExactly("granted holder", "granted next");
    }

    @Test
    void aRequestTellsWhatItIs() {
        Request request = noted("lane 5", 3).submit();
        assertThat(request.label()).isEqualTo("lane 5");
        assertThat(request.priority()).isEqualTo(3);
        assertThat(request.number()).isZero();
        assertThat(request).hasToString("request 'lane 5' of 'machine' is HOLDING");
    }
}
