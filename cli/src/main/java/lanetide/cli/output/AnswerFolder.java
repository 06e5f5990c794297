package lanetide.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A folder that several answers go to, each as an {@link AnswerFile}. They come to their places when all are written,
 * one after the other: who kills the program just then may find new ones beside old ones, each of them whole.
 */
public final class AnswerFolder {
    private final Path folder;
    private final List<String> names;

    private AnswerFolder(Path folder, List<String> names) {
        this.folder = folder;
        this.names = List.copyOf(names);
    }

    /**
     * Looks whether the folder could be written, before a long run. It is made if only its last part is missing.
     *
     * @param folder where the answers shall go
     * @param names the files that will be written into it
     * @throws CommandFailure if it could not
     */
    static AnswerFolder at(Path folder, List<String> names) {
        Path parent = folder.toAbsolutePath().normalize().getParent();
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw CommandFailure.fileTrouble("The files cannot go to " + folder + ", which is a file; name a folder.");
        }
        if (!Files.exists(folder) && (parent == null || !Files.isDirectory(parent))) {
            throw CommandFailure.fileTrouble(
                    "The files cannot go to " + folder + ": there is no folder " + parent + "; make it first.");
        }
        if (!Files.isWritable(Files.exists(folder) ? folder : parent)) {
            throw CommandFailure.fileTrouble(
                    "The files cannot go to " + folder + ", which may not be written; name another folder.");
        }
        return new AnswerFolder(folder, names);
    }

    /**
     * Writes the files.
     *
     * @param answers what goes into each
     * @throws IllegalArgumentException unless they are those that were announced, in the same order
     */
    public void write(Map<String, String> answers) {
        if (!names.equals(List.copyOf(answers.keySet()))) {
            throw new IllegalArgumentException(answers.keySet() + " are not the files that were announced, " + names);
        }
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw CommandFailure.fileTrouble(
                    "The folder " + folder + " cannot be made (" + ScenarioFile.reason(e) + ").");
        }
        Map<String, AnswerFile> files = new LinkedHashMap<>();
        answers.keySet().forEach(name -> files.put(name, AnswerFile.at(folder.resolve(name))));
        List<AnswerStream> streams = new ArrayList<>();
        try {
            files.forEach((name, file) -> {
                AnswerStream stream = file.open();
                streams.add(stream);
                stream.write(answers.get(name));
            });
            streams.forEach(AnswerStream::commit);
        } finally {
            streams.forEach(AnswerStream::close);
        }
    }
}
