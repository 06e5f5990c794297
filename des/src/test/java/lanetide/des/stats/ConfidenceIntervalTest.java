package lanetide.des.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class ConfidenceIntervalTest {

    @Test
    void theHalfWidthIsHalfTheDistanceOfTheEnds() {
        assertThat(new ConfidenceInterval(1, 4, 0.95).halfWidth()).isEqualTo(1.5);
    }

    @Test
    void endsInTheWrongOrderAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ConfidenceInterval(2, 1, 0.95))
                .withMessage("low is 2.0, but must not exceed high, which is 1.0");
    }

    @Test
    void endsThatAreNotFiniteAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ConfidenceInterval(Double.NaN, 1, 0.95))
                .withMessageContaining("low is NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ConfidenceInterval(0, Double.POSITIVE_INFINITY, 0.95))
                .withMessageContaining("high is Infinity");
    }
}
