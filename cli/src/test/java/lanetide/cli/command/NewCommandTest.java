package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class NewCommandTest {
    @TempDir
    Path folder;

    @Test
    void theStarterIsASoundScenarioWithEveryKeyExplained() throws IOException {
        Path file = folder.resolve("mine.yaml");

        Program.Outcome outcome = Program.run("new", "--yes", "-o", file);

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out()).contains("lanetide check " + file);
        assertThat(Program.run("check", file).exitCode()).isZero();
        assertThat(Files.readString(file))
                .contains("# length: [ft or m] where the oil ends; typical 36 ft to 44 ft")
                .contains("# surface: [name] what the lanes are made of");
    }

    @Test
    void optionsFindTheirPlace() {
        Program.Outcome outcome = Program.run(
                "new",
                "--yes",
                "--name",
                "Cup",
                "--lanes",
                "5 to 12",
                "--starts",
                "09:00, day 2 14:00",
                "--oil",
                "over",
                "--rotation",
                "right",
                "--games",
                "3",
                "--bowlers",
                "16",
                "--ratio",
                "3:1");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.out())
                .contains("name: \"Cup\"", "lanes: 5 to 12", "ratio: 3:1", "perSquad: 16")
                .contains("{id: A, start: \"09:00\", oil: fresh}", "{id: B, start: \"day 2 14:00\", oil: over}");
    }

    @Test
    void anEntryListStandsForTheField() throws IOException {
        Files.copy(Scenarios.FOLDER.resolve("club-final.csv"), folder.resolve("club-final.csv"));
        Path file = folder.resolve("mine.yaml");

        Program.Outcome unnamed =
                Program.run("new", "--yes", "--entries", "club-final.csv", "--starts", "09:00", "-o", file);

        // The table names squads "early" and "late", which the starter does not have.
        assertThat(unnamed.exitCode()).isEqualTo(2);
        assertThat(unnamed.err()).contains("These answers make no scenario", "club-final.csv");
        assertThat(file).doesNotExist();
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.scenario.Scenarios#hostileNames")
    void aHostileNameIsOnlyAName(String name) {
        Program.Outcome outcome = Program.run("new", "--yes", "--name", name);

        assertThat(outcome.exitCode()).isZero();
        assertThat(Scenarios.read(outcome.out())
                        .scenario()
                        .orElseThrow()
                        .event()
                        .name())
                .isEqualTo(name);
    }

    @ParameterizedTest
    @CsvSource({"--lanes,1 to 7,leaves", "--length,40,unit", "--games,many,number", "--starts,25:00,hours 0 to 23"})
    void answersThatMakeNoScenarioAreToldAndNothingIsWritten(String option, String value, String says) {
        Path file = folder.resolve("mine.yaml");

        Program.Outcome outcome = Program.run("new", "--yes", option, value, "-o", file);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err().replaceAll("\\s+", " ")).contains(says);
        assertThat(file).doesNotExist();
    }

    @Test
    void anOlderFileIsNeverReplaced() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.yaml"), "mine");

        Program.Outcome outcome = Program.run("new", "--yes", "-o", file);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("already").hasLineCount(1);
        assertThat(file).hasContent("mine");
    }
}
