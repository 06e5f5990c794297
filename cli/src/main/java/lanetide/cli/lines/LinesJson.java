package lanetide.cli.lines;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.NearestLine;
import lanetide.oilflow.line.PlayedLine;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What {@code lines} answers, for programs. Where no line meets the pocket, its numbers are null. */
public final class LinesJson {

    private LinesJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param lines the lines, for each pattern by its scenario
     * @return the JSON text
     */
    public static String write(Reading reading, Map<Scenario, List<StartLine>> lines) {
        ObjectNode answer = JsonAnswer.opening(reading);
        ArrayNode nodes = answer.putArray("lines");
        lines.forEach((scenario, of) -> of.forEach(line -> line(nodes.addObject(), scenario, line)));
        return JsonAnswer.write(
                answer,
                LinesAssumptions.of(
                        reading.scenario().orElseThrow(),
                        lines.values().stream().flatMap(List::stream).toList()));
    }

    private static void line(ObjectNode node, Scenario scenario, StartLine start) {
        node.put("pattern", scenario.event().pattern().id());
        node.put("surface", start.surface().id());
        node.put("style", start.kind().style().id());
        node.put("hand", ConstantName.of(start.kind().hand()));
        node.put("cover", start.kind().cover().id());
        node.put("level", start.kind().level().id());
        node.put("basis", start.basisName());
        Optional<PlayedLine> line = start.line();
        JsonAnswer.put(node, "laydownBoard", line, played -> played.line().laydownBoard(), 2);
        JsonAnswer.put(node, "arrowsBoard", line, played -> played.line().arrowsBoard(), 2);
        JsonAnswer.put(
                node,
                "launchAngleDeg",
                line,
                played -> StrictMath.toDegrees(played.line().launchRad()),
                3);
        JsonAnswer.put(node, "exitBoard", line, played -> played.path().exitBoard(), 2);
        shot(node, line);
        JsonAnswer.put(node, "ballChange", start.change(), LinesJson::change);
        JsonAnswer.put(node, "nearest", start.nearest(), LinesJson::nearest);
    }

    private static void shot(ObjectNode node, Optional<PlayedLine> line) {
        ObjectNode window = node.putObject("exitWindow");
        JsonAnswer.put(window, "low", line, played -> played.window().lowBoard(), 2);
        JsonAnswer.put(window, "high", line, played -> played.window().highBoard(), 2);
        ObjectNode breakpoint = node.putObject("breakpoint");
        JsonAnswer.put(breakpoint, "board", line, played -> played.path().breakpointBoard(), 2);
        JsonAnswer.put(breakpoint, "distanceFt", line, played -> played.path().breakpointM() / LaneGeometry.FOOT_M, 1);
        JsonAnswer.put(
                node,
                "entryAngleDeg",
                line,
                played -> StrictMath.toDegrees(played.path().entryAngleRad()),
                2);
        JsonAnswer.put(node, "speedAtPinsMph", line, played -> played.path().speedAtPinsMps() / Release.MPH_MPS, 2);
        JsonAnswer.put(node, "pocketShare", line, played -> played.quality().pocketShare(), 4);
        JsonAnswer.put(node, "strikeShare", line, played -> played.quality().strikeShare(), 4);
        JsonAnswer.put(node, "missRoomBoards", line, played -> played.missRoom().totalBoards(), 2);
        ObjectNode room = node.putObject("missRoom");
        JsonAnswer.put(room, "outsideBoards", line, played -> played.missRoom().outsideBoards(), 2);
        JsonAnswer.put(room, "insideBoards", line, played -> played.missRoom().insideBoards(), 2);
    }

    private static void nearest(ObjectNode node, NearestLine nearest) {
        JsonAnswer.put(node, "laydownBoard", nearest.line().laydownBoard(), 2);
        JsonAnswer.put(node, "arrowsBoard", nearest.line().arrowsBoard(), 2);
        JsonAnswer.put(node, "missBoards", nearest.missBoards(), 2);
        node.put("reason", ConstantName.of(nearest.reason()).replace('_', '-'));
    }

    private static void change(ObjectNode node, BallChange change) {
        node.put("cover", change.cover().id());
        node.put("strength", change.stronger() ? "stronger" : "weaker");
        JsonAnswer.put(node, "laydownBoard", change.line().laydownBoard(), 2);
        JsonAnswer.put(node, "arrowsBoard", change.line().arrowsBoard(), 2);
        JsonAnswer.put(node, "strikeShare", change.strikeShare(), 4);
        JsonAnswer.put(node, "gain", change.gain(), 4);
    }
}
