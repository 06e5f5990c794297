package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a shell offers after it has read the script. */
class CompletionTest {
    /** Calls the shell's function for completion as the Tab key does, and prints what it offers. */
    private static final String TAB = """
            source completion.sh
            compopt() { :; }
            tab() {
              COMP_WORDS=("$@")
              COMP_CWORD=$(($# - 1))
              COMP_LINE="$*"
              COMP_POINT=${#COMP_LINE}
              _complete_lanetide
              echo "${COMPREPLY[*]}"
            }
            """;

    @TempDir
    Path folder;

    @BeforeEach
    void writesTheScriptBesideAFewFiles() throws IOException {
        Files.writeString(
                folder.resolve("completion.sh"),
                Program.run("generate-completion").out());
        Files.createDirectory(folder.resolve("scenarios"));
        Files.createFile(folder.resolve("scenarios/one-pair.yaml"));
        Files.createFile(folder.resolve("scenarios/club-night.yaml"));
    }

    @ParameterizedTest
    @CsvSource({
        "sim, simulate",
        "re, reoil report",
        "simulate --repl, --replications",
        "simulate --s, --seed --sets --shot-log",
        "new --no, --no-color",
        "simulate --format '', text json csv html",
        "check scenarios/one-pair.yaml --units m, metric",
        "sheets --paper l, letter",
        "rotate --design ba, balanced",
        "lines --style s, straight stroker",
        "lines --surface w, wood worn-synthetic",
        "lines --hand l, left",
        "preview --cover pl, plastic",
        "preview --level e, elite",
        "new --oil o, over",
        "new --rotation s, stay searched",
        "schema sim, simulate",
        "help fair, fairness",
        "fi, fit",
        "fit --mea, --measured",
        "fit --ce, --centre",
        "fit scenarios/c, scenarios/club-night.yaml",
        "fit scenarios/one-pair.yaml --day scenarios/c, scenarios/club-night.yaml",
        "simulate scen, scenarios",
        "simulate scenarios/o, scenarios/one-pair.yaml",
        "compare scenarios/one-pair.yaml scenarios/c, scenarios/club-night.yaml",
        "simulate --shot-log comp, completion.sh"
    })
    void wordsAreCompleted(String typed, String offered) {
        Program.Outcome outcome = new Shell(folder).run(TAB + "tab lanetide " + typed);

        assertThat(outcome.err()).isEmpty();
        assertThat(outcome.out().strip().split(" ", -1)).containsExactlyInAnyOrder(offered.split(" ", -1));
    }

    /** Keys typed on a terminal, Tab among them, into a shell that a person could sit at. */
    @Test
    void theTabKeyCompletesOnATerminal() throws IOException {
        Files.writeString(folder.resolve("keys"), """
                source completion.sh
                lanetide() { echo "understood: $*"; }
                lanetide simul\tscenarios/one\t--uni\tm\t
                exit
                """);

        Program.Outcome outcome = new Shell(folder).run("script -qec 'bash --norc --noprofile -i' /dev/null < keys");

        assertThat(outcome.out()).contains("understood: simulate scenarios/one-pair.yaml --units metric");
    }
}
