package lanetide.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lanetide.cli.command.Program;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import lanetide.squads.result.BrokenRuleException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A rule that the program breaks itself ends it with a code of its own, and with a file that shows it again. */
class BrokenRuleTest {
    @TempDir
    private Path folder;

    /** An output that stands for a fault somewhere in the run of a command. */
    private static PrintWriter breaking() {
        return new PrintWriter(new Writer() {
            @Override
            public void write(char[] text, int from, int length) {
                throw new BrokenRuleException("of 100 mL of oil\nsome is lost");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        });
    }

    @Test
    void aBrokenRuleIsToldAndLeavesAScenarioThatCanBeRead() throws IOException {
        Path scenario = Files.copy(Scenarios.FOLDER.resolve("one-pair.yaml"), folder.resolve("event.yaml"));
        StringWriter err = new StringWriter();

        int exitCode = Lanetide.run(breaking(), new PrintWriter(err), "pattern", scenario.toString(), "--quiet");

        assertThat(exitCode).isEqualTo(ExitCode.BROKEN_RULE);
        assertThat(err.toString())
                .contains("broken a rule of its own", "some is lost", "nothing was answered", "please report it")
                .hasLineCount(2);
        Path left = left().get(0);
        assertThat(left.getFileName().toString()).matches("lanetide-breach-[0-9a-f]{8}\\.yaml");
        assertThat(Files.readAllLines(left).subList(0, 3))
                .allMatch(line -> line.startsWith("# "))
                .anyMatch(line -> line.contains("Command: lanetide pattern " + scenario + " --quiet"));
        assertThat(left).content().endsWith(Files.readString(scenario));
        assertThat(Program.run("check", left).out()).contains("no errors");
    }

    @Test
    void theSameBreachIsLeftOnce() throws IOException {
        Path scenario = Files.copy(Scenarios.FOLDER.resolve("one-pair.yaml"), folder.resolve("event.yaml"));
        for (int run = 0; run < 2; run++) {
            Lanetide.run(breaking(), new PrintWriter(new StringWriter()), "pattern", scenario.toString());
        }

        assertThat(left()).hasSize(1);
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().startsWith("lanetide-breach"))
                    .toList();
        }
    }
}
