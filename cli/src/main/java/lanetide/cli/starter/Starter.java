package lanetide.cli.starter;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Key;

/** A scenario to begin with, every key with its meaning as the reader knows it. */
public final class Starter {
    private static final List<String> SQUADS = List.of("A", "B", "C", "D", "E", "F", "G", "H");

    /** The most squads that it can name. */
    public static final int MOST_SQUADS = SQUADS.size();

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
        key(Block.SCENARIO, "name", quoted(answers.get("name")), "");
        key(Block.SCENARIO, "seed", "1", "");
        open("centre", "the lanes in use");
        key(Block.CENTRE, "lanes", answers.get("lanes"), "  ");
        key(Block.CENTRE, "surface", answers.get("surface"), "  ");
        key(Block.CENTRE, "machines", "1", "  ");
        open("pattern", "the oil pattern, laid on every lane");
        key(Block.PATTERN, "length", answers.get("length"), "  ");
        key(Block.PATTERN, "volume", answers.get("volume"), "  ");
        key(Block.PATTERN, "ratio", answers.get("ratio"), "  ");
        text.append('\n');
        key(Block.SCENARIO, "games", answers.get("games"), "");
        key(Block.SCENARIO, "practice", answers.get("practice"), "");
        key(Block.SCENARIO, "rotation", answers.get("rotation"), "");
        squads();
        bowlers();
        return text.toString();
    }

    private void squads() {
        open("squads", "who plays when, in order of start");
        for (String name : List.of("id", "start", "oil")) {
            remark(Block.SQUAD, name, "  ");
        }
        List<String> starts = new ArrayList<>(List.of(answers.get("starts").split("\\s*,\\s*", -1)));
        for (int i = 0; i < starts.size(); i++) {
            String oil = i == 0 ? "fresh" : answers.get("oil");
            text.append("  - {id: ")
                    .append(SQUADS.get(i % MOST_SQUADS))
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
                    .append("the bowlers, in a CSV table beside this file with the columns name, hand, style, level,"
                            + " cover\n# and, if there are several squads, squad\n");
            text.append("entries: ").append(answers.get("entries")).append('\n');
            return;
        }
        open("field", "the bowlers of every squad, by shares that add up to 100 %");
        key(Block.FIELD, "perSquad", answers.get("bowlers"), "  ");
        key(Block.FIELD, "hands", "{right: 88 %, left: 12 %}", "  ");
        key(Block.FIELD, "styles", "{straight: 20 %, stroker: 35 %, tweener: 30 %, power: 15 %}", "  ");
        key(Block.FIELD, "levels", "{scratch: 30 %, league: 50 %, casual: 20 %}", "  ");
        key(
                Block.FIELD,
                "covers",
                "{plastic: 10 %, urethane: 10 %, weak-reactive: 25 %, medium-reactive: 40 %, strong-reactive: 15 %}",
                "  ");
    }

    private void open(String name, String meaning) {
        text.append("\n# ").append(meaning).append('\n').append(name).append(":\n");
    }

    private void key(Block block, String name, String value, String indent) {
        remark(block, name, indent);
        text.append(indent).append(name).append(": ").append(value).append('\n');
    }

    private void remark(Block block, String name, String indent) {
        Key key =
                block.key(name).orElseThrow(() -> new IllegalStateException("block " + block + " has no key " + name));
        text.append(indent)
                .append("# ")
                .append(name)
                .append(": [")
                .append(key.unit())
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
