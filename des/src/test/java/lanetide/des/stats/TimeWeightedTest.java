package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class TimeWeightedTest {

    /** Worked by hand: 2 for 10 ms, 5 for 30 ms, 0 for 60 ms make 170 ms in 100 ms. */
    @Test
    void eachValueCountsForAsLongAsItHolds() {
        TimeWeighted queue = new TimeWeighted(1000, 2);
        queue.set(1010, 5);
        queue.set(1040, 0);
        assertThat(queue.area(1100)).isEqualTo(170);
        assertThat(queue.mean(1100)).isEqualTo(1.7);
        assertThat(queue.value()).isZero();
        assertThat(queue.min()).isZero();
        assertThat(queue.max()).isEqualTo(5);
    }

    @Test
    void askingDoesNotChangeTheAnswer() {
        TimeWeighted queue = new TimeWeighted(0, 1);
        queue.set(10, 3);
        assertThat(queue.mean(20)).isEqualTo(2);
        assertThat(queue.mean(40)).isEqualTo(2.5);
        assertThat(queue.mean(20)).isEqualTo(2);
    }

    @Test
    void aValueHeldForNoTimeLeavesTheMeanButShowsInTheRange() {
        TimeWeighted queue = new TimeWeighted(0, 0);
        queue.add(10, 1);
        queue.add(10, -1);
        assertThat(queue.mean(20)).isZero();
        assertThat(queue.max()).isEqualTo(1);
    }

    @Test
    void timeDoesNotGoBack() {
        TimeWeighted queue = new TimeWeighted(0, 1);
        queue.set(10, 3);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> queue.set(9, 1))
                .withMessageContaining("9 ms")
                .withMessageContaining("10 ms");
        assertThatIllegalArgumentException().isThrownBy(() -> queue.mean(9));
        assertThat(queue.mean(20)).isEqualTo(2);
    }

    @Test
    void aMeanOverNoTimeIsRefused() {
        TimeWeighted queue = new TimeWeighted(50, 1);
        assertThatIllegalArgumentException().isThrownBy(() -> queue.mean(50)).withMessageContaining("50 ms");
    }

    @Test
    void whatIsNotAFiniteNumberIsRefusedAndLeavesEverythingAsItWas() {
        TimeWeighted queue = new TimeWeighted(0, 1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> queue.set(10, Double.NaN))
                .withMessageContaining("value is NaN");
        assertThat(queue.area(5)).isEqualTo(5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TimeWeighted(0, Double.NEGATIVE_INFINITY))
                .withMessageContaining("initial is -Infinity");
    }
}
