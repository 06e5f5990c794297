package lanetide.oilflow.catalogue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import lanetide.oilflow.ball.Coverstock;
import org.junit.jupiter.api.Test;

class CatalogueTest {
    private final Catalogue catalogue = Catalogue.shipped();

    @Test
    void theShippedFilesHoldSurfacesCoversAndStyles() {
        assertThat(catalogue.surfaces()).containsKeys("hard-synthetic", "textured-synthetic", "worn-synthetic", "wood");
        assertThat(catalogue.covers()).containsKeys("plastic", "urethane", "medium-reactive");
        assertThat(catalogue.styles()).containsKeys("straight", "stroker", "tweener", "power");
    }

    /** A ball may be made with Ra up to 1.65 um; no drop may vanish in under 135 s (USBC, 2009 and 2020). */
    @Test
    void everyShippedCoverKeepsTheRulesOfRoughnessAndAbsorption() {
        for (Coverstock cover : catalogue.covers().values()) {
            assertThat(cover.roughnessUm()).as(cover.id()).isLessThanOrEqualTo(1.65);
            assertThat(cover.absorptionS()).as(cover.id()).isGreaterThanOrEqualTo(135);
        }
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
