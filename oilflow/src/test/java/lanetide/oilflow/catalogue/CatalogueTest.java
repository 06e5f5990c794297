package lanetide.oilflow.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.BallLimit;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.lane.LaneSurface;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CatalogueTest {
    private final Catalogue catalogue = Catalogue.shipped();

    @Test
    void theShippedFilesHoldSurfacesCoversAndStyles() {
        assertThat(catalogue.surfaces()).containsKeys("hard-synthetic", "textured-synthetic", "worn-synthetic", "wood");
        assertThat(catalogue.covers()).containsKeys("plastic", "urethane", "medium-reactive");
        assertThat(catalogue.styles()).containsKeys("straight", "stroker", "tweener", "power");
    }

    /** Mean roughness up to 1.27 um, friction up to 0.32, no drop gone in under 135 s (USBC, 2009, 2012 and 2020). */
    @Test
    void everyShippedCoverKeepsTheRulesOfRoughnessFrictionAndAbsorption() {
        for (Coverstock cover : catalogue.covers().values()) {
            assertThat(BallLimit.MODEL_ROUGHNESS.allows(cover.roughnessUm()))
                    .as(cover.id())
                    .isTrue();
            assertThat(BallLimit.ABSORPTION.allows(cover.absorptionS()))
                    .as(cover.id())
                    .isTrue();
            for (LaneSurface surface : catalogue.surfaces().values()) {
                assertThat(BallLimit.FRICTION.allows(surface.dryFriction() * cover.frictionFactor()))
                        .as(cover.id() + " on " + surface.id())
                        .isTrue();
            }
        }
    }

    /** Rings of oil cross twice a turn: the overlap is the mean of max(0, 1 - g |sin a| / w) round the ball. */
    @ParameterizedTest(name = "{0}: rings {1} mm apart")
    @CsvSource({"plastic, 1.25", "urethane, 1.2", "weak-reactive, 5", "medium-reactive, 8", "strong-reactive, 10"})
    void theFlareOverlapFollowsFromTheGapBetweenTheRings(String cover, double gapMm) {
        double contactMm = 41.5 * 25.4 / 39 / 8;
        int steps = 100_000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double around = 2 * Math.PI * (i + 0.5) / steps;
            sum += Math.max(0, 1 - gapMm * Math.abs(Math.sin(around)) / contactMm) / steps;
        }
        assertThat(catalogue.covers().get(cover).flareOverlap()).isCloseTo(sum, within(0.006));
    }

    @Test
    void aMissingFileOrFieldIsNamed() {
        assertThatThrownBy(() -> new DataFile(Catalogue.class, "balls.properties"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("balls.properties");
        DataFile covers = new DataFile(Catalogue.class, "covers.properties");
        assertThatThrownBy(() -> covers.number("plastic", "colour"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("covers.properties has no plastic.colour");
    }
}
