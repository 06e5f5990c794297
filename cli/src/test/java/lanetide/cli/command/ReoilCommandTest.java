package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;

class ReoilCommandTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");

    private static Program.Outcome json;

    @TempDir
    Path folder;

    @BeforeAll
    static void study() {
        json = reoil("--format", "json", "--threads", 1);
    }

    private static Program.Outcome reoil(Object... options) {
        return Program.runWith(List.of("reoil", ONE_PAIR, "--replications", 4, "--games", 5), options);
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).isZero();
        assertThat(json.err()).isEmpty();
        JsonNode answer = json.answer();

        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256")
                .contains("recommendation", "policies", "curve", "oilOver", "event", "assumptions");
        assertThat(answer.get("recommendation").propertyNames()).contains("everyGames", "low", "high", "basis", "text");
        assertThat(answer.get("curve")).hasSize(5);
        assertThat(answer.get("curve").get(0).propertyNames())
                .contains(
                        "games", "windowShiftBoards", "windowWidthBoards", "pocketShare", "spreadPins", "costPerGame");
        assertThat(answer.get("policies")
                        .valueStream()
                        .map(policy -> policy.get("basis").asString()))
                .containsExactly("cost", "cost lane by lane", "threshold", "age replacement", "condition");
    }

    @Test
    void theBytesAreTheSameForAnyNumberOfThreads() {
        assertThat(reoil("--format", "json", "--threads", 3).out()).isEqualTo(json.out());
    }

    @Test
    void theTextGivesTheIntervalFirstAndMarksAssumedCosts() {
        String text = reoil().out();

        assertThat(text).startsWith("Two bowlers on one pair\nOil all lanes again after ");
        assertThat(text)
                .contains("Strip and oil, or oil over", "The curve behind it", "costs.pin: 0.1 (assumption)")
                .contains("not a lane inspection and not a ruling");
        assertThat(text.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void ownCostsAreUsedAndNotCalledAssumed() throws Exception {
        Path own = Files.writeString(
                folder.resolve("own.yaml"),
                Files.readString(ONE_PAIR)
                        + "\ncosts: {currency: CHF, oilLitre: 0, cleanerLane: 0, labourHour: 0, laneHour: 0, pin: 1}\n");

        String text =
                Program.run("reoil", own, "--replications", 4, "--games", 3).out();

        assertThat(text.replaceAll("\\s+", " "))
                .contains("A pair's share of the oiling is 0.00 CHF", "costs.unplanned: 3 (assumption)")
                .doesNotContain("costs.pin:");
    }

    @Test
    void theTableHasOneRowForEachGame() {
        List<String> rows = reoil("--format", "csv").out().lines().toList();

        assertThat(rows).hasSize(6);
        assertThat(rows.get(0)).startsWith("games,windowShiftBoards,");
    }

    @ParameterizedTest
    @CsvSource({"--replications, 3, 4", "--games, 1, 2", "--games, 101, 2"})
    void aCountOutsideItsLimitsIsWrongUse(String option, int value, int least) {
        Program.Outcome outcome = Program.run("reoil", ONE_PAIR, option, value);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err())
                .contains(option + " is " + value + "; it must be a whole number from " + least + " to ");
    }
}
