package lanetide.cli.scenario.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import lanetide.cli.scenario.Scenarios;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;
import org.junit.jupiter.api.Test;

/** What is told of shipped things stands in their tables, so that these values were read there. */
class AssumptionsTest {
    private static final Catalogue CATALOGUE = Catalogue.shipped();
    private static final Level LEAGUE = Levels.shipped().get("league");

    @Test
    void everyKindOfShippedThingIsToldInTheUnitsOfItsTable() {
        List<Assumption> told = Assumptions.of(
                List.of(CATALOGUE.surfaces().get("hard-synthetic")),
                List.of(CATALOGUE.styles().get("stroker")),
                List.of(LEAGUE),
                List.of(CATALOGUE.covers().get("urethane")));

        assertThat(told)
                .extracting(Assumption::name, Assumption::value)
                .containsExactly(
                        tuple("surface hard-synthetic", "dry friction 0.2298"),
                        tuple("style stroker", "18 mph, 260 rpm"),
                        tuple("level league", "1.3 boards of scatter at the arrows"),
                        tuple("cover urethane", "dry friction 0.95 of a medium cover's, roughness 0.9 um"));
        assertThat(told).extracting(Assumption::source).doesNotContain("");
    }

    @Test
    void anEventTellsItsSurfaceAndEveryStyleLevelAndCoverOfItsBowlersOnce() {
        Assumptions assumptions = new Assumptions();

        assumptions.addNamesOf(
                Scenarios.read(Scenarios.SOUND).scenario().orElseThrow().event());

        assertThat(assumptions.list())
                .extracting(Assumption::name)
                .containsExactly(
                        "surface hard-synthetic",
                        "style stroker",
                        "style tweener",
                        "level league",
                        "level scratch",
                        "cover medium-reactive",
                        "cover urethane",
                        "cover plastic");
    }

    @Test
    void theSameIsToldOnce() {
        Assumptions assumptions = new Assumptions();

        assumptions.add("pace", "slow", "assumption");
        assumptions.add("pace", "slow", "assumption");
        assumptions.add("pace", "fast", "assumption");

        assertThat(assumptions.list()).extracting(Assumption::value).containsExactly("slow", "fast");
    }
}
