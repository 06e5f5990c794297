package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.starter.StarterQuestion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

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

        Program.Outcome outcome =
                Program.run("new", "--yes", "--entries", "club-final.csv", "--starts", "09:00,14:00", "-o", file);

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(Files.readString(file)).contains("entries: club-final.csv").doesNotContain("perSquad");
        assertThat(Program.run("check", file).out()).contains("A      09:00", "B      14:00");
    }

    /** Each kind of event, in one scenario: no squad is named, some are entered twice, and teams bowl together. */
    @Test
    void everyKindOfEventIsAcceptedWithItsKeysExplained() throws IOException {
        Files.writeString(
                folder.resolve("list.csv"),
                "Name,Average,Club\n"
                        + IntStream.range(0, 18)
                                .mapToObj(i -> "Bowler " + i % 16 + "," + (150 + i % 16) + ",Club " + i % 16 / 2 + "\n")
                                .collect(Collectors.joining()));
        Path file = folder.resolve("mine.yaml");

        Program.Outcome outcome = Program.run(
                "new",
                "--yes",
                "--entries",
                "list.csv",
                "--starts",
                "09:00,day 2 09:00",
                "--partners",
                "Club",
                "--draw",
                "squads",
                "--cut",
                "25 %",
                "--counts",
                "sum",
                "--finals",
                "round-robin",
                "-o",
                file);

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(Files.readString(file))
                .contains("partners: \"Club\"", "squads: drawn", "share: 25 %", "counts: sum", "form: round-robin")
                .contains("start: \"day 3 10:00\"", "# ties: [name] who goes first with the same total");
        String check = Program.run("check", file).out().replaceAll("\\s+", " ");
        assertThat(check)
                .contains("18 entries are drawn into squads by lot", "Partners: 8 teams of 2 bowlers")
                .contains(
                        "Cut: 4 of 16 people (25 %) go on",
                        "the sum of all counts", "Finals: everybody against everybody");
    }

    @ParameterizedTest
    @CsvSource({"--draw,groups,squads: named", "--finals,head-to-head,'[[7-8], [6-w1]'", "--counts,best,places: 8"})
    void oneKindAloneIsAcceptedToo(String option, String value, String says) throws IOException {
        Files.copy(Scenarios.FOLDER.resolve("club-final.csv"), folder.resolve("club-final.csv"));
        Path file = folder.resolve("mine.yaml");

        Program.Outcome outcome = Program.run(
                "new",
                "--yes",
                "--entries",
                "club-final.csv",
                "--starts",
                "09:00,14:00",
                "--cut",
                "8",
                option,
                value,
                "-o",
                file);

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(Files.readString(file)).contains(says);
        assertThat(Program.run("check", file).exitCode()).isZero();
    }

    /** The table names the squads A and B; with one start there is no squad B. */
    @Test
    void anEntryListOfASquadThatIsNotThereIsRefused() throws IOException {
        Files.copy(Scenarios.FOLDER.resolve("club-final.csv"), folder.resolve("club-final.csv"));
        Path file = folder.resolve("mine.yaml");

        Program.Outcome outcome =
                Program.run("new", "--yes", "--entries", "club-final.csv", "--starts", "09:00", "-o", file);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("These answers make no scenario", "club-final.csv", "`B`");
        assertThat(file).doesNotExist();
    }

    @ParameterizedTest
    @EnumSource(StarterQuestion.class)
    void helpTellsTheValueThatAQuestionOffers(StarterQuestion question) {
        String help = Program.run("new", "--help").out().replaceAll("\\s+", " ");

        String option = help.substring(help.indexOf("--" + question.key() + "="));
        String told = option.substring(option.indexOf("(default: ") + "(default: ".length());
        assertThat(told).startsWith(question.otherwise());
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

    /** One squad, so that nothing is asked about oil before later ones. */
    @Test
    void whoIsAskedMayTakeAllThatIsOffered() throws IOException {
        Path asked = folder.resolve("asked.yaml");
        Path unasked = folder.resolve("unasked.yaml");

        Program.Outcome outcome = Program.answering("\n".repeat(14), "new", "-o", asked);
        Program.run("new", "--yes", "-o", unasked);

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err())
                .isEqualTo("What is the event called? [My event]: Which lanes are in use? [1 to 8]: "
                        + "What are the lanes made of? [hard-synthetic]: Where does the oil end? [40 ft]: "
                        + "How much oil is on one lane? [24 mL]: How much more is on the middle boards? [5:1]: "
                        + "When do the squads start (times with commas between)? [19:30]: "
                        + "How many games does a squad play? [4]: How long is practice? [10 min]: "
                        + "How do groups move (such as stay, right, balanced)? [stay]: "
                        + "Are bowlers of a list drawn by lot (none, into groups, into squads)? [none]: "
                        + "Which CSV table lists the bowlers? [none]: How many bowlers are in a squad? [24]: "
                        + "How many go on to finals, or which share (such as 16 or 25 %)? [none]: ");
        assertThat(asked).hasSameTextualContentAs(unasked);
    }

    @Test
    void aWrongAnswerIsToldWhyAndAskedForAgain() throws IOException {
        Path file = folder.resolve("mine.yaml");
        List<String> typed = List.of(
                "Cup: \"the big one\" # {",
                "[1",
                "1 to 7",
                "1 to 4",
                "ice",
                " wood ",
                "40",
                "38 ft",
                "",
                "3:1",
                "25:00",
                "09:00,13:00",
                "polish",
                "over",
                "none",
                "3",
                "5 h",
                "",
                "rihgt",
                "right",
                "",
                "missing.csv",
                "",
                "99",
                "8",
                "some",
                "4",
                "swiss",
                "head-to-head",
                "10:00",
                "day 3 10:00");

        Program.Outcome outcome = Program.answering(String.join("\n", typed), "new", "-o", file);

        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        assertThat(outcome.err().replaceAll("\\s+", " "))
                .containsSubsequence(
                        "Which lanes are in use? [1 to 8]: - ",
                        "Which lanes are in use? [1 to 8]: - ",
                        "leaves",
                        "What are the lanes made of? [hard-synthetic]: - ",
                        "`ice`",
                        "Where does the oil end? [40 ft]: - ",
                        "unit",
                        "When do the squads start (times with commas between)? [19:30]: - ",
                        "hours 0 to 23",
                        "What is done before later squads (fresh, over, none)? [fresh]: - ",
                        "How many games does a squad play? [4]: - ",
                        "How long is practice? [10 min]: - ",
                        "from 0 h to 2 h",
                        "How do groups move (such as stay, right, balanced)? [stay]: - ",
                        "Did you mean right?",
                        "Which CSV table lists the bowlers? [none]: - ",
                        "missing.csv",
                        "How many bowlers are in a squad? [12]: - ",
                        "at most 10 on a pair",
                        "25 %)? [none]: - ",
                        "`some`",
                        "head-to-head)? [none]: - ",
                        "`swiss`",
                        "When do the finals start? [day 2 10:00]: - ",
                        "finals must come after all squads")
                .doesNotContain("Line ", "Exception");
        assertThat(Files.readString(file))
                .contains("lanes: 1 to 4", "surface: wood", "length: 38 ft", "ratio: 3:1", "games: 3", "perSquad: 8")
                .contains("rotation: right", "{id: B, start: \"13:00\", oil: over}")
                .contains("places: 4", "start: \"day 3 10:00\"", "matches: [[3-4], [2-w1], [1-w2]]");
        Program.Outcome check = Program.run("check", file);
        assertThat(check.exitCode()).isZero();
        assertThat(check.out()).contains("Cup: \"the big one\" # {");
    }

    @Test
    void whatOptionsSayIsNotAsked() {
        Program.Outcome outcome = Program.answering("\n".repeat(14), "new", "--lanes", "1 to 4", "--name", "Cup");

        assertThat(outcome.exitCode()).isZero();
        assertThat(outcome.err())
                .startsWith("What are the lanes made of?")
                .contains("in a squad? [12]: ")
                .doesNotContain("Which lanes", "called");
        assertThat(outcome.out()).contains("lanes: 1 to 4", "name: \"Cup\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "Cup\n1 to 4\n", "Cup\n1 to 7"})
    void answersThatEndTooSoonWriteNothing(String typed) {
        Path file = folder.resolve("mine.yaml");

        Program.Outcome outcome = Program.answering(typed, "new", "-o", file);

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err())
                .endsWith("\nlanetide: The answers ended before the last question; nothing was written.\n")
                .doesNotContain("Exception");
        assertThat(outcome.out()).isEmpty();
        assertThat(folder).isEmptyDirectory();
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
