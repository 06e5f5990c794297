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
    @CsvSource({"--replications, 3, 4", "--games, 1, 2", "--games, 101, 2", "--oilings, 0, 1", "--oilings, 101, 1"})
    void aCountOutsideItsLimitsIsWrongUse(String option, int value, int least) {
        Program.Outcome outcome = Program.run("reoil", ONE_PAIR, option, value);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err())
                .contains(option + " is " + value + "; it must be a whole number from " + least + " to ");
    }

    /** Two squads on one pair: the one oiling that must be, and one between them. */
    @Test
    void oilingsAreToldByNumberWithWhatEachSavesInTextAndJsonAlike() throws Exception {
        Path week = Files.writeString(
                folder.resolve("week.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("centre-week.yaml"))
                        .replace("lanes: 1 to 8", "lanes: 1 to 2")
                        .replaceAll("perSquad: \\d+", "perSquad: 4")
                        .replace("bowlers: 12", "bowlers: 3")
                        .replaceAll("(?m)^.*id: (Thu|Fri|Sat|Sun) .*\n", "")
                        .replace("games: 3\npractice", "games: 1\npractice"));
        List<Object> command = List.of("reoil", week, "--replications", 4, "--games", 2, "--oilings", 3);

        Program.Outcome outcome = Program.runWith(command, "--format", "json");
        JsonNode schedules = outcome.answer().get("schedules");
        String text = Program.runWith(command).out().replaceAll("\\s+", " ");

        assertThat(outcome.err()).isEmpty();
        assertThat(schedules.get("byOilings")).hasSize(3);
        for (int oilings = 1; oilings <= 3; oilings++) {
            JsonNode schedule = schedules.get("byOilings").get(oilings - 1);
            assertThat(schedule.get("squads")).hasSize(oilings);
            assertThat(schedule.get("squads").get(0).asString()).isEqualTo("Mon league");
            assertThat(schedule.get("paybacks")).hasSize(oilings - 1);
            double cost = schedule.get("cost").asDouble();
            assertThat(schedule.get("oilingCost").asDouble()
                            + schedule.get("scoresCost").asDouble())
                    .isCloseTo(cost, org.assertj.core.api.Assertions.within(0.011));
            assertThat(cost)
                    .isBetween(
                            schedule.get("low").asDouble(), schedule.get("high").asDouble());
            assertThat(text).contains(String.format(java.util.Locale.ROOT, "%.2f", cost));
        }
        int best = schedules.get("oilings").asInt();
        assertThat(text)
                .contains("It costs least to oil all lanes "
                        + List.of("once", "twice", "3 times").get(best - 1))
                .contains("As planned, before Mon league, Tue league and Wed sport");
    }
}
