package lanetide.des;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ResourceTest {

    private final Simulator simulator = new Simulator();
    private final Resource machines = new Resource("machines", 2);
    private final List<String> seen = new ArrayList<>();

    private void use(String who, long holdMs) {
        machines.acquire(() -> {
            seen.add(who + " from " + simulator.nowMs());
            simulator.schedule(holdMs, 0, who, machines::release);
        });
    }

    @Test
    void aFreeUnitIsGrantedBeforeAskingReturns() {
        machines.acquire(() -> seen.add("granted"));
        assertThat(seen).containsExactly("granted");
    }

    /** Worked by hand: a and b begin at once; c takes over from b at 4, d from a at 10, e from c at 11. */
    @Test
    void whoAskedFirstIsServedFirstAsSoonAsAUnitIsFree() {
        use("a", 10);
        use("b", 4);
        use("c", 7);
        use("d", 3);
        use("e", 1);
        simulator.run();
        assertThat(seen).containsExactly("a from 0", "b from 0", "c from 4", "d from 10", "e from 11");
        assertThat(simulator.nowMs()).isEqualTo(13);
    }

    @Test
    void aUnitReleasedWhileNobodyWaitsIsThereForTheNext() {
        use("a", 5);
        simulator.run();
        use("b", 5);
        use("c", 5);
        assertThat(seen).containsExactly("a from 0", "b from 5", "c from 5");
    }

    @Test
    void whatIsAskedWithinAGrantIsGrantedAfterIt() {
        machines.acquire(() -> {
            machines.acquire(() -> seen.add("inner"));
            seen.add("outer");
        });
        assertThat(seen).containsExactly("outer", "inner");
    }

    @Test
    void aChainOfGrantsAndReleasesDoesNotNest() {
        machines.acquire(() -> {});
        machines.acquire(() -> {});
        int[] served = {0};
        for (int i = 0; i < 100_000; i++) {
            machines.acquire(() -> {
                served[0]++;
                machines.release();
            });
        }
        machines.release();
        assertThat(served[0]).isEqualTo(100_000);
    }

    @Test
    void anActionThatThrowsLeavesTheRestToTheNextChange() {
        IllegalStateException broken = new IllegalStateException("broken");
        machines.acquire(() -> {});
        machines.acquire(() -> {});
        machines.acquire(() -> {
            machines.release();
            throw broken;
        });
        machines.acquire(() -> seen.add("next"));
        assertThatThrownBy(machines::release).isSameAs(broken);
        assertThat(seen).isEmpty();
        machines.acquire(() -> seen.add("last"));
        assertThat(seen).containsExactly("next");
        machines.release();
        assertThat(seen).containsExactly("next", "last");
    }

    @Test
    void moreThanAllUnitsCannotBeReleased() {
        assertThatIllegalStateException()
                .isThrownBy(machines::release)
                .withMessage("'machines' has all its units (2), so that none can be released");
    }

    @Test
    void aResourceWithoutUnitsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Resource("machines", 0))
                .withMessage("units of 'machines' is 0, but must be at least 1");
    }
}
