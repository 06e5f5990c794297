package lanetide.oilflow.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.BallLimit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GritsTest {
    private final Grits grits = Grits.shipped();

    /**
     * The limits are USBC's, from April 2009; that the coarsest pads just keep them is how the share of the grain was
     * chosen.
     */
    @Test
    void theCoarsestPadsInCommonUseJustKeepTheLimitsOfRoughness() {
        assertThat(BallLimit.ROUGHNESS.allows(grits.roughnessUm(360))).isTrue();
        assertThat(BallLimit.ROUGHNESS.allows(grits.roughnessUm(320))).isFalse();
        assertThat(BallLimit.MODEL_ROUGHNESS.allows(grits.roughnessUm(500))).isTrue();
        assertThat(BallLimit.MODEL_ROUGHNESS.allows(grits.roughnessUm(400))).isFalse();
    }

    /**
     * ISO 6344 (from memory): median grain of P1200 15.3 um, P600 25.8 um, which the file leaves to be interpolated.
     */
    @Test
    void betweenTwoNumbersTheGrainIsTheStandardsWithinAFewPerCent() {
        assertThat(grits.roughnessUm(1200) / grits.roughnessUm(1000)).isCloseTo(15.3 / 18.3, within(0.02));
        assertThat(grits.roughnessUm(600) / grits.roughnessUm(500)).isCloseTo(25.8 / 30.2, within(0.05));
    }

    @Test
    void theFinerTheAbrasiveTheSmootherTheBall() {
        for (double grit = grits.coarsest(); grit + 10 <= grits.finest(); grit += 10) {
            assertThat(grits.roughnessUm(grit + 10)).as("grit %s", grit).isLessThan(grits.roughnessUm(grit));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 12_000, Double.NaN})
    void aGritBeyondTheFileIsRefused(double grit) {
        assertThatThrownBy(() -> grits.roughnessUm(grit)).hasMessageContaining("grit is");
    }
}
