package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.output.ExitCode;
import lanetide.cli.output.PartNames;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files with odd names, and files that are none. */
class FileNamesTest {
    private static final Path ONE_PAIR = Scenarios.FOLDER.resolve("one-pair.yaml");

    private static final Path LAUNCHER = Path.of("src", "main", "sh", "lanetide");

    @TempDir
    private Path folder;

    @Test
    void aPipeAsEntryListIsRefusedAndNotWaitedFor() throws IOException {
        assertThat(new Shell(folder).run("mkfifo list.csv").exitCode()).isZero();
        Path scenario = Files.writeString(
                folder.resolve("event.yaml"),
                Files.readString(Scenarios.FOLDER.resolve("club-final.yaml")).replace("club-final.csv", "list.csv"));

        Program.Outcome outcome = Program.run("check", scenario);

        assertThat(outcome.out()).contains("a pipe or a device", "[named_file_missing]");
    }

    @Test
    void whatATerminalWouldObeyIsNotPrinted() throws IOException {
        Path scenario = Files.writeString(
                folder.resolve("red\u001b[31m.yaml"),
                Files.readString(ONE_PAIR).replace("level: elite", "level: elit"));

        for (Program.Outcome outcome : List.of(
                Program.run("check", scenario),
                Program.run("lines", scenario),
                Program.run("lines", folder.resolve("no\u0007ne")),
                Program.run("check", ONE_PAIR, "-o", folder.resolve("no\u001b[2J/x")),
                Program.run("new", "--yes", "-o", folder.resolve("new\u009b1m.yaml")))) {
            assertThat(outcome.out() + outcome.err()).contains("?").doesNotContainPattern("[\\p{Cc}&&[^\n]]");
        }
    }

    @Test
    void aLinkToWhatIsNotThereStaysALink() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("answer.txt"));

        assertThat(Program.run("check", ONE_PAIR, "-o", link).exitCode()).isZero();

        assertThat(link).isSymbolicLink();
        assertThat(folder.resolve("answer.txt")).isRegularFile();
    }

    @Test
    void aLinkThatLeadsToItselfIsRefused() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("link"));

        Program.Outcome outcome = Program.run("check", ONE_PAIR, "-o", link);

        assertThat(outcome.exitCode()).isEqualTo(ExitCode.FILE_TROUBLE);
        assertThat(outcome.err()).contains("a link that leads to no file");
    }

    @Test
    void aLinkAndItsFileAreTheSame() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), Path.of("shots.csv"));

        Program.Outcome outcome = Program.run(
                "simulate", ONE_PAIR, "--shot-log", link, "--trace", folder.resolve("shots.csv"), "--replications", 1);

        assertThat(outcome.err()).contains("name the same file");
    }

    @Test
    void aNameMayBeAsLongAsTheSystemAllowsAndALongerOneIsRefusedBeforeTheRun() {
        Path longest = folder.resolve("n".repeat(254));

        assertThat(Program.run("check", ONE_PAIR, "-o", longest).exitCode()).isZero();
        assertThat(longest).isRegularFile();
        Program.Outcome refused = Program.run("simulate", ONE_PAIR, "-o", folder.resolve("n".repeat(300)));
        assertThat(refused.exitCode()).isEqualTo(ExitCode.FILE_TROUBLE);
        assertThat(refused.err()).contains("The answer cannot go to").doesNotContain("an older file");
    }

    @Test
    void whatKilledRunsLeftIsRemovedWhenTheSameFileIsWrittenAndNothingElseIs() throws IOException {
        Path answer = folder.resolve("answer.txt");
        Path other = folder.resolve("other.txt");
        Path abandoned = part(answer, 999_999_999L, 2);
        Path young = part(answer, 999_999_998L, 0);
        Path running =
                part(answer, ProcessHandle.current().parent().orElseThrow().pid(), 2);
        Path ofAnother = part(other, 999_999_999L, 2);

        assertThat(Program.run("check", ONE_PAIR, "-o", answer).exitCode()).isZero();

        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).containsExactlyInAnyOrder(answer, young, running, ofAnother);
        }
        assertThat(abandoned).doesNotExist();
    }

    /** What a run leaves that is killed while it writes, found by how one looks that is being written. */
    private Path part(Path answer, long pid, int hoursOld) throws IOException {
        String name = PartNames.of(answer, pid);
        Path part = Files.writeString(folder.resolve(name), "half an ans");
        long nowMs = Files.getLastModifiedTime(part).toMillis();
        return Files.setLastModifiedTime(part, FileTime.fromMillis(nowMs - hoursOld * 3_600_000L));
    }

    @Test
    void inThePlainLocaleANameThatIsNotAsciiIsRefusedInPlainWords() {
        Program.Outcome outcome = new Shell(folder).run("lanetide check $'caf\\xc3\\xa9.yaml'", Map.of("LC_ALL", "C"));

        assertThat(outcome.exitCode()).as(outcome.err()).isEqualTo(ExitCode.CANNOT_RUN);
        assertThat(outcome.err()).contains("cannot be the name of a file here", "LC_ALL=C.UTF-8");
        assertThat(outcome.err()).doesNotContain("java", "Exception");
    }

    /** Not run here: what a Windows shell would stumble over, and that both launchers know the same quick commands. */
    @Test
    void theOneForWindowsHasItsLineEndsAndTheSameQuickCommands() throws IOException {
        String batch = Files.readString(LAUNCHER.resolveSibling("lanetide.bat"));
        String quick = Files.readString(LAUNCHER)
                .replaceAll("(?s).*case \\$\\{1:-\\} in\\s+(check [^)]*) \\| -\\*\\).*", "$1")
                .replace(" | ", " ");

        assertThat(batch.replace("\r\n", "")).doesNotContain("\n", "\r");
        assertThat(batch)
                .isASCII()
                .contains("in (" + quick + ") do", "set \"jar=%~dp0lanetide.jar\"", "-jar \"%jar%\" %*", "exit /b");
    }

    /**
     * Not run here either: that it keeps an archive for each command, by the same words to the JVM as the other one.
     */
    @Test
    void theOneForWindowsKeepsAnArchiveForEveryCommandToo() throws IOException {
        String batch = Files.readString(LAUNCHER.resolveSibling("lanetide.bat"));
        String commands = Program.run("--help")
                .out()
                .replaceAll("(?s).*\nCommands:\n(.*?)\n\n.*", "$1")
                .lines()
                .filter(line -> line.matches("  [a-z].*"))
                .map(line -> line.strip().replaceAll(" .*", ""))
                .sorted()
                .collect(Collectors.joining(" "));

        assertThat(commands).contains("check", "simulate");
        assertThat(batch).contains("in (" + commands + ") do");
        for (String words : List.of(
                "-XX:+IgnoreUnrecognizedVMOptions -Xlog:disable",
                "-XX:FreqInlineSize=100 -XX:+UseParallelGC",
                "-XX:SharedArchiveFile=",
                "-XX:ArchiveClassesAtExit=")) {
            assertThat(batch).contains(words);
            assertThat(Files.readString(LAUNCHER)).contains(words);
        }
        batch.lines()
                .filter(line -> line.contains("goto "))
                .forEach(line -> assertThat(batch.lines()).contains(":" + line.replaceAll(".*goto ", "")));
    }
}
