package lanetide.cli.starter;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.key.CutKeys;
import lanetide.cli.scenario.key.DrawKeys;
import lanetide.cli.scenario.key.EntryListKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.UsualField;

/** A scenario to begin with, every key with its meaning as the reader knows it. */
public final class Starter {
    private static final List<String> SQUADS = List.of("A", "B", "C", "D", "E", "F", "G", "H");

    /** What an answer about the draw means in a scenario. */
    private static final Map<String, String> DRAWS = Map.of("groups", "named", "squads", "drawn");

    private static final Pattern NUMBER = Pattern.compile("\\d{1,4}");
    private static final int USUAL_SEEDS = 4;

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
     * @param answers by question; entries, partners, draw, cut and finals are empty where there are none
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
        draw();
        cut();
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
            entries();
            return;
        }
        open("field", "the bowlers of every squad, by shares that add up to 100 %");
        key(BowlerKeys.PER_SQUAD, answers.get("bowlers"), "  ");
        key(BowlerKeys.HANDS, UsualField.written(UsualField.HANDS), "  ");
        key(BowlerKeys.STYLES, UsualField.written(UsualField.STYLES), "  ");
        key(BowlerKeys.LEVELS, "{scratch: 30 %, league: 50 %, casual: 20 %}", "  ");
        key(BowlerKeys.COVERS, UsualField.written(UsualField.COVERS), "  ");
    }

    private void entries() {
        if (answers.get("partners").isEmpty()) {
            text.append("entries: ").append(answers.get("entries")).append('\n');
            return;
        }
        text.append("# bowlers of one name in the column of partners share a pair, and their pins are added\n");
        text.append("entries:\n");
        key(EntryListKeys.FILE, answers.get("entries"), "  ");
        text.append("  columns:\n");
        key(EntryListKeys.PARTNERS, quoted(answers.get("partners")), "    ");
    }

    private void draw() {
        if (answers.get("draw").isEmpty() || answers.get("entries").isEmpty()) {
            return;
        }
        open("draw", "what the lot decides, and what it spreads evenly");
        String squads = answers.get("draw").replaceFirst("^into ", "");
        key(DrawKeys.SQUADS, DRAWS.getOrDefault(squads, squads), "  ");
        key(DrawKeys.HANDS, "even", "  ");
        key(DrawKeys.STYLES, "even", "  ");
        key(DrawKeys.AVERAGES, "even", "  ");
    }

    private void cut() {
        String number = answers.get("cut");
        if (number.isEmpty()) {
            return;
        }
        open("cut", "who goes on, by the totals over all squads; who is listed in several squads is one person");
        key(number.endsWith("%") ? CutKeys.SHARE : CutKeys.PLACES, number, "  ");
        key(CutKeys.TIES, "last-game", "  ");
        key(CutKeys.HANDICAP, "counted", "  ");
        key(CutKeys.COUNTS, answers.get("counts"), "  ");
        if (!answers.get("finals").isEmpty()) {
            finals(answers.get("finals"));
        }
    }

    private void finals(String form) {
        text.append("  # ").append(CutKeys.FINALS.meaning()).append("\n  finals:\n");
        key(CutKeys.IS_ROUND_ROBIN, form, "    ");
        key(CutKeys.FINALS_START, quoted(answers.get("finals-start")), "    ");
        key(CutKeys.MATCH_GAMES, "1", "    ");
        if (form.equals("head-to-head")) {
            key(CutKeys.MATCHES, stepladder(), "    ");
        } else {
            key(CutKeys.BONUS, "30 pins", "    ");
        }
    }

    /** The two worst seeds meet, and each winner the next better one; of a share the best four. */
    private String stepladder() {
        String number = answers.get("cut");
        int seeds = NUMBER.matcher(number).matches() ? Integer.parseInt(number) : USUAL_SEEDS;
        StringBuilder rows = new StringBuilder("[[" + (seeds - 1) + "-" + seeds + "]");
        for (int match = 1; match < seeds - 1; match++) {
            rows.append(", [")
                    .append(seeds - 1 - match)
                    .append("-w")
                    .append(match)
                    .append(']');
        }
        return rows.append(']').toString();
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
