package lanetide.cli.fairness;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.OptionalLong;
import lanetide.cli.scenario.ScenarioReader;
import lanetide.cli.scenario.Scenarios;
import lanetide.squads.model.Event;
import org.junit.jupiter.api.Test;

class EffectWordsTest {
    private static Event event(String name) throws IOException {
        Path file = Scenarios.FOLDER.resolve(name);
        return new ScenarioReader(OptionalLong.empty())
                .read(file.toString(), Files.readAllBytes(file))
                .scenario()
                .orElseThrow()
                .event();
    }

    /** Leagues, a sport league and open play, whose sessions differ in size too. */
    @Test
    void squadsOfDifferentFieldsMayNotCompete() throws IOException {
        assertThat(EffectWords.acrossFields(event("centre-week.yaml")))
                .hasValueSatisfying(told -> assertThat(told)
                        .startsWith("The squads are drawn from 3 different fields")
                        .contains("as the leagues of a week"));
        assertThat(EffectWords.acrossFields(event("championship.yaml"))).isEmpty();
        assertThat(EffectWords.acrossFields(event("club-final.yaml"))).isEmpty();
    }
}
