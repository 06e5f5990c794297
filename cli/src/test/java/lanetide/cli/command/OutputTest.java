package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lanetide.cli.output.ExitCode;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Answers that cannot go where they should: a plain word, exit code 3, and nothing left over. */
class OutputTest {
    private static final Path ONE_PAIR =
            Scenarios.FOLDER.resolve("one-pair.yaml").toAbsolutePath();

    /** Every option that names a file to be written, in its quickest command; FILE stands for the file. */
    private static final List<String> WRITERS = List.of(
            "check SCENARIO -o FILE",
            "compare SCENARIO SCENARIO --replications 2 -o FILE",
            "fairness SCENARIO --replications 10 --remedies 0 -o FILE",
            "lines SCENARIO --style power --surface wood -o FILE",
            "new --yes -o FILE",
            "pattern SCENARIO -o FILE",
            "preview SCENARIO --bowler Anchor --replications 1 -o FILE",
            "reoil SCENARIO --replications 4 --games 2 -o FILE",
            "report SCENARIO --replications 1 --fairness 0 --reoil 0 -o FILE",
            "rotate SCENARIO -o FILE",
            "rotate SCENARIO --graphml FILE",
            "rotate SCENARIO --dot FILE",
            "schema simulate -o FILE",
            "sheets SCENARIO --replications 1 --into FOLDER -o FILE",
            "simulate SCENARIO --replications 1 -o FILE",
            "simulate SCENARIO --replications 1 --shot-log FILE",
            "simulate SCENARIO --replications 1 --trace FILE");

    /** Those that take long, so that only what is looked at beforehand is seen here. */
    private static final List<String> LONG_WRITERS = List.of("fit SCENARIO -o FILE", "fit SCENARIO --centre FILE");

    @TempDir
    Path folder;

    private Path taken;

    @BeforeEach
    void putsAFileInTheWay() throws IOException {
        taken = Files.writeString(folder.resolve("taken"), "mine");
    }

    @ParameterizedTest
    @MethodSource({"writers", "longWriters"})
    void aFileCannotBeAFolder(String words) throws IOException {
        refuses(words, folder, "which is a folder");
    }

    @ParameterizedTest
    @MethodSource({"writers", "longWriters"})
    void aFolderThatIsMissingIsNotMade(String words) throws IOException {
        refuses(words, folder.resolve("no/answer"), "there is no folder");
    }

    @ParameterizedTest
    @MethodSource({"writers", "longWriters"})
    void aFileInPlaceOfAFolderIsLeftAsItIs(String words) throws IOException {
        refuses(words, taken.resolve("answer"), "there is no folder");
    }

    @ParameterizedTest
    @MethodSource("writers")
    void aDeviceThatIsFullIsTold(String words) throws IOException {
        refuses(words, Path.of("/dev/full"), "o space left");
    }

    /** A shell may limit the size of files, which then fails in the middle as a full disk does. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "report SCENARIO --replications 1 --fairness 0 --reoil 0 -o page.html",
                "sheets SCENARIO --replications 1 --into FOLDER",
                "simulate SCENARIO --replications 1 --shot-log shots.csv",
                "simulate SCENARIO --replications 1 --trace trace.txt",
                "schema simulate -o schema.json"
            })
    void aDiskThatFillsUpInTheMiddleLeavesNothingBehind(String words) throws IOException {
        Program.Outcome outcome = new Shell(folder)
                .run("ulimit -f 4; lanetide " + filled(words, folder), Map.of("JAVA_TOOL_OPTIONS", "-XX:-UsePerfData"));

        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(ExitCode.FILE_TROUBLE);
        assertThat(outcome.err()).contains("cannot be written", "large").doesNotContain("\tat ");
        onlyTheOldFileIsThere();
    }

    @Test
    void aStandardOutputThatIsFullIsTold() {
        for (String words :
                List.of("pattern " + ONE_PAIR, "schema scenario", "new --yes", "generate-completion", "--help")) {
            Program.Outcome outcome = new Shell(folder).run("lanetide " + words + " > /dev/full");

            assertThat(outcome.exitCode()).as(words).isEqualTo(ExitCode.FILE_TROUBLE);
            assertThat(outcome.err())
                    .contains("cannot be written to standard output")
                    .hasLineCount(1);
        }
    }

    @Test
    void aReaderWhoHasSeenEnoughIsNoFault() {
        for (String words : List.of("pattern " + ONE_PAIR, "schema scenario")) {
            Program.Outcome outcome = new Shell(folder).run("lanetide " + words + " | true; echo ${PIPESTATUS[0]}");

            assertThat(outcome.out()).as(words).isEqualTo("0\n");
            assertThat(outcome.err()).as(words).isEmpty();
        }
    }

    @Test
    void aRunThatIsInterruptedLeavesNothingBehind() throws IOException, InterruptedException {
        Process process =
                new Shell(folder).starting("simulate", ONE_PAIR, "--replications", 100_000, "--shot-log", "shots.csv");
        while (process.isAlive() && files().size() == 1) {
            Thread.sleep(20);
        }
        assertThat(files()).as("the log grows beside its place").hasSize(2);
        process.destroy();

        assertThat(process.waitFor()).isEqualTo(128 + 15);
        onlyTheOldFileIsThere();
    }

    static List<String> writers() {
        return WRITERS;
    }

    static List<String> longWriters() {
        return LONG_WRITERS;
    }

    private void refuses(String words, Path file, String why) throws IOException {
        Object[] line = List.of(filled(words, file).split(" ", -1)).toArray();

        Program.Outcome outcome = Program.run(line);

        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(ExitCode.FILE_TROUBLE);
        assertThat(outcome.err()).startsWith("lanetide: ").contains(why).doesNotContain("Exception");
        assertThat(outcome.err().strip()).hasLineCount(1);
        if (!words.contains("FOLDER")) {
            onlyTheOldFileIsThere();
        }
    }

    private String filled(String words, Path file) {
        return words.replace("SCENARIO", ONE_PAIR.toString())
                .replace("FOLDER", folder.resolve("print").toString())
                .replace("FILE", file.toString());
    }

    private void onlyTheOldFileIsThere() throws IOException {
        assertThat(files()).containsExactly(taken);
        assertThat(taken).hasContent("mine");
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }
}
