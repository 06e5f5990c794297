package lanetide.cli.output;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A file an answer goes to. It is written beside its final place and moved there in one step, so that a run that fails
 * leaves an older answer as it was.
 */
public final class AnswerFile {
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
        Path folder = path.toAbsolutePath().getParent();
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
        return new AnswerFile(path);
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
