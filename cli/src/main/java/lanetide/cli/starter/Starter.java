package lanetide.cli.starter;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.UsualField;

/** A scenario to begin with, every key with its meaning as the reader knows it. */
public final class Starter {
    private static final List<String> SQUADS = List.of("A", "B", "C", "D", "E", "F", "G", "H");

    /** The most squads that it can name. */
    public static final int MAX_SQUADS = SQUADS.size();

    private final Map<String, String> answers;
    private final StringBuilder text = new StringBuilder();

    private Starter(Map<String, String> answers) {
        this.answers = answers;
    }

    /**
     * Writes the scenario.
     *
     * @param answers by question: name, lanes, surface, length, volume, ratio, games, practice, rotation, starts, oil,
     *     bowlers and entries; entries may be empty
     * @return YAML
     */
    public static String write(Map<String, String> answers) {
        return new Starter(answers).write();
    }

    private String write() {
        text.append(
                "# A scenario to begin with. Change what differs at your centre; lines that begin with # are remarks.\n");
        text.append(
                "# All keys and their limits stand in the tables of the documents. An editor completes and checks them, if beside\n");
        text.append(
                "# this file lies what `lanetide schema scenario -o scenario.schema.json` writes and the next line is kept.\n");
        text.append("# yaml-language-server: $schema=scenario.schema.json\n\n");
        key(EventKeys.NAME, quoted(answers.get("name")), "");
        key(EventKeys.SEED, "1", "");
        open("centre", "the lanes in use");
        key(CentreKeys.LANES, answers.get("lanes"), "  ");
        key(CentreKeys.SURFACE, answers.get("surface"), "  ");
        key(CentreKeys.MACHINES, "1", "  ");
        open("pattern", "the oil pattern, laid on every lane");
        key(PatternKeys.LENGTH, answers.get("length"), "  ");
        key(PatternKeys.VOLUME, answers.get("volume"), "  ");
        key(PatternKeys.RATIO, answers.get("ratio"), "  ");
        text.append('\n');
        key(EventKeys.GAMES, answers.get("games"), "");
        key(EventKeys.PRACTICE, answers.get("practice"), "");
        key(EventKeys.MOVES, answers.get("rotation"), "");
        squads();
        bowlers();
        return text.toString();
    }

    private void squads() {
        open("squads", "who plays when, in order of start");
        for (Key<?> key : List.of(EventKeys.SQUAD_ID, EventKeys.START, EventKeys.OIL)) {
            remark(key, "  ");
        }
        List<String> starts = new ArrayList<>(List.of(answers.get("starts").split("\\s*,\\s*", -1)));
        for (int i = 0; i < starts.size(); i++) {
            String oil = i == 0 ? "fresh" : answers.get("oil");
            text.append("  - {id: ")
                    .append(SQUADS.get(i % MAX_SQUADS))
                    .append(", start: ")
                    .append(quoted(starts.get(i).strip()))
                    .append(", oil: ")
                    .append(oil)
                    .append("}\n");
        }
    }

    private void bowlers() {
        if (!answers.get("entries").isEmpty()) {
            text.append("\n# ")
                    .append(
                            "the bowlers, in a CSV table beside this file with the columns name and average, or level, and, if"
                                    + " there\n# are several squads, squad; it may have hand, style and cover, which else are drawn\n");
            text.append("entries: ").append(answers.get("entries")).append('\n');
            return;
        }
        open("field", "the bowlers of every squad, by shares that add up to 100 %");
        key(BowlerKeys.PER_SQUAD, answers.get("bowlers"), "  ");
        key(BowlerKeys.HANDS, UsualField.written(UsualField.HANDS), "  ");
        key(BowlerKeys.STYLES, UsualField.written(UsualField.STYLES), "  ");
        key(BowlerKeys.LEVELS, "{scratch: 30 %, league: 50 %, casual: 20 %}", "  ");
        key(BowlerKeys.COVERS, UsualField.written(UsualField.COVERS), "  ");
    }

    private void open(String name, String meaning) {
        text.append("\n# ").append(meaning).append('\n').append(name).append(":\n");
    }

    private void key(Key<?> key, String value, String indent) {
        remark(key, indent);
        text.append(indent).append(key.name()).append(": ").append(value).append('\n');
    }

    private void remark(Key<?> key, String indent) {
        text.append(indent)
                .append("# ")
                .append(key.name())
                .append(": [")
                .append(key.form().inWords())
                .append("] ")
                .append(key.meaning())
                .append("; typical ")
                .append(key.typical())
                .append('\n');
    }

    /** A text as a double-quoted scalar of YAML. */
    private static String quoted(String value) {
        return '"' + value.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }
}
