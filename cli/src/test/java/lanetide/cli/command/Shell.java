package lanetide.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Runs lines in a real shell that knows the program as {@code lanetide}. */
public final class Shell {
    private static final long LONGEST_MINUTES = 10;

    private final Path folder;

    /** A shell in a folder, which also takes what is printed. */
    public Shell(Path folder) {
        this.folder = folder;
    }

    /** Runs a line; the exit code is that of its last command. */
    public Program.Outcome run(String line) {
        return run(line, Map.of());
    }

    /** Runs a line with further environment variables. */
    public Program.Outcome run(String line, Map<String, String> environment) {
        return start(List.of("bash", "-c", definition() + "\n" + line), environment);
    }

    /** The program as a function of the shell. */
    public static String definition() {
        return program().stream()
                .map(word -> "'" + word + "'")
                .collect(Collectors.joining(" ", "lanetide() { ", " \"$@\"; }"));
    }

    /** Starts the program by itself, its output thrown away. */
    Process starting(Object... words) throws IOException {
        List<String> command = new ArrayList<>(program());
        Stream.of(words).map(String::valueOf).forEach(command::add);
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
    }

    private static List<String> program() {
        return List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                "lanetide.cli.Lanetide");
    }

    /** Runs any program. */
    public Program.Outcome start(List<String> command, Map<String, String> environment) {
        try {
            Path out = Files.createTempFile("shell", ".out");
            Path err = Files.createTempFile("shell", ".err");
            ProcessBuilder builder = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectInput(
                            ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile());
            builder.environment().putAll(environment);
            Process process = builder.start();
            boolean ended = process.waitFor(LONGEST_MINUTES, TimeUnit.MINUTES);
            process.destroyForcibly();
            assertThat(ended).as("%s ended", command).isTrue();
            Program.Outcome outcome = new Program.Outcome(process.exitValue(), text(out), text(err));
            Files.delete(out);
            Files.delete(err);
            return outcome;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a program ran", e);
        }
    }

    private static String text(Path file) throws IOException {
        return new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
    }
}
