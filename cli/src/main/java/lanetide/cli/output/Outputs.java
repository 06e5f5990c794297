package lanetide.cli.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lanetide.cli.scenario.Reading;

/**
 * All files that a run writes. Each is looked at before the run begins: it can be written, it is no second name of
 * another one, and it is none of the files that the run reads. Files are told apart by what they are, not by how they
 * are spelled: links and roundabout paths lead to the same file.
 */
public final class Outputs {
    private final Map<String, Path> files = new LinkedHashMap<>();

    /**
     * Takes a file to be written.
     *
     * @param name the option that asks for it
     * @throws CommandFailure if it could not be written, or another one is the same
     */
    public AnswerFile file(String name, Path path) {
        AnswerFile file = AnswerFile.at(path);
        add(name, path);
        return file;
    }

    /**
     * Takes a folder to be written.
     *
     * @param names the files in it
     * @throws CommandFailure if it could not be written, or a file in it is the same as another one
     */
    public AnswerFolder folder(Path path, List<String> names) {
        AnswerFolder folder = AnswerFolder.at(path, names);
        names.forEach(name -> add(name, path.resolve(name)));
        return folder;
    }

    /**
     * Keeps what was read from being written over.
     *
     * @param reading a scenario with the files that it names; looked at before anything is played
     * @throws CommandFailure if a file to be written is one of them
     */
    public void keep(Reading reading) {
        Path scenario = reading.inputs().get(0);
        keep(reading.inputs(), input -> input.equals(scenario) ? "the scenario " + input : readFor(input));
    }

    /**
     * Keeps other files from being written over.
     *
     * @param inputs what is read
     * @throws CommandFailure if a file to be written is one of them
     */
    public void keep(List<Path> inputs) {
        keep(inputs, Outputs::readFor);
    }

    private static String readFor(Path input) {
        return input + ", which is read for it";
    }

    private void keep(List<Path> inputs, Function<Path, String> words) {
        for (Path output : files.values()) {
            for (Path input : inputs) {
                if (Files.isRegularFile(input) && isSame(output, input)) {
                    throw CommandFailure.wrongUse(
                            "The answer would replace " + words.apply(input) + "; name another file.");
                }
            }
        }
    }

    private void add(String name, Path path) {
        files.forEach((other, taken) -> {
            if (isSame(taken, path)) {
                throw CommandFailure.wrongUse(
                        other + " and " + name + " name the same file; name another for one of them.");
            }
        });
        files.put(name, path);
    }

    private static boolean isSame(Path one, Path other) {
        try {
            if (Files.exists(one) && Files.exists(other)) {
                return Files.isSameFile(one, other);
            }
            return place(one).equals(place(other));
        } catch (IOException e) {
            throw CommandFailure.fileTrouble(
                    "The files " + one + " and " + other + " cannot be looked at (" + ScenarioFile.reason(e) + ").");
        }
    }

    /** Where a file is or would be, whatever links lead to its folder. */
    private static Path place(Path path) throws IOException {
        Path target = AnswerFile.target(path);
        Path folder = target.toAbsolutePath().getParent();
        return folder != null && Files.isDirectory(folder)
                ? folder.toRealPath().resolve(target.getFileName())
                : target.toAbsolutePath().normalize();
    }
}
