package lanetide.oilflow.ball;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BallSpecTest {
    private static final double INCH_M = 0.0254;
    private static final Coverstock COVER = new Coverstock("test", 1, 0.7, 0.2, 400, "test");

    /** USBC specification of 2012: circumference 26.704 to 27.002 in; approvals from July 2010: RG 2.46 to 2.80 in. */
    @ParameterizedTest(name = "{0} in round, RG {1} in")
    @CsvSource({"26.704, 2.46", "26.704, 2.80", "27.002, 2.46", "27.002, 2.80"})
    void everyLegalBallIsAccepted(double circumferenceIn, double gyrationIn) {
        double radiusM = circumferenceIn * INCH_M / (2 * Math.PI);
        assertThat(new BallSpec(COVER, radiusM, gyrationIn * INCH_M).inertiaRatio())
                .isBetween(0.32, 0.44);
    }

    @ParameterizedTest(name = "{0} in round, RG {1} in")
    @CsvSource({"26.6, 2.6", "27.1, 2.6", "27, 2.43", "27, 2.85", "NaN, 2.6"})
    void aBallOutsideTheRulesIsRefused(double circumferenceIn, double gyrationIn) {
        double radiusM = circumferenceIn * INCH_M / (2 * Math.PI);
        assertThatThrownBy(() -> new BallSpec(COVER, radiusM, gyrationIn * INCH_M))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must be")
                .hasMessageContaining("USBC");
    }

    /** USBC specification of 2012: at most 16.00 lb. */
    @Test
    void aBallOfSixteenPoundsIsTheHeaviest() {
        assertThat(new BallCore(0.1085, 0.065, 16 * 0.45359237).massKg()).isCloseTo(7.257, within(0.001));
        assertThatThrownBy(() -> new BallCore(0.1085, 0.065, 16.01 * 0.45359237))
                .hasMessageContaining("16.00 lb");
        assertThatThrownBy(() -> new BallCore(0.1085, 0.065, 2)).hasMessageContaining("mass (kg)");
    }

    @Test
    void anotherFinishChangesTheRoughnessAlone() {
        Coverstock sanded = COVER.finished("sanded", 1.2, "pad");
        assertThat(sanded).isEqualTo(new Coverstock("sanded", 1, 1.2, 0.2, 400, "test; finish: pad"));
    }

    /** A uniform sphere has 2/5; in a 27 in ball that is a radius of gyration of 2.72 in (textbook). */
    @Test
    void aUniformSphereHasTwoFifths() {
        double radiusM = 27 * INCH_M / (2 * Math.PI);
        assertThat(new BallSpec(COVER, radiusM, radiusM * Math.sqrt(0.4)).inertiaRatio())
                .isCloseTo(0.4, within(1e-12));
    }

    @Test
    void tradeUnitsBecomeSi() {
        Release release = Release.ofTradeUnits(17.9, 416, 45, 10);
        assertThat(release.speedMps()).isCloseTo(8.002, within(0.0005));
        assertThat(release.spinRadps()).isCloseTo(43.563, within(0.0005));
        assertThat(release.axisRotationRad()).isCloseTo(Math.PI / 4, within(1e-12));
        assertThat(release.scaled(1.1, 0.9).speedMps()).isCloseTo(1.1 * release.speedMps(), within(1e-12));
        assertThat(release.scaled(1.1, 0.9).axisTiltRad()).isEqualTo(release.axisTiltRad());
    }

    @ParameterizedTest(name = "{0} mph")
    @ValueSource(doubles = {5, 40})
    void aSpeedNobodyThrowsIsRefused(double mph) {
        assertThatThrownBy(() -> Release.ofTradeUnits(mph, 300, 45, 10)).hasMessageContaining("ball speed (m/s) is");
    }

    @Test
    void aCoverWithoutANameOrSourceIsRefused() {
        assertThatThrownBy(() -> new Coverstock(" ", 1, 0.7, 0.2, 400, "test")).hasMessageContaining("cover is blank");
        assertThatThrownBy(() -> new Coverstock("x", 1, 0.7, 0.2, 400, "")).hasMessageContaining("source of cover x");
        assertThatThrownBy(() -> new Coverstock("x", 1, 0.7, 1.2, 400, "test")).hasMessageContaining("flare overlap");
    }
}
