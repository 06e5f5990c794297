package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Series whose truncation was worked out from the formula by a separate program. */
class WarmUpTest {

    @Test
    void meansOfFiveFindTheEndOfAFall() {
        double[] series = DoubleStream.concat(
                        IntStream.rangeClosed(1, 10).mapToDouble(i -> 11 - i), repeat(10, 1, -1, 0, 1, -1))
                .toArray();
        assertThat(WarmUp.find(series, 5)).isEqualTo(new WarmUp(10, 0, true));
    }

    @Test
    void singleObservationsFindTheEndOfAFall() {
        double[] series = DoubleStream.concat(DoubleStream.of(9, 7, 5, 3, 1), repeat(10, 1, -1))
                .toArray();
        WarmUp warmUp = WarmUp.find(series, 1);
        assertThat(warmUp.observations()).isEqualTo(4);
        assertThat(warmUp.mean()).isCloseTo(0.047619, within(5e-7));
        assertThat(warmUp.isFound()).isTrue();
    }

    @Test
    void aRunThatIsStillFallingIsTooShortToTell() {
        double[] falling = IntStream.range(0, 40).mapToDouble(i -> 40 - i).toArray();
        assertThat(WarmUp.find(falling, 1).isFound()).isFalse();
    }

    @Test
    void aSteadyRunNeedsNoWarmUp() {
        assertThat(WarmUp.find(repeat(30, 1, -1).toArray(), 1)).isEqualTo(new WarmUp(0, 0, true));
    }

    @Test
    void tooShortARunAndNoBatchAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> WarmUp.find(new double[49], 5))
                .withMessage("there are 49 observations, but must be at least 50 for batches of 5");
        assertThatIllegalArgumentException().isThrownBy(() -> WarmUp.find(new double[49], 0));
    }

    private static DoubleStream repeat(int times, double... pattern) {
        return IntStream.range(0, times).boxed().flatMapToDouble(i -> Arrays.stream(pattern));
    }
}
