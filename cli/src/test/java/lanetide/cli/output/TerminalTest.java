package lanetide.cli.output;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import lanetide.cli.command.Program;
import lanetide.cli.command.Shell;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a person sees and types on a terminal, which `script` stands for. */
@Tag("slow")
class TerminalTest {
    private static final Path ONE_PAIR =
            Scenarios.FOLDER.resolve("one-pair.yaml").toAbsolutePath();
    private static final Pattern PROGRESS = Pattern.compile("\r\\d+ of \\d+ [a-z ]+, about \\d+ (?:s|min) left ");

    /** A line is overwritten by the next, and at last by blanks. */
    private static final Pattern ERASED = Pattern.compile("\r {20,}\r");

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "compare SCENARIO SCENARIO --replications 4",
                "fairness SCENARIO --replications 20 --remedies 2",
                "preview SCENARIO --bowler Anchor --replications 4",
                "reoil SCENARIO --replications 4 --games 4",
                "report SCENARIO --replications 4 --fairness 20 --reoil 4 -o page.html",
                "rotate SCENARIO --search",
                "sheets SCENARIO --into print --replications 4",
                "simulate SCENARIO --replications 4"
            })
    void aLongRunTellsHowLongItStillTakesAndNothingElseIsLostWhenItIsQuiet(String words) throws IOException {
        Path scenario = words.startsWith("rotate") ? ONE_PAIR.resolveSibling("championship.yaml") : shortEvening();
        String line = words.replace("SCENARIO", scenario.toString());

        String told = typed(line, "");
        String quiet = typed(line + " --quiet", "");

        assertThat(PROGRESS.matcher(told).find()).as(told).isTrue();
        assertThat(quiet).doesNotContain(" left \r");
        assertThat(ERASED.matcher(PROGRESS.matcher(told).replaceAll("")).replaceAll(""))
                .isEqualTo(quiet);
    }

    /** Not asked again when it is quiet, since whatever was measured it takes its time. */
    @Test
    void aFitTellsHowLongItStillTakes() throws IOException {
        Files.writeString(folder.resolve("tapes.csv"), "lane,distance,board,units\n1,8,20,38\n");

        String told = typed("fit " + shortEvening() + " --measured tapes.csv", "");

        assertThat(PROGRESS.matcher(told).find()).as(told).isTrue();
    }

    private Path shortEvening() throws IOException {
        Path scenario = folder.resolve("one-pair.yaml");
        return Files.writeString(scenario, Files.readString(ONE_PAIR).replace("games: 6\n", "games: 2\n"));
    }

    @Test
    void warningsAreShownHoweverQuietItIsToBe() throws IOException {
        Path scenario = folder.resolve("one-bowler.yaml");
        Files.writeString(scenario, Scenarios.SOUND.replace("perSquad: 8", "perSquad: 1"));

        assertThat(typed("simulate one-bowler.yaml --replications 2 --quiet", ""))
                .contains("[pairs_empty]");
    }

    @Test
    void aScenarioIsAskedForAndSound() {
        String seen = typed("new -o mine.yaml", "Cup\n1 to 7\n1 to 6\n" + "\n".repeat(24));

        assertThat(seen)
                .contains("Which lanes are in use? [1 to 8]: ", "leaves lane 7 without a partner", "in a squad? [18]: ")
                .contains("Written to mine.yaml");
        assertThat(Program.run("check", folder.resolve("mine.yaml")).exitCode()).isZero();
    }

    @Test
    void theEndOfInputEndsTheQuestions() {
        String seen = typed("new -o mine.yaml; echo code $?", "Cup\n1 to 6\n");

        assertThat(seen)
                .contains("The answers ended before the last question", "code 2")
                .doesNotContain("Exception");
        assertThat(folder.resolve("mine.yaml")).doesNotExist();
    }

    /** What is on the terminal after a person has typed; every line ends with both a return and a feed there. */
    private String typed(String words, String keys) {
        try {
            Path typed = Files.writeString(folder.resolve("typed"), keys);
            Path run = Files.writeString(folder.resolve("run.sh"), Shell.definition() + "\nlanetide " + words + "\n");
            return new Shell(folder)
                    .run("script -qec 'bash " + run + "' /dev/null < " + typed)
                    .out()
                    .replace("\r\n", "\n");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
