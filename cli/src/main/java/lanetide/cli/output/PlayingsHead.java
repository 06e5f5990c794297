package lanetide.cli.output;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.notice.Notices;

/**
 * What a file of playings says of itself: all that what they give hangs on, a line each, a name before the colon.
 *
 * @param lines the lines
 */
public record PlayingsHead(List<String> lines) {
    private static final String PROGRAM = "program";
    private static final String COMMAND = "command";
    private static final String OPTION = "--";

    /** Copies the list. */
    public PlayingsHead {
        lines = List.copyOf(lines);
    }

    /**
     * The head of what a run plays.
     *
     * @param program version of the program
     * @param command name of the command
     * @param readings the scenarios that it plays
     * @param options values of its options that playings hang on, by name
     * @return the head
     */
    public static PlayingsHead of(String program, String command, List<Reading> readings, Map<String, String> options) {
        List<String> lines = new ArrayList<>(List.of(PlayingsText.FORM));
        lines.add(line(PROGRAM, program));
        lines.add(line(COMMAND, command));
        for (Reading reading : readings) {
            lines.add(line("scenario", reading.sha256().orElseThrow()));
            lines.add(
                    line("seed", String.valueOf(reading.scenario().orElseThrow().seed())));
            reading.namedFiles().forEach((name, sha256) -> lines.add(line("file " + name, sha256)));
        }
        options.forEach((name, value) -> lines.add(line(name, value)));
        return new PlayingsHead(lines);
    }

    private static String line(String name, String value) {
        return Notices.printable(name + ": " + value);
    }

    /**
     * Looks whether a file holds playings of the same.
     *
     * @param file the file
     * @param other its head
     * @throws CommandFailure if it does not
     */
    void requireSame(Path file, List<String> other) {
        if (other.equals(lines)) {
            return;
        }
        String mine = firstWithout(lines, other);
        String its = firstWithout(other, lines);
        throw CommandFailure.wrongUse(difference(file, its, mine) + " Name another file.");
    }

    private static String firstWithout(List<String> lines, List<String> others) {
        return lines.stream().filter(line -> !others.contains(line)).findFirst().orElse("");
    }

    private static String difference(Path file, String its, String mine) {
        String name = (mine.isEmpty() ? its : mine).split(": ", 2)[0];
        if (name.equals(PROGRAM)) {
            return file + " was begun by lanetide " + value(its) + ", and this is " + value(mine)
                    + ", which may play otherwise.";
        }
        if (name.equals(COMMAND)) {
            return file + " was begun by lanetide " + value(its) + ", and this is " + value(mine) + ".";
        }
        if (name.equals("seed") || name.startsWith(OPTION)) {
            return file + " was begun with " + name + " " + value(its) + ", and here it is " + value(mine) + ".";
        }
        return file + " holds playings of another scenario, or of this one before it or a file of it was changed.";
    }

    private static String value(String line) {
        return line.isEmpty() ? "left out" : line.substring(line.indexOf(": ") + 2);
    }
}
