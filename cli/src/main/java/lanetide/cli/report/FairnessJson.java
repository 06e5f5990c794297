package lanetide.cli.report;

import java.util.List;
import java.util.OptionalLong;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Remedy;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What {@code fairness} answers, for programs. */
public final class FairnessJson {
    private FairnessJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param result what came of the study
     * @param remedies changes that could mend it; empty if none were tried
     * @return the JSON text
     */
    public static String write(Reading reading, FairnessResult result, List<Remedy> remedies) {
        return JsonAnswer.write(tree(reading, result, remedies));
    }

    /** The answer, to stand in something larger. */
    public static ObjectNode tree(Reading reading, FairnessResult result, List<Remedy> remedies) {
        Scenario scenario = reading.scenario().orElseThrow();
        ObjectNode answer = JsonAnswer.opening(reading, OptionalLong.of(scenario.seed()));
        answer.put("verdict", EffectWords.verdict(result.verdict()));
        JsonAnswer.put(answer, "marginPinsPerGame", result.plan().marginPins(), 4);
        answer.put("lanesChange", result.plan().lanesChange());
        answer.put("replications", result.playings());
        answer.put("rounds", result.rounds());
        result.playingsToDecide()
                .ifPresentOrElse(
                        more -> answer.put("replicationsToDecide", more), () -> answer.putNull("replicationsToDecide"));
        result.effects().forEach(effect -> effect(answer.withArray("effects").addObject(), effect));
        evenness(answer, result);
        StructureJson.checks(answer.putObject("structure"), scenario.event());
        ArrayNode reasons = answer.putArray("reasons");
        result.reasons()
                .forEach(
                        reason -> reasons.addObject().put("code", reason.code()).put("text", reason.text()));
        ArrayNode changes = answer.putArray("remedies");
        remedies.forEach(remedy -> remedy(changes.addObject(), remedy));
        SimulateJson.assumptions(answer.putArray("assumptions"), scenario.assumptions());
        Cautions.ALL.forEach(answer.putArray("cautions")::add);
        return answer;
    }

    private static void effect(ObjectNode node, Effect effect) {
        node.put("kind", EffectWords.kind(effect.kind()));
        node.put("id", effect.id());
        node.put("bowlers", effect.bowlers());
        JsonAnswer.put(node, "advantagePinsPerGame", effect.advantagePins(), 3);
        JsonAnswer.put(node, "standardErrorPins", effect.standardErrorPins(), 4);
        ObjectNode interval = node.putObject("ci90");
        JsonAnswer.put(interval, "low", effect.ci90().low(), 3);
        JsonAnswer.put(interval, "high", effect.ci90().high(), 3);
        JsonAnswer.put(node, "unfairP", effect.unfairP(), 5);
        node.put("verdict", EffectWords.verdict(effect.verdict()));
    }

    private static void remedy(ObjectNode node, Remedy remedy) {
        node.put("change", remedy.change());
        JsonAnswer.put(node, "expectedSpreadPins", remedy.spreadPins(), 3);
        JsonAnswer.put(node, "gainPins", remedy.gainPins(), 3);
        JsonAnswer.put(node, "gainErrorPins", remedy.gainErrorPins(), 3);
        JsonAnswer.put(node, "extraMinutes", remedy.extraMinutes(), 2);
        JsonAnswer.put(node, "extraCost", remedy.extraCost(), 2);
        node.put("isChoice", remedy.isChoice());
    }

    private static void evenness(ObjectNode answer, FairnessResult result) {
        result.evenness()
                .ifPresentOrElse(
                        even -> {
                            ObjectNode node = answer.putObject("evenness");
                            JsonAnswer.put(node, "spreadPins", even.spreadPins(), 3);
                            JsonAnswer.put(node, "meanEnvyPins", even.meanEnvyPins(), 3);
                            JsonAnswer.put(node, "jain", even.jain(), 4);
                            JsonAnswer.put(node, "gini", even.gini(), 4);
                        },
                        () -> answer.putNull("evenness"));
    }
}
