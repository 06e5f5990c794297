package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanetide.cli.FewPlayings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the front page of the project to the program. */
class FrontPageTest {
    private static final Path ROOT = Path.of("..");
    private static final String PROGRAM = "java -jar cli/target/lanetide.jar ";
    private static final String ELLIPSIS = "...";

    @TempDir
    private Path folder;

    @Test
    void theOutputShownIsTheOutputOfTheCommandShown() throws IOException {
        String page = readme();
        int start = page.indexOf("```text\n") + 8;
        String sample = page.substring(start, page.indexOf("\n```", start));
        String printed = Program.run("simulate", ROOT.resolve("scenarios/championship.yaml"))
                .out();
        int from = 0;
        for (String line : sample.split("\n", -1)) {
            if (!line.isBlank() && !line.strip().equals(ELLIPSIS)) {
                int at = printed.indexOf(line + "\n", from);
                assertThat(at)
                        .as("the printed answer after the lines before holds: %s", line)
                        .isNotNegative();
                from = at + line.length();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("commandsOfTheTour")
    void everyCommandOfTheTourWorks(String command) {
        Object[] words = List.of(FewPlayings.of(command).split(" ")).stream()
                .map(this::inPlace)
                .toArray();
        assertThat(Program.run(words).exitCode()).isZero();
    }

    /** What is read lies in the project; what is written goes where nobody minds. */
    private Object inPlace(String word) {
        return word.startsWith("scenarios/")
                ? ROOT.resolve(word)
                : word.endsWith(".html") ? folder.resolve(word) : word;
    }

    /** The tour's commands but for those on the championship, of which one run is enough. */
    static List<String> commandsOfTheTour() throws IOException {
        List<String> commands = readme().lines()
                .map(String::strip)
                .filter(line -> line.startsWith(PROGRAM) && !line.contains("championship"))
                .map(line -> line.substring(PROGRAM.length()))
                .toList();
        assertThat(commands).hasSizeGreaterThanOrEqualTo(3);
        return commands;
    }

    private static String readme() throws IOException {
        return Files.readString(ROOT.resolve("README.md"));
    }
}
