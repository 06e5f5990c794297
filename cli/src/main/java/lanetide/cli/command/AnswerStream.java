package lanetide.cli.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A file that is too long to be kept in memory. It is written beside its final place while it grows, and moved there in one step
 * when it is committed; a run that fails leaves an older file as it was.
 */
final class AnswerStream implements AutoCloseable {
    private final Path target;
    private final Path part;
    private final BufferedWriter writer;

    private AnswerStream(Path target, Path part, BufferedWriter writer) {
        this.target = target;
        this.part = part;
        this.writer = writer;
    }

    static AnswerStream to(Path path) {
        try {
            boolean device = Files.exists(path) && !Files.isRegularFile(path);
            Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
            Path part = device ? target : AnswerFile.partOf(target);
            BufferedWriter writer = device
                    ? Files.newBufferedWriter(target, StandardCharsets.UTF_8)
                    : Files.newBufferedWriter(part, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            return new AnswerStream(target, part, writer);
        } catch (IOException e) {
            throw trouble(path, e);
        }
    }

    /** What is written here is in the file once it is committed. */
    Appendable writer() {
        return writer;
    }

    /** Puts the file into its place. */
    void commit() {
        try {
            writer.close();
            if (!part.equals(target)) {
                AnswerFile.moveIntoPlace(part, target);
            }
        } catch (IOException e) {
            throw trouble(target, e);
        }
    }

    /** Removes what was not committed. */
    @Override
    public void close() {
        try {
            writer.close();
            if (!part.equals(target)) {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw trouble(target, e);
        }
    }

    /** What to say of a write that failed while the run went on. */
    static CommandFailure trouble(UncheckedIOException e) {
        return CommandFailure.fileTrouble("A file cannot be written (" + ScenarioFile.reason(e.getCause()) + ").");
    }

    private static CommandFailure trouble(Path path, IOException e) {
        return CommandFailure.fileTrouble("The file " + path + " cannot be written (" + ScenarioFile.reason(e)
                + "); an older file there is as it was.");
    }
}
