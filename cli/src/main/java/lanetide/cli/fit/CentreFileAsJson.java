package lanetide.cli.fit;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import lanetide.cli.report.ProgramVersion;
import lanetide.cli.scenario.centre.CentreFields;
import lanetide.cli.scenario.centre.CentreFile;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.GameEnded;
import lanetide.squads.measured.ScoreMade;
import lanetide.squads.measured.TapeTaken;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Writes centre files as JSON, a line for each reading and each set, so that two of them can be compared by eye. */
public final class CentreFileAsJson {
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private final ObjectNode head = JsonNodeFactory.instance.objectNode();
    private final StringBuilder text = new StringBuilder();

    private CentreFileAsJson() {}

    /**
     * Writes a file.
     *
     * @param file what it holds; at least one set
     * @return its text
     */
    public static String write(CentreFile file) {
        return new CentreFileAsJson().text(file);
    }

    private String text(CentreFile file) {
        head.put(CentreFields.FORM, CentreFields.VERSION);
        head.put("program", ProgramVersion.text());
        head.put(CentreFields.STARTED_FROM, file.startedFrom());
        head.put(CentreFields.REFIT, file.refit());
        text.append("{\n");
        head.properties()
                .forEach(field -> text.append(quoted(field.getKey()))
                        .append(": ")
                        .append(field.getValue())
                        .append(",\n"));
        list(CentreFields.DAYS, file.days().stream().map(CentreFileAsJson::day).toList());
        text.append(",\n");
        List<String> unknowns =
                List.copyOf(new TreeSet<>(file.sets().get(0).values().keySet()));
        text.append(quoted(CentreFields.UNKNOWNS))
                .append(": ")
                .append(MAPPER.writeValueAsString(unknowns))
                .append(",\n");
        list(
                CentreFields.SETS,
                file.sets().stream().map(set -> set(set, unknowns)).toList());
        return text.append("\n}\n").toString();
    }

    private static String quoted(String name) {
        return MAPPER.writeValueAsString(name);
    }

    private void list(String name, List<String> items) {
        text.append(quoted(name))
                .append(": [\n")
                .append(String.join(",\n", items))
                .append("\n]");
    }

    private static String day(CentreFile.Day day) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put(CentreFields.SCENARIO, day.scenario());
        node.put(CentreFields.SHA256, day.sha256());
        node.put(CentreFields.EVENT, day.event());
        node.put(CentreFields.PATTERN, day.pattern());
        ArrayNode tapes = node.putArray(CentreFields.TAPES);
        day.measured()
                .tapes()
                .forEach(tape -> tape(tapes.addObject(), tape, day.fresh().contains(tape)));
        ArrayNode balls = node.putArray(CentreFields.BALLS);
        day.measured().balls().forEach(ball -> ball(balls.addObject(), ball));
        ArrayNode scores = node.putArray(CentreFields.SCORES);
        day.measured().scores().forEach(score -> score(scores.addObject(), score));
        if (!day.measured().ends().isEmpty()) {
            ArrayNode ends = node.putArray(CentreFields.ENDS);
            day.measured().ends().forEach(end -> end(ends.addObject(), end));
        }
        return MAPPER.writeValueAsString(node)
                .replace("[{", "[\n{")
                .replace("},{", "},\n{")
                .replace("}]", "}\n]");
    }

    private static void tape(ObjectNode node, TapeTaken tape, boolean fresh) {
        node.put(CentreFields.LANE, tape.lane());
        node.put(CentreFields.SQUAD, tape.when().squad());
        node.put(CentreFields.AFTER, tape.when().afterGame());
        node.put(CentreFields.DISTANCE_M, tape.distanceM());
        node.put(CentreFields.BOARD, tape.board());
        node.put(CentreFields.UNITS, tape.units());
        node.put(CentreFields.ERROR, tape.errorUnits());
        node.put(CentreFields.FRESH, fresh);
        node.put(CentreFields.PLACE, tape.place());
    }

    private static void ball(ObjectNode node, BallThrown ball) {
        ball.lane().ifPresent(lane -> node.put(CentreFields.LANE, lane));
        node.put(CentreFields.SQUAD, ball.when().squad());
        node.put(CentreFields.AFTER, ball.when().afterGame());
        ball.bowler().ifPresent(bowler -> node.put(CentreFields.BOWLER, bowler));
        BallSeen seen = ball.seen();
        put(node, CentreFields.LAYDOWN, seen.laydownBoard());
        put(node, CentreFields.ARROWS, seen.arrowsBoard());
        seen.passed()
                .ifPresent(passed ->
                        node.put(CentreFields.DISTANCE_M, passed.distanceM()).put(CentreFields.PASSED, passed.board()));
        put(node, CentreFields.MET, seen.pinsBoard());
        put(node, CentreFields.SPEED_MPS, ball.speedMps());
        put(node, CentreFields.SPIN_RADPS, ball.spinRadps());
        node.put(CentreFields.ERROR, seen.errorBoards());
        node.put(CentreFields.PLACE, ball.place());
    }

    private static void put(ObjectNode node, String field, OptionalDouble value) {
        value.ifPresent(known -> node.put(field, known));
    }

    private static void score(ObjectNode node, ScoreMade score) {
        node.put(CentreFields.SQUAD, score.squad());
        node.put(CentreFields.GAME, score.game());
        node.put(CentreFields.BOWLER, score.bowler());
        node.put(CentreFields.PINS, score.pins());
        node.put(CentreFields.PLACE, score.place());
    }

    private static void end(ObjectNode node, GameEnded end) {
        node.put(CentreFields.SQUAD, end.squad());
        node.put(CentreFields.GAME, end.game());
        node.put(CentreFields.ENDED_MS, end.endedMs());
        node.put(CentreFields.ERROR, end.errorMs());
        node.put(CentreFields.PLACE, end.place());
    }

    private static String set(ValueSet set, List<String> unknowns) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put(CentreFields.DRAWN_BY, Long.toString(set.seed()));
        ArrayNode values = node.putArray(CentreFields.VALUES);
        unknowns.forEach(unknown -> values.add(set.values().get(unknown)));
        return MAPPER.writeValueAsString(node);
    }
}
