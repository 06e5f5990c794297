package lanetide.oilflow.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.lane.LaneSurface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Values of mu = mu_f + (mu_b - mu_f)/(1 + Lambda), the load-sharing blend used after Olver and Spikes (1998), from
 * memory, with another exponent than theirs; the table is computed from the equation by hand, to the printed digits.
 */
class MixedLubricationTest {
    @ParameterizedTest(name = "Lambda {0}: {1}, {2}, {3}")
    @CsvSource({
        "0  , 0.2000, 0.2500, 0.3000",
        "0.3, 0.1585, 0.1992, 0.2400",
        "0.5, 0.1400, 0.1767, 0.2133",
        "1  , 0.1100, 0.1400, 0.1700",
        "2  , 0.0800, 0.1033, 0.1267",
        "3  , 0.0650, 0.0850, 0.1050",
        "5  , 0.0500, 0.0667, 0.0833",
        "10 , 0.0364, 0.0500, 0.0636"
    })
    void frictionFallsWithTheFilmAsTheTableSays(double lambda, double slick, double medium, double rough) {
        double sigmaUm = 1.3;
        double filmUm = lambda * sigmaUm;
        double rounding = 0.5e-4 + 1e-9;
        assertThat(new MixedLubrication(0.20, 0.02, sigmaUm).coefficient(filmUm))
                .isCloseTo(slick, within(rounding));
        assertThat(new MixedLubrication(0.25, 0.03, sigmaUm).coefficient(filmUm))
                .isCloseTo(medium, within(rounding));
        assertThat(new MixedLubrication(0.30, 0.04, sigmaUm).coefficient(filmUm))
                .isCloseTo(rough, within(rounding));
    }

    /**
     * A ball may have a coefficient of at most 0.32 on the clean lane (USBC specification of 2012); a film only lowers
     * it.
     */
    @Test
    void everyShippedCoverOnEveryShippedSurfaceStaysWithinTheBallRuleOf32Hundredths() {
        Catalogue catalogue = Catalogue.shipped();
        for (LaneSurface surface : catalogue.surfaces().values()) {
            for (Coverstock cover : catalogue.covers().values()) {
                MixedLubrication law = MixedLubrication.between(surface, cover, FrictionValues.USUAL);
                assertThat(law.coefficient(0))
                        .as("%s on %s", cover.id(), surface.id())
                        .isBetween(0.1, 0.32);
                double last = law.coefficient(0);
                for (double filmUm = 0.1; filmUm < 20; filmUm += 0.1) {
                    double next = law.coefficient(filmUm);
                    assertThat(next).isLessThan(last).isGreaterThan(law.fluid());
                    last = next;
                }
            }
        }
    }

    /** Order published in Bowlers Journal, November 2012, p. 25. */
    @Test
    void woodIsRougherThanTexturedSyntheticIsRougherThanHardSynthetic() {
        Catalogue catalogue = Catalogue.shipped();
        Coverstock cover = catalogue.covers().get("medium-reactive");
        for (double filmUm = 0; filmUm < 10; filmUm += 0.5) {
            double wood = between(catalogue, "wood", cover).coefficient(filmUm);
            double worn = between(catalogue, "worn-synthetic", cover).coefficient(filmUm);
            double textured = between(catalogue, "textured-synthetic", cover).coefficient(filmUm);
            double hard = between(catalogue, "hard-synthetic", cover).coefficient(filmUm);
            assertThat(wood).isGreaterThan(worn);
            assertThat(worn).isGreaterThan(textured);
            assertThat(textured).isGreaterThan(hard);
        }
    }

    @Test
    void aFluidFrictionAboveTheDryOneIsRefused() {
        assertThatThrownBy(() -> new MixedLubrication(0.1, 0.2, 1)).hasMessageContaining("fluid friction is 0.2");
    }

    private static MixedLubrication between(Catalogue catalogue, String surface, Coverstock cover) {
        return MixedLubrication.between(catalogue.surfaces().get(surface), cover, FrictionValues.USUAL);
    }
}
