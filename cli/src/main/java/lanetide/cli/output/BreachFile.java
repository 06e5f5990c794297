package lanetide.cli.output;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import lanetide.cli.scenario.value.SourceText;

/**
 * What is left when the program has broken a rule of its own: a copy of the scenario with the command above it, which
 * breaks the rule again. It lies beside the scenario, since tables that this names are read from there.
 */
public final class BreachFile {
    private BreachFile() {}

    /**
     * Writes the file.
     *
     * @param scenario the scenario that was played
     * @param words the command line
     * @param version of the program
     * @param what which rule was broken
     * @return where it is
     * @throws CommandFailure if it cannot be written, or the scenario no longer be read
     */
    public static Path write(Path scenario, List<String> words, String version, String what) {
        String head = "# lanetide " + version + " broke a rule of its own: " + line(what) + ".\n# Command: lanetide "
                + line(String.join(" ", words)) + "\n# Given this file in place of the scenario, it does so again.\n";
        String mark = SourceText.sha256(head.getBytes(StandardCharsets.UTF_8)).substring(0, 8);
        Path file = scenario.resolveSibling("lanetide-breach-" + mark + ".yaml");
        try {
            AnswerFile.at(file).write(head + Files.readString(scenario, StandardCharsets.UTF_8));
            return file;
        } catch (IOException e) {
            throw CommandFailure.fileTrouble(
                    "The scenario " + scenario + " can no longer be read (" + ScenarioFile.reason(e) + ").");
        }
    }

    /** On one line, so that it stays a comment. */
    private static String line(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Zl}\\p{Zp}]", " ");
    }
}
