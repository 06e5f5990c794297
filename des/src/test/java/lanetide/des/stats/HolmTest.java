package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import lanetide.des.ReadmeRow;
import org.junit.jupiter.api.Test;

/** Expected values computed from Holm's definition by a separate program. */
class HolmTest {

    @Test
    void probabilitiesAreAdjustedStepByStepAndNeverOutOfOrder() {
        double[] four = Holm.adjust(new double[] {.01, .04, .03, .005});
        double[] five = Holm.adjust(new double[] {.01, .02, .03, .04, .05});

        assertThat(four).containsExactly(new double[] {.03, .06, .06, .02}, within(1e-12));
        assertThat(five).containsExactly(new double[] {.05, .08, .09, .09, .09}, within(1e-12));
        ReadmeRow.says("Holm", Arrays.toString(four) + " and " + Arrays.toString(five));
    }

    @Test
    void nothingIsAdjustedBeyondOneAndASingleTestNotAtAll() {
        assertThat(Holm.adjust(new double[] {.9, .7})).containsExactly(1, 1);
        assertThat(Holm.adjust(new double[] {.3})).containsExactly(.3);
        assertThat(Holm.adjust(new double[0])).isEmpty();
    }

    @Test
    void whatIsNoProbabilityIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Holm.adjust(new double[] {.3, 1.1}))
                .withMessage("probability is 1.1, but must be at least 0 and at most 1");
        assertThatIllegalArgumentException().isThrownBy(() -> Holm.adjust(new double[] {Double.NaN}));
    }
}
