package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.fit.SmallDay;
import lanetide.cli.output.ExitCode;
import lanetide.squads.unknown.ValueSets;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** A day fitted, and what its centre file does to other commands. */
class FitCommandTest {
    @TempDir
    static Path shared;

    private static Program.Outcome json;
    private static String lanes;

    @TempDir
    Path folder;

    @BeforeAll
    static void fits() throws IOException {
        Path day = SmallDay.write(shared);
        Path file = shared.resolve("lanes.json");
        json = Program.run("fit", day, "--format", "json", "--threads", 1, "--centre", file);
        lanes = Files.readString(file);
    }

    @BeforeEach
    void writesTheDay() throws IOException {
        SmallDay.write(folder);
        Files.writeString(folder.resolve("lanes.json"), lanes);
        Files.writeString(
                folder.resolve("tomorrow.yaml"),
                Files.readString(folder.resolve("small.yaml"))
                        .replace("hard-synthetic\n", "hard-synthetic\n  fitted: lanes.json\n"));
    }

    @Test
    void theJsonHasTheAgreedFields() {
        assertThat(json.exitCode()).as(json.err()).isZero();
        assertThat(json.answer().propertyNames())
                .startsWith("schemaVersion", "version", "seed", "scenarioSha256", "namedFilesSha256", "days")
                .contains("readings", "fresh", "suspicions", "learnt", "otherLawAfter", "sets", "assumptions");
        assertThat(json.answer().get("sets").asInt()).isEqualTo(ValueSets.count());
    }

    @Test
    void theCentreFileTellsTheCommandThatMakesItAnew() {
        assertThat(lanes).contains("\"refit\": \"lanetide fit small.yaml --centre lanes.json\"");
    }

    @Test
    void whatTapesReadIsLearntFirst() {
        JsonNode first = json.answer().get("learnt").get(0);

        assertThat(first.get("unknown").asString()).isEqualTo("end-floor");
        assertThat(first.get("narrowed").asDouble()).isGreaterThan(0.1);
    }

    @Test
    void aScenarioThatNamesTheFileIsPlayedOnTheseLanesAndSaysSo() {
        Program.Outcome before = simulate("small.yaml");
        Program.Outcome after = simulate("tomorrow.yaml");

        assertThat(after.exitCode()).as(after.err()).isZero();
        assertThat(unwrapped(after.out()))
                .contains(
                        "centre.fitted: 200 sets of values that published facts and what was measured here leave (14 readings")
                .contains("sets of values that published facts and what was measured here do not rule out");
        assertThat(scores(after)).isNotEqualTo(scores(before));
        assertThat(unwrapped(before.out()))
                .contains("lanes 1, 2: the fresh oil is what tapes read of it (4 tapes)")
                .doesNotContain("centre.fitted");
    }

    /** The rows of the table of scores. */
    private static List<String> scores(Program.Outcome played) {
        return played.out()
                .lines()
                .dropWhile(line -> !line.startsWith("Scores"))
                .limit(4)
                .toList();
    }

    @Test
    void theFileOfAFitIsNoneOfItsBeginnings() {
        Program.Outcome again =
                Program.run("fit", folder.resolve("tomorrow.yaml"), "--centre", folder.resolve("lanes.json"));

        assertThat(again.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(unwrapped(again.err())).contains("would replace", "name another file");
    }

    @Test
    void aFileOfOtherSetsIsRefusedWithTheCommandThatMakesItAnew() throws IOException {
        refuses(
                lanes.replace(ValueSets.mark(), "00ff"),
                "`lanetide fit small.yaml --centre lanes.json`",
                "[centre_file_old]");
    }

    @Test
    void aFileThatIsBrokenIsRefused() throws IOException {
        refuses(lanes.substring(0, lanes.length() / 2), "it is not JSON", "[no_centre_file]");
        refuses("Oil sheet of Monday\n", "it is not JSON", "[no_centre_file]");
        refuses(json.out(), "it does not begin with \"centreFile\": 1", "[no_centre_file]");
        refuses(
                lanes.replaceFirst("\"values\":\\[[^,]*", "\"values\":[97"),
                "in set 1 absorption is 97 and must lie between 0.5 and 2.0",
                "[no_centre_file]");
    }

    private void refuses(String file, String why, String code) throws IOException {
        Files.writeString(folder.resolve("lanes.json"), file);
        for (String command : List.of("check", "simulate", "pattern")) {
            Program.Outcome outcome = Program.run(command, folder.resolve("tomorrow.yaml"));

            assertThat(outcome.exitCode()).as(command).isIn(ExitCode.CONDITION_FAILS, ExitCode.CANNOT_RUN);
            assertThat(unwrapped(outcome.out() + outcome.err()))
                    .contains("Line 6: centre.fitted is `lanes.json`", why, code)
                    .doesNotContain("Exception", "\tat ");
        }
    }

    @Test
    void nothingMeasuredIsRefusedWithAdviceAndAnOlderFileStays() throws IOException {
        Path bare = Files.writeString(folder.resolve("bare.yaml"), SmallDay.SCENARIO.replaceAll("measured: .*\n", ""));

        for (List<Object> words : List.of(
                List.<Object>of("fit", bare), List.<Object>of("fit", folder.resolve("small.yaml"), "--day", bare))) {
            Program.Outcome outcome = Program.runWith(words, "--centre", folder.resolve("lanes.json"));

            assertThat(outcome.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
            assertThat(outcome.err())
                    .contains("Nothing was measured at " + bare
                            + ": name tables with its key measured, or with --measured");
            assertThat(folder.resolve("lanes.json")).hasContent(lanes);
        }
    }

    @Test
    void aDayThatIsNamedTwiceIsRefused() {
        Path day = folder.resolve("small.yaml");

        Program.Outcome outcome =
                Program.run("fit", day, "--day", folder.resolve(".").resolve("small.yaml"));

        assertThat(outcome.exitCode()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains("is the same day as " + day + "; name each day once");
    }

    /** Three days, fitted twice. */
    @Test
    @Tag("slow")
    void theOrderOfDaysAndTheThreadsChangeNoByte() throws IOException {
        for (int day = 2; day <= 3; day++) {
            Files.writeString(
                    folder.resolve("day-" + day + ".yaml"),
                    SmallDay.SCENARIO
                            .replace("Small day", "Day " + day)
                            .replace("tapes.csv, balls.csv, scores.csv", "tapes-" + day + ".csv"));
            Files.writeString(
                    folder.resolve("tapes-" + day + ".csv"), "lane,distance,board,units\n1,8,20,3" + day + "\n");
        }

        String one = centre("small.yaml", "--threads", "1", "--day", "day-2.yaml", "--day", "day-3.yaml");
        String other = centre("day-3.yaml", "--threads", "2", "--day", "day-2.yaml", "--day", "small.yaml");

        assertThat(other).isEqualTo(one);
        assertThat(one).contains("\"event\":\"Small day\"", "\"event\":\"Day 2\"", "\"event\":\"Day 3\"");
        assertThat(one).containsPattern("lanetide fit \\S+.yaml --day \\S+.yaml --day \\S+.yaml --centre lanes.json\"");
    }

    private String centre(String first, String... days) throws IOException {
        Path file = folder.resolve("lanes.json");
        Object[] words = Stream.concat(Stream.of("fit", first, "--centre", "lanes.json"), Stream.of(days))
                .map(word -> word.contains(".") ? folder.resolve(word) : word)
                .toArray();
        Files.delete(file);
        Program.Outcome outcome = Program.run(words);
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return Files.readString(file);
    }

    private Program.Outcome simulate(String scenario) {
        return Program.run("simulate", folder.resolve(scenario), "--replications", 4);
    }

    private static String unwrapped(String words) {
        return words.replaceAll("\\s+", " ");
    }
}
