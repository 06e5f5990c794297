package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SimulateCommandTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");
    private static final Path FAULTY = Scenarios.FOLDER.resolve("faulty").resolve("length-61-ft.yaml");

    private static Program.Outcome json;

    @TempDir
    Path folder;

    @BeforeAll
    static void play() {
        json = simulate("--format", "json", "--replications", 3, "--threads", 1);
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).isZero();
        assertThat(json.err()).isEmpty();
        JsonNode answer = JsonMapper.shared().readTree(json.out());

        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256", "replications", "shots")
                .contains("squads", "lanes", "oil");
        assertThat(answer.get("seed").asInt()).isEqualTo(3);
        assertThat(answer.get("replications").asInt()).isEqualTo(3);
        assertThat(answer.get("shots").asInt()).isPositive();
        JsonNode squad = answer.get("squads").get(0);
        assertThat(squad.propertyNames()).contains("id", "start", "end", "games", "meanScore", "meanScoreCi95");
        assertThat(squad.get("start").asString()).isEqualTo("18:00");
        assertThat(squad.get("games").asInt()).isEqualTo(6);
        assertThat(squad.get("meanScoreCi95").get("low").asDouble())
                .isLessThan(squad.get("meanScore").asDouble());
        JsonNode lane = answer.get("lanes").get(0);
        assertThat(lane.propertyNames()).containsExactly("lane", "games");
        assertThat(lane.get("games").get(0).propertyNames())
                .contains("squad", "afterGame", "gamesOnOil", "volumeMl", "headUnits", "headUnitsLow", "carrydownMl")
                .contains("windows");
        assertThat(lane.get("games").get(0).get("windows").get(0).propertyNames())
                .containsExactly("style", "hand", "low", "high", "best");
        assertThat(answer.get("oil").propertyNames())
                .containsExactly(
                        "appliedMl", "onLanesMl", "onBallsMl", "absorbedMl", "wipedMl", "strippedMl", "relativeError");
    }

    /** 23 mL on each of two lanes: what the scenario says, not what the program computes. */
    @Test
    void theOilAccountOpensWithWhatWasLaidAndCloses() {
        JsonNode oil = JsonMapper.shared().readTree(json.out()).get("oil");

        assertThat(oil.get("appliedMl").asDouble()).isEqualTo(46);
        double found = 0;
        for (String where : List.of("onLanesMl", "onBallsMl", "absorbedMl", "wipedMl", "strippedMl")) {
            found += oil.get(where).asDouble();
        }
        assertThat(found).isCloseTo(46, org.assertj.core.data.Offset.offset(0.005));
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 8})
    void theBytesAreTheSameForAnyNumberOfThreads(int threads) {
        Program.Outcome again = simulate("--format", "json", "--replications", 3, "--threads", threads);

        assertThat(again.out()).isEqualTo(json.out());
    }

    @Test
    void anotherSeedGivesAnotherAnswer() {
        assertThat(simulate("--format", "json", "--replications", 3, "--seed", 4)
                        .out())
                .isNotEqualTo(json.out());
    }

    @Test
    void onePlayingHasNoInterval() {
        JsonNode answer = JsonMapper.shared()
                .readTree(simulate("--format", "json", "--replications", 1).out());

        assertThat(answer.get("squads").get(0).get("meanScoreCi95").isNull()).isTrue();
    }

    @Test
    void theTextIsAPageThatHoldsWhatADirectorAsks() {
        Program.Outcome outcome = simulate("--replications", 3);

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .startsWith("Two bowlers on one pair\n")
                .contains("Timetable", "Scores", "95 % interval", "What changes", "Where the oil went")
                .contains("counted from the bowler's own gutter")
                .contains("no lane inspection and no ruling", "trained staff only")
                .doesNotContain("Lane 1\n");
        assertThat(outcome.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
    }

    @Test
    void aLaneIsShownIfItIsAskedFor() {
        assertThat(simulate("--replications", 1, "--lane", 2).out())
                .contains("\nLane 2\n")
                .doesNotContain("\nLane 1\n");
        assertThat(simulate("--replications", 1, "--all-lanes").out()).contains("\nLane 1\n", "\nLane 2\n");
        Program.Outcome none = simulate("--replications", 1, "--lane", 3);
        assertThat(none.exitCode()).isEqualTo(2);
        assertThat(none.err()).contains("--lane is 3, which is no lane of this scenario");
    }

    @Test
    void metricUnitsChangeTheFilmAndNotTheBoards() {
        String metric = simulate("--replications", 1, "--units", "metric").out();

        assertThat(metric).contains("Heads um", "micrometres", "4.57 m").doesNotContain("units of oil", "15 ft");
    }

    @Test
    void theTableHasOneRowForEachLaneGameAndStyle() {
        List<String> rows =
                simulate("--replications", 1, "--format", "csv").out().lines().toList();

        assertThat(rows.get(0))
                .isEqualTo("lane,squad,afterGame,gamesOnOil,volumeMl,headUnits,headUnitsLow,carrydownMl,"
                        + "style,hand,low,high,best");
        // 2 lanes, 7 looks (as found and after each of 6 games), 2 kinds of bowler.
        assertThat(rows).hasSize(1 + 2 * 7 * 2);
        assertThat(rows.get(1)).startsWith("1,evening,0,0,23.000,");
    }

    @Test
    void aScenarioWithErrorsIsNotPlayed() {
        Program.Outcome outcome = Program.run("simulate", FAULTY, "--quiet");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).contains("cannot be played.", "pattern.length is `61 ft`", "[out_of_range]");
    }

    @Test
    void warningsAreToldBesideTheAnswerUnlessItIsToBeQuiet() throws Exception {
        Path scenario = folder.resolve("one-bowler.yaml");
        Files.writeString(scenario, Scenarios.SOUND.replace("perSquad: 8", "perSquad: 1"));

        assertThat(Program.run("simulate", scenario, "--replications", 1).err()).contains("[pairs_empty]");
        assertThat(Program.run("simulate", scenario, "--replications", 1, "--quiet")
                        .err())
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"--replications", "--threads"})
    void aCountBelowOneIsWrongUse(String option) {
        Program.Outcome outcome = simulate(option, 0);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains(option + " is 0; it must be a whole number from 1 to ");
    }

    @Test
    void anInterruptedRunEndsWith130AndLeavesAnOlderAnswerAsItWas() throws Exception {
        Path answer = Files.writeString(folder.resolve("answer.json"), "older");
        CompletableFuture<Program.Outcome> outcome = new CompletableFuture<>();
        Thread run = new Thread(() -> outcome.complete(simulate("--replications", 100_000, "-o", answer)));
        run.start();
        Thread.sleep(300);
        run.interrupt();

        assertThat(outcome.get(30, TimeUnit.SECONDS).exitCode()).isEqualTo(130);
        assertThat(outcome.get().err()).contains("Interrupted");
        assertThat(answer).hasContent("older");
    }

    private static Program.Outcome simulate(Object... options) {
        Object[] args = new Object[options.length + 2];
        args[0] = "simulate";
        args[1] = ONE_PAIR;
        System.arraycopy(options, 0, args, 2, options.length);
        return Program.run(args);
    }
}
