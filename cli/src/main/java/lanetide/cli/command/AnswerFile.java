package lanetide.cli.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/**
 * A file an answer goes to. It is written beside its final place and moved there in one step, so that a run that fails
 * leaves an older answer as it was.
 */
final class AnswerFile {
    private final Path path;

    private AnswerFile(Path path) {
        this.path = path;
    }

    /**
     * Looks whether the file could be written, before a long run.
     *
     * @param path where the answer shall go
     * @param scenario the file it must not replace
     * @throws CommandFailure if it could not
     */
    static AnswerFile at(Path path, Path scenario) {
        AnswerFile file = at(path);
        if (isSame(path, scenario)) {
            throw CommandFailure.wrongUse("The answer would replace the scenario " + scenario + "; name another file.");
        }
        return file;
    }

    /** The same where no scenario is read. */
    static AnswerFile at(Path path) {
        Path folder = path.toAbsolutePath().getParent();
        if (Files.isDirectory(path) || folder == null) {
            throw CommandFailure.fileTrouble(
                    "The answer cannot go to " + path + ", which is a folder; add a file name.");
        }
        if (!Files.isDirectory(folder)) {
            throw CommandFailure.fileTrouble(
                    "The answer cannot go to " + path + ": there is no folder " + folder + "; make it first.");
        }
        return new AnswerFile(path);
    }

    void write(String answer) {
        byte[] bytes = answer.getBytes(StandardCharsets.UTF_8);
        try {
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                Files.write(path, bytes); // a device or a pipe: there is nothing to protect
            } else {
                replace(Files.exists(path) ? path.toRealPath() : path.toAbsolutePath(), bytes);
            }
        } catch (IOException e) {
            throw CommandFailure.fileTrouble("The answer cannot be written to " + path + " (" + ScenarioFile.reason(e)
                    + "); an older file there is as it was.");
        }
    }

    /**
     * Opens the file for writing bit by bit.
     *
     * @return a stream whose text comes to its place when it is committed
     */
    AnswerStream open() {
        return AnswerStream.to(path);
    }

    Path path() {
        return path;
    }

    private static void replace(Path target, byte[] bytes) throws IOException {
        Path part = partOf(target);
        try {
            Files.write(part, bytes, StandardOpenOption.CREATE_NEW);
            moveIntoPlace(part, target);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /** Where a file is written before it comes to its place. */
    static Path partOf(Path target) {
        return target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
    }

    /** Puts a file that is written into its place in one step. */
    static void moveIntoPlace(Path part, Path target) throws IOException {
        keepPermissions(target, part);
        Files.move(part, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    }

    private static void keepPermissions(Path old, Path part) throws IOException {
        if (Files.exists(old) && Files.getFileAttributeView(old, PosixFileAttributeView.class) != null) {
            Files.setPosixFilePermissions(part, Files.getPosixFilePermissions(old));
        }
    }

    private static boolean isSame(Path path, Path scenario) {
        try {
            return Files.exists(path) && Files.exists(scenario) && Files.isSameFile(path, scenario);
        } catch (IOException e) {
            throw CommandFailure.fileTrouble(
                    "The file " + path + " cannot be looked at (" + ScenarioFile.reason(e) + ").");
        }
    }
}
