package lanetide.cli.fairness;

import java.util.List;
import java.util.Optional;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.rotate.StructureJson;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.words.WearWords;
import lanetide.oilflow.film.ByStretch;
import lanetide.squads.fairness.Bounds;
import lanetide.squads.fairness.Effect;
import lanetide.squads.fairness.Evenness;
import lanetide.squads.fairness.FairnessComparison;
import lanetide.squads.fairness.FairnessResult;
import lanetide.squads.fairness.Remedy;
import lanetide.squads.fairness.SpreadGain;
import lanetide.squads.measure.WhatToMeasure;
import lanetide.squads.model.Event;
import lanetide.squads.study.WearStudy;
import tools.jackson.databind.node.ObjectNode;

/** What {@code fairness} answers, for programs. */
public final class FairnessJson {
    private FairnessJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param found what came of the study
     * @param event what was studied: the scenario's event, or what late changes have made of it
     * @return the JSON text
     */
    public static String write(Reading reading, FairnessAnswer found, Event event) {
        return JsonAnswer.write(tree(reading, found, event));
    }

    /** The answer for the scenario as it is planned, to stand in something larger. */
    public static ObjectNode tree(Reading reading, FairnessAnswer found) {
        return tree(reading, found, reading.scenario().orElseThrow().event());
    }

    private static ObjectNode tree(Reading reading, FairnessAnswer found, Event event) {
        FairnessResult result = found.result();
        Scenario scenario = reading.scenario().orElseThrow();
        ObjectNode answer = JsonAnswer.opening(reading);
        answer.put("verdict", EffectWords.verdict(result.verdict()));
        JsonAnswer.put(answer, "marginPinsPerGame", result.plan().marginPins(), 4);
        answer.put("lanesChange", result.plan().lanesChange());
        answer.put("replications", result.playings());
        answer.put("rounds", result.rounds());
        answer.put("sets", result.sets());
        answer.put("beyondPlaying", result.beyondPlaying());
        result.playingsToDecide()
                .ifPresentOrElse(
                        more -> answer.put("replicationsToDecide", more), () -> answer.putNull("replicationsToDecide"));
        JsonAnswer.putAll(answer, "effects", result.effects(), (node, effect) -> effect(node, effect, found));
        result.cut().ifPresent(cut -> CutJson.write(answer.putObject("cut"), cut));
        JsonAnswer.put(answer, "evenness", result.evenness(), FairnessJson::evenness);
        StructureJson.checks(answer.putObject("structure"), event);
        JsonAnswer.put(answer, "lateChanges", found.late(), FairnessJson::lateChanges);
        JsonAnswer.putAll(
                answer,
                "reasons",
                result.reasons(),
                (node, reason) -> node.put("code", reason.code()).put("text", ReasonWords.of(reason)));
        JsonAnswer.putAll(answer, "wear", found.wear(), FairnessJson::wear);
        JsonAnswer.putAll(answer, "remedies", found.remedies(), FairnessJson::remedy);
        measure(answer, found.measure());
        JsonAnswer.putAssumptions(answer, scenario.assumptions());
        JsonAnswer.putCautions(answer);
        return answer;
    }

    private static void wear(ObjectNode node, WearStudy.Wear wear) {
        node.put("squad", wear.squad());
        node.put("style", wear.style());
        node.put("hand", ConstantName.of(wear.hand()));
        ByStretch boards = wear.boards().inTenths();
        WearWords.FIELDS.forEach((field, part) -> JsonAnswer.put(node, field, part.applyAsDouble(boards), 1));
        ByStretch strikes = wear.strikes().inTenths();
        WearWords.FIELDS.forEach((field, part) ->
                JsonAnswer.put(node, field.replace("Boards", "Strikes"), part.applyAsDouble(strikes), 1));
        JsonAnswer.put(node, "allStrikesCi90", wear.allStrikesCi90(), (ends, interval) -> {
            JsonAnswer.put(ends, "low", interval.low(), 1);
            JsonAnswer.put(ends, "high", interval.high(), 1);
        });
    }

    private static void effect(ObjectNode node, Effect effect, FairnessAnswer found) {
        node.put("kind", EffectWords.kind(effect.kind()));
        node.put("id", effect.id());
        node.put("bowlers", effect.bowlers());
        JsonAnswer.put(node, "advantagePinsPerGame", effect.advantagePins(), 3);
        JsonAnswer.put(node, "standardErrorPins", effect.standardErrorPins(), 4);
        JsonAnswer.put(node, "ci90", effect.ci90(), 3);
        JsonAnswer.put(node, "luck90", effect.luck90(), 3);
        JsonAnswer.put(node, "signShare", effect.signShare(), 3);
        JsonAnswer.put(node, "unfairP", effect.unfairP(), 5);
        Optional<Bounds> bounds = found.bounds();
        JsonAnswer.put(
                node,
                "ifNobodyMoves",
                bounds,
                known -> known.ifNobodyMoves(effect).advantagePins(),
                3);
        JsonAnswer.put(
                node, "ifAllKnow", bounds, known -> known.ifAllKnow(effect).advantagePins(), 3);
        JsonAnswer.put(node, "usualValues", bounds.flatMap(known -> known.asUsual(effect)), Effect::advantagePins, 3);
        node.put("verdict", EffectWords.verdict(effect.verdict()));
    }

    /** Both lists are empty where that was not asked for. */
    private static void measure(ObjectNode answer, Optional<WhatToMeasure> measure) {
        List<WhatToMeasure.HangsOn> hangsOn =
                measure.map(WhatToMeasure::hangsOn).orElse(List.of());
        JsonAnswer.putAll(answer, "hangsOn", hangsOn, (node, one) -> {
            node.put("unknown", one.unknown());
            JsonAnswer.put(node, "sharePercent", 100 * one.share(), 1);
            node.put("rises", one.rises());
        });
        List<WhatToMeasure.Worth> worth = measure.map(WhatToMeasure::worth).orElse(List.of());
        JsonAnswer.putAll(answer, "whatToMeasure", worth, (node, one) -> {
            node.put("measurement", MeasureWords.of(one.measurement()));
            JsonAnswer.put(node, "narrowsPercent", 100 * one.narrows(), 1);
        });
    }

    private static void lateChanges(ObjectNode node, FairnessComparison change) {
        JsonAnswer.put(node, "spreadBeforePins", change.spreadBeforePins(), 3);
        JsonAnswer.put(node, "spreadAfterPins", change.spreadAfterPins(), 3);
        JsonAnswer.put(node, "gain", change.gain(), FairnessJson::gain);
        change.bowledBefore().forEach(node.putArray("bowledBefore")::add);
        JsonAnswer.putAll(node, "groups", change.groups(), (row, group) -> {
            row.put("id", group.id());
            JsonAnswer.put(row, "beforePins", group.beforePins(), 3);
            JsonAnswer.put(row, "afterPins", group.afterPins(), 3);
            JsonAnswer.put(row, "changeCi90", group.changeCi90(), 3);
        });
    }

    private static void remedy(ObjectNode node, Remedy remedy) {
        node.put("kind", RemedyWords.kind(remedy.change()));
        node.put("change", RemedyWords.of(remedy.change()));
        node.put("replications", remedy.playings());
        node.put("underAllSets", remedy.underAllSets());
        JsonAnswer.put(node, "expectedSpreadPins", remedy.spreadPins(), 3);
        JsonAnswer.put(node, "gainPins", remedy.gainPins(), 3);
        JsonAnswer.put(node, "gain", remedy.gain(), FairnessJson::gain);
        JsonAnswer.put(node, "extraMinutes", remedy.extraMinutes(), 2);
        JsonAnswer.put(node, "extraCost", remedy.extraCost(), 2);
        node.put("isChoice", remedy.isChoice());
        node.put("leastRegret", remedy.leastRegret());
    }

    private static void gain(ObjectNode node, SpreadGain gain) {
        JsonAnswer.put(node, "errorPins", gain.errorPins(), 3);
        JsonAnswer.put(node, "ci90", gain.ci90(), 3);
        JsonAnswer.put(node, "shownShare", gain.shownShare(), 3);
        JsonAnswer.put(node, "middlePins", gain.middlePins(), 3);
        JsonAnswer.put(node, "worstPins", gain.worstPins(), 3);
    }

    private static void evenness(ObjectNode node, Evenness even) {
        JsonAnswer.put(node, "spreadPins", even.spreadPins(), 3);
        JsonAnswer.put(node, "meanEnvyPins", even.meanEnvyPins(), 3);
        JsonAnswer.put(node, "jain", even.jain(), 4);
        JsonAnswer.put(node, "gini", even.gini(), 4);
    }
}
