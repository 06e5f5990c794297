package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Every command in every form, in JVMs of its own on machines that differ in all that a machine can differ in: each row
 * is another language, and between them the rows have every value of everything else. What is printed and what is
 * written is the same to the byte.
 */
@Tag("slow")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SameBytesTest {
    private static final Path EVENTS = Path.of("src", "test", "resources", "lanetide", "cli", "fuzz");
    private static final Path JVMS = Path.of("/usr/lib/jvm");

    private static final String FEW = " --replications 2 --sets usual --quiet";
    private static final List<String> LINES = List.of(
            "check event.yaml",
            "check event.yaml --format json",
            "check faulty.yaml",
            "check evening.yaml --no-shows A=1 --write changed.yaml",
            "pattern event.yaml",
            "pattern event.yaml --format json",
            "pattern event.yaml --format csv",
            "lines event.yaml --style stroker --surface wood --cover plastic",
            "lines event.yaml --style stroker --surface wood --cover plastic --format json",
            "lines event.yaml --style stroker --surface wood --cover plastic --format csv",
            "rotate doubles.yaml --dot map.dot --graphml map.graphml",
            "rotate doubles.yaml --format json",
            "rotate doubles.yaml --format csv",
            "simulate event.yaml --shot-log shots.csv --trace trace.txt" + FEW,
            "simulate doubles.yaml --team-table teams.csv --trace trace.jsonl --format json" + FEW,
            "simulate doubles.yaml --units metric" + FEW,
            "simulate event.yaml --format csv --replications 2",
            "preview event.yaml --bowler Elm" + FEW,
            "preview event.yaml --bowler Elm --format json" + FEW,
            "preview event.yaml --bowler Elm --format csv" + FEW,
            "preview event.yaml --bowler Elm --format html" + FEW,
            "reoil event.yaml --games 2 --replications 4 --sets usual",
            "reoil event.yaml --games 2 --replications 4 --format json",
            "reoil event.yaml --games 2 --replications 4 --oilings 1 --sets usual --format csv",
            "fairness evening.yaml --replications 10 --bounds 2 --remedies 2 --sets usual",
            "fairness evening.yaml --replications 10 --bounds 0 --remedies 0 --format json",
            "fairness evening.yaml --replications 10 --bounds 0 --remedies 0 --sets usual --format csv",
            "fairness evening.yaml --replications 10 --bounds 0 --remedies 2 --sets usual --format html",
            "compare event.yaml event.yaml" + FEW,
            "compare event.yaml event.yaml --format json" + FEW,
            "compare event.yaml event.yaml --format csv" + FEW,
            "fit evening.yaml",
            "sheets event.yaml --into sheets --first-day 2027-03-06" + FEW,
            "sheets doubles.yaml --into letter --paper letter -o sheets.csv" + FEW,
            "report evening.yaml --fairness 10 --remedies 0 --reoil 4 --bowlers pages -o page.html" + FEW,
            "report doubles.yaml --fairness 0 --reoil 0 -o second.html" + FEW,
            "new --yes",
            "schema scenario",
            "generate-completion",
            "help simulate",
            "--help",
            "--version",
            "check no-such.yaml",
            "simulate event.yaml --replications 0",
            "reoil --bogus");

    /** Half a minute of work whatever was measured, so it is not asked on every machine. */
    private static final String FIT = "fit event.yaml --centre lanes.json --format json --quiet";

    private final Map<String, String> here = new TreeMap<>();

    @TempDir
    private Path temporary;

    /** Once for all rows. */
    @BeforeAll
    void asksHere(@TempDir Path folder) throws IOException {
        here.putAll(answers(folder, LINES, new Machine(ownJava(), "C.UTF-8", List.of())));
        assertThat(here).containsKeys("sheets/cards.html", "shots.csv", "page.html", "teams.csv", "changed.yaml");
        assertThat(here.keySet()).anyMatch(name -> name.startsWith("pages/"));
    }

    /** A machine: its JVM, the locale of its system, and what its JVM is told. */
    private record Machine(Path java, String systemLocale, List<String> options) {}

    /**
     * Between them the rows have every value of each column; every command meets all rows. The last is played by
     * another JDK where there is a second one.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "tr-TR, Asia/Kathmandu, windows-1254, crlf, UseSerialGC, 1, 1, false, C.UTF-8, in a folder, false",
        "ar-EG-u-nu-arab, America/St_Johns, windows-1256, lf, UseParallelGC, 2, 3, true, C.UTF-8, f\u00f6lder, false",
        "de-DE, Europe/Berlin, ISO-8859-1, crlf, UseG1GC, 4, 2, false, C, folder, false",
        "th-TH-u-nu-thai-ca-buddhist, Pacific/Kiritimati, UTF-16, lf, UseSerialGC, 4, 4, false, POSIX, a/b/c, true",
    })
    void commandsAnswerTheSame(
            String language,
            String zone,
            String letters,
            String ends,
            String collector,
            int processors,
            int threads,
            boolean parts,
            String systemLocale,
            String folder,
            boolean byAnotherJdk)
            throws IOException {
        List<String> options = List.of(
                "-Dlanguage=" + language,
                "-Duser.language=" + language.substring(0, 2),
                "-Duser.country=" + language.substring(3, 5),
                "-Duser.timezone=" + zone,
                "-Dfile.encoding=" + letters,
                "-Dstdout.encoding=" + letters,
                "-Dsun.stdout.encoding=" + letters,
                "-Dline.separator=" + (ends.equals("crlf") ? "\r\n" : "\n"),
                "-XX:+" + collector,
                "-XX:ActiveProcessorCount=" + processors,
                "-Dthreads=" + threads,
                "-Dparts=" + parts);

        Path java = byAnotherJdk ? anotherJava().orElse(ownJava()) : ownJava();

        same(here, answers(temporary.resolve(folder), LINES, new Machine(java, systemLocale, options)));
    }

    /** Everything is another at once, the JDK too where there is a second one. */
    @Test
    void aFitIsTheSame() throws IOException {
        Map<String, String> fitted =
                answers(temporary.resolve("here"), List.of(FIT), new Machine(ownJava(), "C.UTF-8", List.of()));
        Machine machine = new Machine(
                anotherJava().orElse(ownJava()),
                "C.UTF-8",
                List.of(
                        "-Dlanguage=ar-EG-u-nu-arab",
                        "-Duser.timezone=Asia/Kathmandu",
                        "-Dfile.encoding=ISO-8859-1",
                        "-Dline.separator=\r\n",
                        "-XX:+UseSerialGC",
                        "-XX:ActiveProcessorCount=1",
                        "-Dthreads=3"));

        assertThat(fitted).containsKey("lanes.json");
        same(fitted, answers(temporary.resolve("a f\u00f6lder"), List.of(FIT), machine));
    }

    private static void same(Map<String, String> here, Map<String, String> there) {
        assertThat(there.keySet()).isEqualTo(here.keySet());
        here.forEach((name, bytes) -> {
            assertThat(there.get(name).lines().toList())
                    .as(name)
                    .isEqualTo(bytes.lines().toList());
            assertThat(there.get(name)).as("size of %s", name).hasSameSizeAs(bytes);
        });
    }

    /** What comes of commands on a machine, by the names of the files; every byte is a letter. */
    private static Map<String, String> answers(Path parent, List<String> lines, Machine machine) throws IOException {
        Path folder = Files.createDirectories(parent.resolve("event"));
        lay(folder);
        Files.write(folder.resolve("commands.txt"), lines);
        List<String> command = new ArrayList<>(List.of(machine.java.toString(), "-XX:TieredStopAtLevel=1"));
        command.addAll(machine.options);
        command.addAll(List.of("-cp", classPath(), "lanetide.cli.Answers"));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(folder.resolve("answers.txt").toFile())
                .redirectError(folder.resolve("errors.txt").toFile());
        builder.environment().put("LC_ALL", machine.systemLocale);
        try {
            int exitCode = builder.start().waitFor();
            assertThat(exitCode)
                    .as("%s", Files.readString(folder.resolve("errors.txt")))
                    .isZero();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a program ran", e);
        }
        return contents(folder);
    }

    private static String classPath() {
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** A measured evening and doubles, with a bowler whose name few sets of letters have. */
    private static void lay(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(EVENTS)) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString().replace("measured.yaml", "event.yaml");
                Files.writeString(
                        folder.resolve(name), Files.readString(file).replace("Ash", "\u00c5sh I\u011fd\u0131r"));
            }
        }
        Files.writeString(
                folder.resolve("faulty.yaml"),
                Files.readString(folder.resolve("event.yaml"))
                        .replace("stroker", "\u00dfroker")
                        .replace("40 ft", "400 ft"));
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString();
                contents.put(
                        name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).replace("\r", "\\r"));
            }
        }
        return contents;
    }

    private static Path ownJava() {
        return Path.of(System.getProperty("java.home"), "bin", "java");
    }

    /** One of another version than this test's. */
    private static Optional<Path> anotherJava() throws IOException {
        if (!Files.isDirectory(JVMS)) {
            return Optional.empty();
        }
        String own = version(Path.of(System.getProperty("java.home")));
        try (Stream<Path> jdks = Files.list(JVMS)) {
            return jdks.filter(jdk -> Files.isReadable(jdk.resolve("release")))
                    .filter(jdk -> !version(jdk).equals(own))
                    .map(jdk -> jdk.resolve("bin").resolve("java"))
                    .filter(Files::isExecutable)
                    .sorted()
                    .findFirst();
        }
    }

    /** As its own file tells it, such as {@code JAVA_VERSION="17.0.9"}. */
    private static String version(Path jdk) {
        try (Stream<String> lines = Files.lines(jdk.resolve("release"))) {
            return lines.filter(line -> line.startsWith("JAVA_VERSION="))
                    .findFirst()
                    .orElse("");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
