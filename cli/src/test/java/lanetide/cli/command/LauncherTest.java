package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lanetide.cli.scenario.Scenarios;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that starts the program, beside a jar that leads to what is tested. */
class LauncherTest {
    private static final Path SCRIPT = Path.of("src", "main", "sh", "lanetide");
    private static final Path ONE_PAIR =
            Scenarios.FOLDER.resolve("one-pair.yaml").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    private Path program;
    private Path cache;

    @BeforeEach
    void install() throws IOException {
        program = Files.createDirectory(folder.resolve("a program"));
        cache = folder.resolve("a cache");
        Files.copy(SCRIPT, program.resolve("lanetide"));
        List<Path> parts = new ArrayList<>();
        for (String entry : System.getProperty("java.class.path").split(":", -1)) {
            Path path = Path.of(entry);
            parts.add(Files.isDirectory(path) ? packed(path, program.resolve("part" + parts.size() + ".jar")) : path);
        }
        Manifest manifest = new Manifest();
        Attributes attributes = manifest.getMainAttributes();
        attributes.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        attributes.put(Attributes.Name.MAIN_CLASS, "lanetide.cli.Lanetide");
        attributes.put(
                Attributes.Name.CLASS_PATH,
                parts.stream().map(part -> part.toUri().toString()).collect(Collectors.joining(" ")));
        new JarOutputStream(Files.newOutputStream(program.resolve("lanetide.jar")), manifest).close();
    }

    /** Archives hold classes of jars alone. */
    private static Path packed(Path classes, Path jar) throws IOException {
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
                Stream<Path> files = Files.walk(classes)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                out.putNextEntry(new JarEntry(classes.relativize(file).toString()));
                Files.copy(file, out);
                out.closeEntry();
            }
        }
        return jar;
    }

    @Test
    void itPrintsWhatTheProgramPrintsTheFirstTimeAndTheSecond() {
        Program.Outcome first = launched(cache, "check", ONE_PAIR);
        Program.Outcome second = launched(cache, "check", ONE_PAIR);

        assertThat(first.err()).isEmpty();
        assertThat(first).isEqualTo(Program.run("check", ONE_PAIR)).isEqualTo(second);
        assertThat(cache.resolve("lanetide")).isDirectoryContaining("glob:**/check-*.jsa");
    }

    @Test
    void itDoesWithoutACacheThatCannotBeWritten() throws IOException {
        Path file = Files.createFile(folder.resolve("no folder"));

        assertThat(launched(file, "check", ONE_PAIR)).isEqualTo(Program.run("check", ONE_PAIR));
    }

    @Test
    void anArchiveThatIsNoneHarmsNothing() throws IOException {
        launched(cache, "check", ONE_PAIR);
        try (Stream<Path> archives = Files.list(cache.resolve("lanetide"))) {
            for (Path archive : archives.toList()) {
                Files.delete(archive);
                Files.writeString(archive, "no archive");
            }
        }

        assertThat(launched(cache, "check", ONE_PAIR)).isEqualTo(Program.run("check", ONE_PAIR));
    }

    @Test
    void itPassesExitCodesAndWordsWithSpacesOn() throws IOException {
        Path scenario = Files.copy(ONE_PAIR, folder.resolve("one pair; $HOME 'tonight'.yaml"));
        Path missing = folder.resolve("no such file.yaml");

        assertThat(launched(cache, "check", scenario)).isEqualTo(Program.run("check", scenario));
        assertThat(launched(cache, "check", missing)).isEqualTo(Program.run("check", missing));
        assertThat(launched(cache, "check", "--bogus").exitCode()).isEqualTo(2);
        readsANameThatIsNotAsciiInThePlainLocale();
    }

    private void readsANameThatIsNotAsciiInThePlainLocale() {
        Program.Outcome outcome = new Shell(folder)
                .run(
                        "cp '" + ONE_PAIR + "' $'caf\\xc3\\xa9.yaml' && sh '" + program.resolve("lanetide")
                                + "' check $'caf\\xc3\\xa9.yaml'",
                        Map.of("LC_ALL", "C", "XDG_CACHE_HOME", cache.toString()));

        assertThat(outcome.out()).as(outcome.err()).contains("no errors");
    }

    @Test
    void itFindsItsJarThroughALink() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("lanetide"), Path.of("a program", "lanetide"));

        assertThat(started(link, cache, "--version")).isEqualTo(Program.run("--version"));
    }

    @Test
    void whereThereIsNoJavaItSaysSo() {
        Program.Outcome outcome = new Shell(folder)
                .start(
                        List.of("sh", program.resolve("lanetide").toString(), "--version"),
                        Map.of("JAVA_HOME", folder.resolve("nowhere").toString()));

        assertThat(outcome.exitCode()).isEqualTo(3);
        assertThat(outcome.err()).contains("no java", "JAVA_HOME").hasLineCount(1);
    }

    private Program.Outcome launched(Path cache, Object... words) {
        return started(program.resolve("lanetide"), cache, words);
    }

    private Program.Outcome started(Path script, Path cache, Object... words) {
        return new Shell(folder)
                .start(
                        Stream.concat(
                                        Stream.of("sh", script.toString()),
                                        Stream.of(words).map(String::valueOf))
                                .toList(),
                        Map.of(
                                "JAVA_HOME", System.getProperty("java.home"),
                                "XDG_CACHE_HOME", cache.toString()));
    }
}
