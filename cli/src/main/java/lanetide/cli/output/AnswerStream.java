package lanetide.cli.output;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * A file while it is written. It grows beside its final place and is moved there in one step when it is committed; a
 * run that fails or is interrupted leaves an older file as it was, and nothing beside it.
 */
public final class AnswerStream implements AutoCloseable {
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
            if (AnswerFile.isDevice(path)) {
                return new AnswerStream(path, path, Files.newBufferedWriter(path, StandardCharsets.UTF_8));
            }
            Path target = Files.exists(path) ? path.toRealPath() : path.toAbsolutePath();
            PartName name = PartName.of(target);
            Path part = name.path();
            if (part.getFileSystem().equals(FileSystems.getDefault())) {
                part.toFile().deleteOnExit(); // for a run that is interrupted
            }
            BufferedWriter writer =
                    Files.newBufferedWriter(part, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
            name.removeAbandoned();
            return new AnswerStream(target, part, writer);
        } catch (IOException e) {
            throw trouble(path, e);
        }
    }

    /** What is written here is in the file once it is committed. */
    public Appendable writer() {
        return writer;
    }

    /** Writes all of a text. */
    public void write(String text) {
        try {
            writer.write(text);
            writer.flush();
        } catch (IOException e) {
            throw trouble(target, e);
        }
    }

    /** Puts the file into its place. */
    public void commit() {
        try {
            writer.close();
            if (!isDevice()) {
                keepPermissions();
                Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
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
        } catch (IOException e) {
            // Of what is thrown away it does not matter that the end is missing.
        }
        try {
            if (!isDevice()) {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw trouble(part, e);
        }
    }

    /** What to say of a write that failed while the run went on. */
    public static CommandFailure trouble(UncheckedIOException e) {
        return CommandFailure.fileTrouble("What --shot-log or --trace asks for cannot be written ("
                + ScenarioFile.reason(e.getCause()) + "); older files there are as they were.");
    }

    private static CommandFailure trouble(Path path, IOException e) {
        return CommandFailure.fileTrouble("The answer cannot be written to " + path + " (" + ScenarioFile.reason(e)
                + ")" + (AnswerFile.isDevice(path) ? "." : "; an older file there is as it was."));
    }

    private boolean isDevice() {
        return part.equals(target);
    }

    private void keepPermissions() throws IOException {
        if (Files.exists(target) && Files.getFileAttributeView(target, PosixFileAttributeView.class) != null) {
            Files.setPosixFilePermissions(part, Files.getPosixFilePermissions(target));
        }
    }
}
