package lanetide.cli.schema;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import lanetide.cli.report.ProgramFiles;

/**
 * The fields of a command's answer in JSON, from the table {@code COMMAND.fields} beside this class: {@code path type
 * meaning}, as {@link AnswerSchema} reads them. In place of a type may stand the name of a piece that several answers
 * share; the fields of its own table then stand below the path.
 *
 * @param command the command
 * @param fields the fields in order, those first with which every answer opens
 */
record Answer(String command, List<String> fields) {
    private static final List<String> COMMANDS = List.of(
            "check", "compare", "fairness", "fit", "lines", "pattern", "rotate", "reoil", "simulate", "preview");

    private static final Set<String> PIECES = Set.of("assumption", "interval", "structure");

    static List<Answer> all() {
        return COMMANDS.stream().map(Answer::of).toList();
    }

    private static Answer of(String command) {
        return new Answer(
                command,
                Stream.concat(table("opening"), table(command))
                        .flatMap(Answer::whole)
                        .toList());
    }

    /** The line itself, or those of the piece it names. */
    private static Stream<String> whole(String line) {
        String[] parts = line.split(" ", 3);
        return PIECES.contains(parts[1]) ? table(parts[1]).map(field -> parts[0] + "." + field) : Stream.of(line);
    }

    private static Stream<String> table(String name) {
        return ProgramFiles.text("/lanetide/cli/schema/" + name + ".fields").lines();
    }
}
