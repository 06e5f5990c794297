package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import lanetide.cli.Lanetide;
import lanetide.cli.report.Cautions;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LanetideTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "check",
                "compare",
                "fairness",
                "fit",
                "lines",
                "preview",
                "reoil",
                "report",
                "rotate",
                "sheets",
                "simulate"
            })
    void everyHelpHasExamplesExitCodesAndCautions(String command) {
        Program.Outcome outcome = Program.run(command, "--help");

        assertThat(outcome.exitCode()).isZero();
        assertThat(unwrapped(outcome.out()))
                .contains("Examples:", "lanetide " + command + " scenarios/", "Exit codes:");
        assertThat(Cautions.ALL)
                .allSatisfy(caution -> assertThat(unwrapped(outcome.out())).contains(caution));
    }

    @Test
    void theProgramsHelpNamesItsCommandsAndTheCautions() {
        String help = Program.run("--help").out();

        assertThat(help)
                .contains(
                        "check",
                        "compare",
                        "fairness",
                        "fit",
                        "lines",
                        "preview",
                        "reoil",
                        "rotate",
                        "sheets",
                        "simulate");
        assertThat(Cautions.ALL)
                .allSatisfy(caution -> assertThat(unwrapped(help)).contains(caution));
    }

    /** A shell reads the script without running it. */
    @Test
    void theCompletionScriptIsSoundAndKnowsTheCommands() throws IOException, InterruptedException {
        String script = Program.run("generate-completion").out();
        Path file = Files.writeString(folder.resolve("completion.sh"), script);

        assertThat(script).contains("simulate", "preview", "--replications");
        assertThat(new ProcessBuilder("bash", "-n", file.toString()).start().waitFor())
                .isZero();
    }

    @Test
    void theVersionIsThatOfTheBuild() {
        assertThat(Program.run("--version").out()).matches("lanetide \\d+\\.\\d+\\.\\d+( \\([0-9a-f]{12}\\))?\\s+");
        assertThat(Program.run("check", "--version").out())
                .isEqualTo(Program.run("--version").out());
    }

    @Test
    void noCommandIsWrongUseAndSaysWhatToTry() {
        Program.Outcome outcome = Program.run();

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.err()).contains("lanetide --help");
    }

    @ParameterizedTest
    @ValueSource(strings = {"chekc", "--frmat", "simulate", "check a.yaml b.yaml", "check a.yaml --format xml"})
    void wrongUseEndsWithTwoAndOneSentence(String words) {
        Program.Outcome outcome = Program.run((Object[]) words.split(" ", -1));

        assertThat(outcome.exitCode()).isEqualTo(2);
        assertThat(outcome.out()).isEmpty();
        assertThat(outcome.err()).startsWith("lanetide: ").doesNotContain("Exception", "\tat ");
        assertThat(outcome.err().lines()).hasSize(1);
    }

    @Test
    void aMistypedCommandIsOfferedTheNearestOne() {
        assertThat(Program.run("simulat").err()).contains("`simulat` is not understood here. Did you mean `simulate`?");
    }

    @Test
    void aFormThatDoesNotExistIsToldTheOnesThatDo() {
        assertThat(Program.run("check", "a.yaml", "--format", "xml").err()).contains("text", "json", "csv");
    }

    @Test
    void noColourIsAcceptedEverywhere() {
        String help = Program.run("check", "--no-color", "--help").out();

        assertThat(help).contains("Usage:").doesNotContain("\u001B");
    }

    @Test
    void anOutputThatCannotBeWrittenIsFileTrouble() {
        StringWriter err = new StringWriter();
        PrintWriter full = new PrintWriter(new Writer() {
            @Override
            public void write(char[] buffer, int offset, int length) throws java.io.IOException {
                throw new java.io.IOException("no space left");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });

        int exitCode = Lanetide.run(
                full,
                new PrintWriter(err),
                "check",
                Scenarios.FOLDER.resolve("one-pair.yaml").toString());

        assertThat(exitCode).isEqualTo(3);
        assertThat(err.toString()).contains("standard output");
    }

    private static String unwrapped(String help) {
        return help.replaceAll("\\s+", " ");
    }
}
