package lanetide.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lanetide.cli.command.Program;
import lanetide.cli.command.Shell;
import lanetide.cli.report.Cautions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Reads the man pages as a reader of manuals does; the profile {@code man} builds them first. */
@Tag("man")
class ManPagesTest {
    private static final Path PAGES = Path.of("target/man");
    private static final int COLUMNS = 80;

    /** From what the processor of AsciiDoc puts before every page, for links; no page has one. */
    private static final List<String> OF_THE_PROCESSOR =
            List.of("skipping insecure request: mso", "skipping unknown macro:  LINKSTYLE");

    @BeforeAll
    static void thePagesAreThere() {
        assertThat(PAGES).as("build the pages with the profile man").isDirectory();
    }

    @Test
    void everyCommandHasAPageAndNothingElseHas() throws IOException {
        try (Stream<Path> files = Files.list(PAGES)) {
            assertThat(files)
                    .containsExactlyInAnyOrderElementsOf(
                            Commands.all().stream().map(ManPagesTest::page).toList());
        }
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.HelpTest#commands")
    void itIsSoundForAReaderOfManuals(CommandSpec command) {
        String complaints = mandoc("-T", "lint", "-W", "error", page(command).toString())
                .out()
                .lines()
                .filter(line -> OF_THE_PROCESSOR.stream().noneMatch(line::contains))
                .reduce("", String::concat);

        assertThat(complaints).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.HelpTest#commands")
    void itHasAllThatTheHelpHas(CommandSpec command) {
        String page = read(command);

        assertThat(page)
                .containsSubsequence(
                        "\nNAME\n",
                        "\nSYNOPSIS\n       " + command.qualifiedName(),
                        "\nDESCRIPTION\n",
                        "\nOPTIONS\n",
                        "\nEXIT STATUS\n",
                        "\nEXAMPLES\n",
                        "\nCAUTIONS\n",
                        "\nSEE ALSO\n");
        for (OptionSpec option : command.options()) {
            assertThat(page).contains("\n       " + String.join(", ", option.names()));
        }
        command.usageMessage()
                .exitCodeList()
                .forEach((code, meaning) -> assertThat(unwrapped(page)).contains(" " + code + " " + meaning + " "));
        for (String example : Commands.examples(command)) {
            assertThat(page.lines()).contains("           " + example);
        }
        assertThat(unwrapped(page)).contains(Cautions.ALL);
    }

    @ParameterizedTest
    @MethodSource("lanetide.cli.HelpTest#commands")
    void noMarkupLeaksAndNoLineIsTooLong(CommandSpec command) {
        String page = read(command).replace("NO_COLOR", "");

        assertThat(page).doesNotContain("*", "_", "{", "}", "`", "::", "%n", "xref", "[%", "pass:", "\u001B");
        assertThat(page.lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(COLUMNS));
    }

    private static Path page(CommandSpec command) {
        return PAGES.resolve(command.qualifiedName("-") + ".1");
    }

    /** What is on the screen: letters are overstruck for bold print. */
    private static String read(CommandSpec command) {
        Program.Outcome outcome = mandoc("-T", "utf8", page(command).toString());
        assertThat(outcome.exitCode()).as(outcome.err()).isZero();
        return outcome.out().replaceAll(".\b", "").replace('\u2019', '\'');
    }

    private static String unwrapped(String page) {
        return page.replaceAll("\\s+", " ");
    }

    private static Program.Outcome mandoc(String... options) {
        return new Shell(Path.of("").toAbsolutePath())
                .start(Stream.concat(Stream.of("mandoc"), Stream.of(options)).toList(), Map.of());
    }
}
