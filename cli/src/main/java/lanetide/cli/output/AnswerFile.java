package lanetide.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import lanetide.cli.scenario.value.ReservedNames;

/**
 * A file an answer goes to. It is written beside its final place and moved there in one step, so that a run that fails
 * leaves an older answer as it was.
 */
public final class AnswerFile {
    /** As many links may lead to a file; more go in a circle (Linux follows as many). */
    private static final int MAX_LINKS = 40;

    private final Path path;

    private AnswerFile(Path path) {
        this.path = path;
    }

    /**
     * Looks whether the file could be written, before a long run.
     *
     * @param path where the answer shall go
     * @throws CommandFailure if it could not
     */
    static AnswerFile at(Path path) {
        Path target = target(path);
        Path folder = target.toAbsolutePath().getParent();
        if (Files.isDirectory(path) || folder == null) {
            throw CommandFailure.fileTrouble(
                    "The answer cannot go to " + path + ", which is a folder; add a file name.");
        }
        if (!Files.isDirectory(folder)) {
            throw CommandFailure.fileTrouble(
                    "The answer cannot go to " + path + ": there is no folder " + folder + "; make it first.");
        }
        if (!Files.isWritable(isDevice(path) ? path : folder)) {
            throw CommandFailure.fileTrouble("The answer cannot go to " + path + ": you may not write "
                    + (isDevice(path) ? "it" : "into its folder") + "; name another one.");
        }
        requirePossibleName(target);
        return new AnswerFile(target);
    }

    /** Where a path leads: through links to the file that they name, whether it is there or not. */
    static Path target(Path path) {
        Path target = path;
        for (int links = 0; Files.isSymbolicLink(target); links++) {
            if (links == MAX_LINKS) {
                throw CommandFailure.fileTrouble(
                        "The answer cannot go to " + path + ", a link that leads to no file; name another one.");
            }
            try {
                target = target.resolveSibling(Files.readSymbolicLink(target));
            } catch (IOException e) {
                throw CommandFailure.fileTrouble(
                        "The link " + target + " cannot be followed (" + ScenarioFile.reason(e) + ").");
            }
        }
        return target;
    }

    /** A name may be too long, or hold what the system does not allow, which it tells when it looks for the file. */
    private static void requirePossibleName(Path target) {
        boolean onWindows = target.getFileSystem().getSeparator().equals("\\");
        if (onWindows && ReservedNames.isReserved(target.getFileName().toString())) {
            throw CommandFailure.fileTrouble("The answer cannot go to " + target
                    + ": Windows gives that name to a device, or leaves its end out; name another one.");
        }
        try {
            Files.readAttributes(target, BasicFileAttributes.class);
        } catch (NoSuchFileException e) {
            return; // As it may be: it will be made.
        } catch (IOException e) {
            throw CommandFailure.fileTrouble(
                    "The answer cannot go to " + target + " (" + ScenarioFile.reason(e) + "); name another one.");
        }
    }

    /** Whether a path is a device or a pipe: there is nothing to protect, and nothing to put beside it. */
    public static boolean isDevice(Path path) {
        return Files.exists(path) && !Files.isRegularFile(path);
    }

    public void write(String answer) {
        try (AnswerStream stream = open()) {
            stream.write(answer);
            stream.commit();
        }
    }

    /**
     * Opens the file for writing bit by bit.
     *
     * @return a stream whose text comes to its place when it is committed
     */
    public AnswerStream open() {
        return AnswerStream.to(path);
    }

    public Path path() {
        return path;
    }
}
