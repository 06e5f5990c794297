package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenarios;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
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

    /** The table and the answer in JSON rest on the same two playings. */
    @Test
    void teamsStandInTextInJsonAndInATable() throws IOException {
        Path scenario = Scenarios.FOLDER.resolve("doubles-open.yaml");
        Path file = folder.resolve("teams.csv");

        Program.Outcome text = Program.run("simulate", scenario, "--replications", 2, "--team-table", file, "--quiet");
        JsonNode teams = Program.run("simulate", scenario, "--replications", 2, "--format", "json", "--quiet")
                .answer()
                .get("teams");

        assertThat(text.exitCode()).as(text.err()).isZero();
        assertThat(text.out())
                .contains("Teams (pins of all their games together", "of a team that is entered in several");
        assertThat(teams).hasSize(20);
        List<CSVRecord> rows = CSVParser.parse(
                        Files.readString(file),
                        CSVFormat.DEFAULT
                                .builder()
                                .setHeader()
                                .setSkipHeaderRecord(true)
                                .get())
                .getRecords();
        assertThat(rows).hasSize(20);
        for (CSVRecord row : rows) {
            JsonNode team = teams.valueStream()
                    .filter(each -> each.get("name").asString().equals(row.get("team")))
                    .findFirst()
                    .orElseThrow();
            assertThat(Double.parseDouble(row.get("totalPins")))
                    .isEqualTo(team.get("totalPins").asDouble());
        }
        assertThat(teams.valueStream()
                        .mapToDouble(team -> team.get("firstShare").asDouble())
                        .sum())
                .isEqualTo(1);
        // Places 1 to 20 in every playing.
        assertThat(teams.valueStream()
                        .mapToDouble(team -> team.get("place").asDouble())
                        .sum())
                .isEqualTo(210);
    }

    @Test
    void aTableOfTeamsIsRefusedWhereEverybodyBowlsForHimself() {
        Program.Outcome outcome = simulate("--team-table", folder.resolve("teams.csv"));

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("name no `partners`");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).isZero();
        assertThat(json.err()).isEmpty();
        JsonNode answer = json.answer();

        assertThat(answer.propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256", "replications", "sets", "shots")
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
        JsonNode oil = json.answer().get("oil");

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
        JsonNode answer = simulate("--format", "json", "--replications", 1).answer();

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
                .contains("not a lane inspection and not a ruling", "trained staff only")
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

    @ParameterizedTest
    @ValueSource(strings = {"--quiet", "--no-color"})
    void warningsAreToldBesideTheAnswerHoweverQuietItIsToBe(String option) throws Exception {
        Path scenario = folder.resolve("one-bowler.yaml");
        Files.writeString(scenario, Scenarios.SOUND.replace("perSquad: 8", "perSquad: 1"));

        assertThat(Program.run("simulate", scenario, "--replications", 1, option)
                        .err())
                .contains("[pairs_empty]");
    }

    @ParameterizedTest
    @ValueSource(strings = {"--replications", "--threads"})
    void aCountBelowOneIsWrongUse(String option) {
        Program.Outcome outcome = simulate(option, 0);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains(option + " is 0; it must be a whole number from 1 to ");
    }

    @Test
    void playingGoesOnUntilTheMeanIsKnownWellEnough() {
        Program.Outcome outcome = simulate("--until-halfwidth", 8, "--format", "json", "--threads", 2);

        assertThat(outcome.exitCode()).isZero();
        JsonNode answer = outcome.answer();
        JsonNode precision = answer.get("untilHalfWidth");
        assertThat(precision.get("met").asBoolean()).isTrue();
        assertThat(precision.get("reachedPins").asDouble()).isLessThanOrEqualTo(8);
        assertThat(answer.get("replications").asInt()).isBetween(10, 999);
        assertThat(simulate("--until-halfwidth", 8, "--format", "json", "--threads", 1)
                        .out())
                .isEqualTo(outcome.out());
    }

    @Test
    void aHalfWidthThatNoCapCanReachIsToldAndTheAnswerKept() {
        Program.Outcome outcome = simulate("--until-halfwidth", 0.001, "--replications", 12);

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.err()).contains("The half-width of 0.001 pins asked for is not reached", "--replications");
        assertThat(outcome.out())
                .contains("estimated from 12 playings", "asked for is not reached", "Where the oil went");
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "-1", "301", "NaN"})
    void aHalfWidthThatMakesNoSenseIsWrongUse(String pins) {
        Program.Outcome outcome = simulate("--until-halfwidth", pins);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("it must be above 0 and at most 300 pins");
    }

    @Test
    void aHalfWidthNeedsTenPlayingsAtLeast() {
        assertThat(simulate("--until-halfwidth", 5, "--replications", 9).err())
                .contains("--replications is 9; it must be a whole number from 10 to ");
    }

    @Test
    void everyBallIsARowOfTheShotLog() throws Exception {
        Path log = folder.resolve("shots.csv");

        Program.Outcome outcome = simulate("--replications", 2, "--format", "json", "--shot-log", log);

        String text = Files.readString(log);
        List<CSVRecord> rows;
        try (CSVParser parser = CSVParser.parse(
                text,
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            rows = parser.getRecords();
        }
        assertThat(text).endsWith("\r\n");
        assertThat(rows).hasSize(outcome.answer().get("shots").asInt());
        assertThat(rows.stream()
                        .filter(row -> !row.get("game").equals("0"))
                        .map(row -> row.get("bowler") + row.get("game") + "/" + row.get("frame"))
                        .distinct())
                .hasSize(2 * 6 * 10);
        int pins = rows.stream()
                .filter(row -> row.get("frame").equals("1") && row.get("ball").equals("1"))
                .mapToInt(row -> Integer.parseInt(row.get("pinfall")))
                .sum();
        assertThat(pins).isBetween(1, 2 * 6 * 10);
        assertThat(rows).allSatisfy(row -> {
            assertThat(row.get("lane")).isIn("1", "2");
            assertThat(Double.parseDouble(row.get("speedMph"))).isBetween(9.0, 29.0);
        });
    }

    @Test
    void everyEventIsALineOfTheTrace() throws Exception {
        Path text = folder.resolve("trace.txt");
        Path json = folder.resolve("trace.jsonl");

        simulate("--replications", 1, "--trace", text);
        simulate("--replications", 1, "--trace", json);

        assertThat(Files.readAllLines(text)).anyMatch(line -> line.contains("executed 'release"));
        List<String> lines = Files.readAllLines(json);
        assertThat(lines).hasSameSizeAs(Files.readAllLines(text));
        assertThat(JsonMapper.shared().readTree(lines.get(0)).propertyNames()).contains("clockMs", "label");
    }

    @Test
    void noTwoFilesThatAreWrittenMayBeTheSame() {
        Path log = folder.resolve("one.txt");

        Program.Outcome outcome = simulate("--shot-log", log, "--trace", log);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("--shot-log and --trace name the same file");
        assertThat(log).doesNotExist();
    }

    @Test
    void aLogThatCannotBeWrittenIsFileTrouble() {
        Program.Outcome outcome =
                simulate("--shot-log", folder.resolve("nowhere").resolve("shots.csv"));

        assertThat(outcome.exitCode()).isEqualTo(3);
    }

    @Test
    void anInterruptedRunEndsWith130AndLeavesAnOlderAnswerAsItWas() throws Exception {
        Path answer = Files.writeString(folder.resolve("answer.json"), "older");
        Path log = Files.writeString(folder.resolve("shots.csv"), "older");
        CompletableFuture<Program.Outcome> outcome = new CompletableFuture<>();
        Thread run = new Thread(
                () -> outcome.complete(simulate("--replications", 100_000, "-o", answer, "--shot-log", log)));
        run.start();
        Thread.sleep(300);
        run.interrupt();

        assertThat(outcome.get(30, TimeUnit.SECONDS).exitCode()).isEqualTo(130);
        assertThat(outcome.get().err()).contains("Interrupted");
        assertThat(answer).hasContent("older");
        assertThat(log).hasContent("older");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(2);
        }
    }

    private static Program.Outcome simulate(Object... options) {
        return Program.runWith(List.of("simulate", ONE_PAIR), options);
    }
}
