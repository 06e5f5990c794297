package lanetide.oilflow.friction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneSurface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExponentialStribeckTest {
    /**
     * The equation of Bo and Pavelescu, Wear 82 (1982), with friction 0.20 dry and 0.02 fluid; the exponentials are
     * handbook values (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, table 4.4), from memory: e^-0.5
     * 0.60653, e^-1 0.36788, e^-2 0.13534, e^-4 0.01832.
     */
    @ParameterizedTest(name = "film {0} roughnesses, exponent {1}: {2}")
    @CsvSource({
        "0,    1,   0.20000",
        "0.5,  1,   0.12918",
        "1,    1,   0.08622",
        "2,    1,   0.04436",
        "4,    1,   0.02330",
        "1,    0.5, 0.08622",
        "4,    0.5, 0.04436",
        "16,   0.5, 0.02330",
        "1,    2,   0.08622",
        "2,    2,   0.02330"
    })
    void frictionFallsAsTheHandbooksExponential(double roughnesses, double exponent, double expected) {
        ExponentialStribeck law = new ExponentialStribeck(0.20, 0.02, 1.3, exponent);
        assertThat(law.coefficient(1.3 * roughnesses)).isCloseTo(expected, within(1e-5));
    }

    /** Why it is not the usual law: a head of 20 units may halve and a ball feels a fifth of it or less. */
    @Test
    void thinnedHeadsBrakeABallFarLessUnderThisLawThanUnderTheUsualOne() {
        double headUm = 70 * OilFilm.UNIT_UM;
        ExponentialStribeck law =
                ExponentialStribeck.between(surface("hard-synthetic"), cover("medium-reactive"), FrictionValues.USUAL);
        MixedLubrication usual =
                MixedLubrication.between(surface("hard-synthetic"), cover("medium-reactive"), FrictionValues.USUAL);
        double rise = law.coefficient(headUm / 2) - law.coefficient(headUm);
        double usualRise = usual.coefficient(headUm / 2) - usual.coefficient(headUm);
        assertThat(rise).isPositive().isLessThan(usualRise / 5);
    }

    @Test
    void bothLawsAgreeOnACleanLaneAndUnderAThickFilm() {
        for (LaneSurface surface : Catalogue.shipped().surfaces().values()) {
            for (Coverstock cover : Catalogue.shipped().covers().values()) {
                ExponentialStribeck law = ExponentialStribeck.between(surface, cover, FrictionValues.USUAL);
                MixedLubrication usual = MixedLubrication.between(surface, cover, FrictionValues.USUAL);
                assertThat(law.coefficient(0)).isEqualTo(usual.coefficient(0));
                assertThat(law.coefficient(100_000)).isCloseTo(usual.coefficient(100_000), within(1e-6));
            }
        }
    }

    @Test
    void frictionNeverRisesWithTheFilm() {
        for (double exponent = 0.5; exponent <= 2; exponent += 0.25) {
            ExponentialStribeck law = new ExponentialStribeck(0.25, 0.012, 0.4, exponent);
            double last = law.coefficient(0);
            for (double filmUm = 0.01; filmUm < 20; filmUm += 0.01) {
                double next = law.coefficient(filmUm);
                assertThat(next).as("at %s um, exponent %s", filmUm, exponent).isBetween(law.fluid(), last);
                last = next;
            }
        }
    }

    @Test
    void anExponentOutsideThePublishedOnesIsRefused() {
        assertThatThrownBy(() -> new ExponentialStribeck(0.2, 0.02, 1, 0.4))
                .hasMessageContaining("exponent of the passage is 0.4");
        assertThatThrownBy(() -> new ExponentialStribeck(0.1, 0.2, 1, 1)).hasMessageContaining("fluid friction is 0.2");
    }

    private static LaneSurface surface(String id) {
        return Catalogue.shipped().surfaces().get(id);
    }

    private static Coverstock cover(String id) {
        return Catalogue.shipped().covers().get(id);
    }
}
