package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

class CheckCommandTest {
    private static final Path SOUND = Scenarios.FOLDER.resolve("club-night.yaml");
    private static final Path FAULTY = Scenarios.FOLDER.resolve("faulty").resolve("length-61-ft.yaml");

    @TempDir
    Path folder;

    @Test
    void aSoundScenarioIsToldBackInWords() {
        Program.Outcome outcome = Program.run("check", SOUND);

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out())
                .contains("no errors, no warnings. It can be played.")
                .contains("Lanes 1 to 8: 4 pairs, textured-synthetic, 1 lane machine.")
                .contains("Pattern: 40 ft, 23 mL, 8:1.")
                .contains("pace.pinsetter: 14 s (common practice, no source).");
        assertThat(Program.run("check", SOUND, "--units", "metric").out()).contains("Pattern: 12.19 m, 23 mL, 8:1.");
    }

    @Test
    void scoringAndBowlersAreToldWhereTheyAreNotTheUsual() throws IOException {
        String league = words(Program.run("check", Scenarios.FOLDER.resolve("league-night.yaml")));
        Path other = Files.writeString(
                folder.resolve("other.yaml"),
                Scenarios.SOUND
                        + "bowlers: {knowledge: everything}\nscoring: {system: current-frame, noTap: 9 pins}\n");

        assertThat(league)
                .contains("Bowlers: they lose 1 % of their speed over 72 balls at full racks.")
                .contains("Scoring: 0.1 % of balls are fouls; handicap of 8 to 90 pins a game.");
        assertThat(words(Program.run("check", other)))
                .contains("Bowlers: they see the oil.")
                .contains("Scoring: current-frame; 9 pins on a new rack are a strike.");
        assertThat(words(Program.run("check", SOUND))).doesNotContain("Scoring:", "Bowlers: they");
    }

    /** Without the breaks of lines. */
    private static String words(Program.Outcome outcome) {
        return outcome.out().replaceAll("\\s+", " ");
    }

    @Test
    void aFaultEndsWithOneAndIsNamed() {
        Program.Outcome outcome = Program.run("check", FAULTY);

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out())
                .contains("1 error, no warnings. It cannot be played.")
                .contains("Line 12: pattern.length is `61 ft`; it must be from 19.7 ft to 58 ft.")
                .contains("[out_of_range]");
    }

    @Test
    void theJsonHasTheAgreedFields() {
        Program.Outcome outcome = Program.run("check", FAULTY, "--format", "json");

        assertThat(outcome.exitCode()).isEqualTo(1);
        assertThat(outcome.out()).endsWith("}\n").doesNotContain("\r");
        JsonNode answer = outcome.answer();
        assertThat(answer.propertyNames()).startsWith("schemaVersion", "version", "seed", "scenarioSha256");
        assertThat(answer.get("seed").isNull()).isTrue();
        assertThat(answer.get("scenarioSha256").asString()).matches("[0-9a-f]{64}");
        JsonNode notice = answer.get("notices").get(0);
        assertThat(notice.propertyNames())
                .containsExactly("code", "severity", "file", "line", "column", "field", "value", "limit", "message");
        assertThat(notice.get("code").asString()).isEqualTo("out_of_range");
        assertThat(notice.get("severity").asString()).isEqualTo("error");
        assertThat(notice.get("limit").asString()).startsWith("from ").endsWith(" ft");
        assertThat(notice.get("line").asInt()).isEqualTo(12);
    }

    @ParameterizedTest
    @MethodSource("faulty")
    void everyFaultyFileEndsWithOneInBothFormsAndWithoutAStackTrace(Path file) {
        Program.Outcome text = Program.run("check", file);
        Program.Outcome json = Program.run("check", file, "--format", "json");

        assertThat(text.exitCode()).isEqualTo(1);
        assertThat(json.exitCode()).isEqualTo(1);
        assertThat(text.err() + json.err()).isEmpty();
        assertThat(text.out()).doesNotContain("\tat ", "Exception");
        assertThat(text.out().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(100));
        assertThat(json.answer().get("errors").asInt()).isEqualTo(1);
    }

    static List<Path> faulty() {
        return Scenarios.faulty();
    }

    @Test
    void aFileThatIsNotThereIsFileTrouble() {
        Program.Outcome outcome = Program.run("check", folder.resolve("none.yaml"));

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).startsWith("lanetide: There is no scenario ").doesNotContain("\tat ");
        assertThat(outcome.out()).isEmpty();
        assertThat(Program.run("check", folder).exitCode()).isEqualTo(3);
    }

    @Test
    void aTableIsRefusedBecauseThereIsNone() {
        Program.Outcome outcome = Program.run("check", SOUND, "--format", "csv");

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("check has no table to give as csv; use --format text or json.");
    }

    @Test
    void anotherSeedIsUsedAndToldBack() {
        assertThat(Program.run("check", SOUND, "--seed", 99).out()).contains("seed 99.");
        Program.Outcome wrong = Program.run("check", SOUND, "--seed", -1);
        assertThat(wrong.exitCode()).isEqualTo(2);
        assertThat(wrong.err()).contains("--seed is -1; it must be a whole number from 0 to 999999999999.");
    }

    @Test
    void anAnswerGoesToAFileInOneStep() throws Exception {
        Path answer = folder.resolve("notices.json");
        Files.writeString(answer, "older");

        assertThat(Program.run("check", SOUND, "--format", "json", "-o", answer).exitCode())
                .isZero();

        assertThat(Files.readString(answer)).startsWith("{\n  \"schemaVersion\"");
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(answer);
        }
    }

    @Test
    void aFailedRunLeavesAnOlderAnswerAsItWas() throws Exception {
        Path answer = folder.resolve("answer.txt");
        Files.writeString(answer, "older");

        assertThat(Program.run("check", folder.resolve("none.yaml"), "-o", answer)
                        .exitCode())
                .isEqualTo(3);
        assertThat(Program.run("simulate", FAULTY, "-o", answer).exitCode()).isEqualTo(2);

        assertThat(answer).hasContent("older");
    }

    @Test
    void anAnswerNeverReplacesItsScenario() throws Exception {
        Path scenario = Files.copy(SOUND, folder.resolve("event.yaml"));

        Program.Outcome outcome = Program.run("check", scenario, "-o", folder.resolve("./event.yaml"));

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("would replace the scenario");
        assertThat(scenario).hasSameBinaryContentAs(SOUND);
    }

    @Test
    void anAnswerThatCannotBeWrittenIsFileTrouble() {
        assertThat(Program.run("check", SOUND, "-o", folder).exitCode()).isEqualTo(3);
        assertThat(Program.run("check", SOUND, "-o", folder.resolve("none/answer"))
                        .exitCode())
                .isEqualTo(3);
    }

    @Test
    void aLinkIsFollowedAndKept() throws Exception {
        Path target = Files.writeString(folder.resolve("target.txt"), "older");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), target);

        assertThat(Program.run("check", SOUND, "-o", link).exitCode()).isZero();

        assertThat(link).isSymbolicLink();
        assertThat(Files.readString(target)).contains("It can be played.");
    }
}
