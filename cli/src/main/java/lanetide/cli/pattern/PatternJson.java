package lanetide.cli.pattern;

import java.util.List;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.film.PatternMeasures;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.film.TapeReading;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.ExitWindow;
import tools.jackson.databind.node.ObjectNode;

/** What {@code pattern} answers, for programs. */
public final class PatternJson {
    private PatternJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param patterns its patterns
     * @return the JSON text
     */
    public static String write(Reading reading, List<PatternFacts> patterns) {
        Scenario scenario = reading.scenario().orElseThrow();
        ObjectNode answer = JsonAnswer.opening(reading);
        JsonAnswer.putAll(answer, "patterns", patterns, PatternJson::pattern);
        return JsonAnswer.write(answer, PatternAssumptions.of(scenario));
    }

    private static void pattern(ObjectNode node, PatternFacts facts) {
        PatternMeasures measures = facts.measures();
        node.put("id", facts.pattern().id());
        JsonAnswer.put(node, "lengthFt", facts.pattern().lengthM() / LaneGeometry.FOOT_M, 2);
        JsonAnswer.put(node, "volumeMl", facts.pattern().volumeMl(), 3);
        finite(node, "ratio", facts.ratio());
        node.put("lengthBand", ConstantName.of(facts.lengthBand()));
        node.put("volumeBand", ConstantName.of(facts.volumeBand()));
        node.put("tier", ConstantName.of(facts.tier()));
        node.put("tierRight", ConstantName.of(facts.tier(Hand.RIGHT)));
        node.put("tierLeft", ConstantName.of(facts.tier(Hand.LEFT)));
        JsonAnswer.put(node, "exitBoardByRule", facts.exitBoardByRule().orElse(Double.NaN), 2);
        JsonAnswer.put(node, "integratedVolumeMl", measures.volumeMl(), 3);
        node.put("basis", facts.pattern() instanceof SheetPattern ? "sheet" : "tapes");
        node.put("symmetric", facts.pattern().isSymmetric());
        node.put("surface", facts.surface().id());
        JsonAnswer.put(node, "measuredLengthFt", measures.lengthM() / LaneGeometry.FOOT_M, 2);
        finite(node, "measuredRatio", measures.ratio());
        finite(node, "measuredRatioRight", measures.ratioRight());
        finite(node, "measuredRatioLeft", measures.ratioLeft());
        finite(node, "insideOutsideRatio", measures.insideOutsideRatio());
        JsonAnswer.put(node, "meanUnits", measures.meanUnits(), 2);
        bands(node.putObject("bands"), facts.bands());
        JsonAnswer.putAll(node, "tapes", facts.tapes(), PatternJson::tape);
        JsonAnswer.putAll(node, "shape", facts.shape(), PatternJson::tape);
        JsonAnswer.putAll(node, "exits", facts.exits(), PatternJson::exit);
    }

    /** A ratio over a dry outside is infinite, which JSON cannot say: null. */
    private static void finite(ObjectNode node, String field, double ratio) {
        JsonAnswer.put(node, field, Double.isInfinite(ratio) ? Double.NaN : ratio, 2);
    }

    private static void bands(ObjectNode node, PatternBands bands) {
        JsonAnswer.put(node, "shortToFt", bands.shortToM() / LaneGeometry.FOOT_M, 2);
        JsonAnswer.put(node, "longFromFt", bands.longFromM() / LaneGeometry.FOOT_M, 2);
        JsonAnswer.put(node, "lowBelowMl", bands.lowBelowMl(), 2);
        JsonAnswer.put(node, "highAboveMl", bands.highAboveMl(), 2);
        JsonAnswer.put(node, "sportTo", bands.sportTo(), 2);
        JsonAnswer.put(node, "houseFrom", bands.houseFrom(), 2);
    }

    private static void tape(ObjectNode node, TapeReading tape) {
        JsonAnswer.put(node, "distanceFt", tape.distanceM() / LaneGeometry.FOOT_M, 2);
        node.put("board", tape.board());
        JsonAnswer.put(node, "units", tape.units(), 2);
    }

    private static void exit(ObjectNode node, PatternFacts.StyleExit exit) {
        node.put("style", exit.style());
        node.put("hand", ConstantName.of(exit.hand()));
        node.put("cover", PatternFacts.COVER);
        JsonAnswer.put(node, "exitBoard", exit.window(), ExitWindow::exitBoard, 2);
        JsonAnswer.put(node, "exitWindow", exit.window(), PatternJson::window);
    }

    private static void window(ObjectNode node, ExitWindow window) {
        JsonAnswer.put(node, "low", window.lowBoard(), 2);
        JsonAnswer.put(node, "high", window.highBoard(), 2);
    }
}
