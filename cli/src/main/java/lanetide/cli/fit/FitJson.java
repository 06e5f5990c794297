package lanetide.cli.fit;

import java.util.List;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.squads.fit.FitResult;
import lanetide.squads.fit.FreshLane;
import lanetide.squads.fit.Reading;
import lanetide.squads.fit.Suspicion;
import tools.jackson.databind.node.ObjectNode;

/** What {@code fit} answers, for programs. */
public final class FitJson {
    private static final FitWords WORDS = new FitWords(false);

    private FitJson() {}

    /**
     * Writes the answer.
     *
     * @param answer what came of the fit
     * @return the JSON text
     */
    public static String write(FitAnswer answer) {
        FitResult result = answer.result();
        ObjectNode node = JsonAnswer.opening(answer.reading());
        JsonAnswer.putAll(node, "days", answer.days(), (day, scenario) -> {
            day.put("scenario", scenario.fileName());
            day.put("sha256", scenario.sha256());
            day.put("tapes", scenario.measurements().tapes().size());
            day.put("balls", scenario.measurements().balls().size());
            day.put("scores", scenario.measurements().scores().size());
            day.put("ends", scenario.measurements().ends().size());
        });
        JsonAnswer.putAll(node, "readings", result.checks(), FitJson::check);
        JsonAnswer.putAll(node, "fresh", result.fresh(), FitJson::fresh);
        JsonAnswer.putAll(
                node, "suspicions", result.suspicions(), (one, suspicion) -> suspicion(one, suspicion, answer));
        JsonAnswer.putAll(node, "learnt", result.learnt(), FitJson::learnt);
        JsonAnswer.put(node, "otherLawBefore", result.otherLawBefore(), 4);
        JsonAnswer.put(node, "otherLawAfter", result.otherLawAfter(), 4);
        node.put("sets", result.sets().size());
        JsonAnswer.putAll(node, "changes", answer.changes().map(FitChanges::all).orElse(List.of()), FitJson::change);
        return JsonAnswer.write(node, assumptions(answer.scenario()));
    }

    /** A centre file changes nothing here: a fit always begins with the sets that ship. */
    private static List<Assumption> assumptions(Scenario scenario) {
        return scenario.assumptions().stream()
                .filter(taken -> !taken.name().equals(CentreKeys.CENTRE.path(CentreKeys.FITTED)))
                .toList();
    }

    private static void change(ObjectNode node, FitChanges.Change change) {
        node.put("what", change.what());
        node.put("unit", change.unit());
        said(node.putObject("before"), change.before());
        said(node.putObject("after"), change.after());
    }

    private static void said(ObjectNode node, FitChanges.Said said) {
        JsonAnswer.put(node, "mean", said.mean(), 3);
        JsonAnswer.put(node, "interval", said.interval(), (ends, interval) -> {
            JsonAnswer.put(ends, "low", interval.low(), 3);
            JsonAnswer.put(ends, "high", interval.high(), 3);
        });
    }

    private static void check(ObjectNode node, FitResult.Check check) {
        Reading reading = check.reading();
        node.put("kind", FitWords.kind(reading));
        node.put("where", WORDS.of(reading));
        node.put("unit", FitWords.unit(reading));
        JsonAnswer.put(node, "read", reading.observed(), 3);
        said(node.putObject("expected"), check.before());
        said(node.putObject("fitted"), check.after());
        JsonAnswer.put(node, "missBefore", check.missBefore(), 2);
        JsonAnswer.put(node, "missAfter", check.missAfter(), 2);
    }

    private static void said(ObjectNode node, FitResult.Said said) {
        JsonAnswer.put(node, "mean", said.mean(), 3);
        JsonAnswer.put(node, "deviation", said.deviation(), 3);
    }

    private static void fresh(ObjectNode node, FreshLane lane) {
        node.put("lane", lane.lane());
        node.put("tapes", lane.tapes());
        JsonAnswer.put(node, "ofSheet", lane.ratio(), 4);
        JsonAnswer.put(node, "error", lane.error(), 4);
        JsonAnswer.put(node, "ofSheetFirstThird", lane.headRatio(), 4);
        JsonAnswer.put(node, "ofSheetLastThird", lane.endRatio(), 4);
        node.put("text", FitWords.of(lane));
    }

    private static void suspicion(ObjectNode node, Suspicion suspicion, FitAnswer answer) {
        node.put("day", answer.days().get(suspicion.day()).fileName());
        node.put("text", WORDS.of(suspicion));
        JsonAnswer.put(node, "logLikelihoodRatio", suspicion.logRatio(), 2);
        node.put("named", suspicion.verdict() == Suspicion.Verdict.NAMED);
        node.put("oneOfSeveral", suspicion.verdict() == Suspicion.Verdict.ONE_OF_SEVERAL);
    }

    private static void learnt(ObjectNode node, FitResult.Learnt learnt) {
        node.put("unknown", learnt.unknown().id());
        points(node.putObject("before"), learnt.before());
        points(node.putObject("after"), learnt.after());
        JsonAnswer.put(node, "narrowed", learnt.narrowed(), 4);
    }

    private static void points(ObjectNode node, FitResult.Points points) {
        JsonAnswer.put(node, "low", points.low(), 6);
        JsonAnswer.put(node, "middle", points.middle(), 6);
        JsonAnswer.put(node, "high", points.high(), 6);
    }
}
