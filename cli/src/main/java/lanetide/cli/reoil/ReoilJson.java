package lanetide.cli.reoil;

import java.util.Optional;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.squads.model.Event;
import lanetide.squads.recondition.Basis;
import lanetide.squads.recondition.CurvePoint;
import lanetide.squads.recondition.EventOiling;
import lanetide.squads.recondition.Interval;
import lanetide.squads.recondition.LeastRegret;
import lanetide.squads.recondition.OilOver;
import lanetide.squads.recondition.OilingSchedules;
import lanetide.squads.recondition.ReoilResult;
import tools.jackson.databind.node.ObjectNode;

/** What {@code reoil} answers, for programs. */
public final class ReoilJson {
    private ReoilJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param result what came of the study
     * @param schedules how often and before which squads to oil, if asked for
     * @return the JSON text
     */
    public static String write(Reading reading, ReoilResult result, Optional<OilingSchedules> schedules) {
        ObjectNode answer = tree(reading, result);
        Event event = reading.scenario().orElseThrow().event();
        schedules.ifPresent(found -> new ScheduleJson(event).write(answer.putObject("schedules"), found));
        return JsonAnswer.write(answer);
    }

    /** The answer, to stand in something larger. */
    public static ObjectNode tree(Reading reading, ReoilResult result) {
        Scenario scenario = reading.scenario().orElseThrow();
        ObjectNode answer = JsonAnswer.opening(reading);
        answer.put("replications", result.plan().replications());
        answer.put("sets", result.sets());
        answer.put("currency", result.plan().costs().currency());
        interval(answer.putObject("recommendation"), result, result.interval(Basis.COST));
        JsonAnswer.putAll(answer, "policies", result.intervals(), (node, interval) -> interval(node, result, interval));
        JsonAnswer.put(answer, "leastRegret", result.leastRegret(), ReoilJson::leastRegret);
        JsonAnswer.putAll(answer, "curve", result.curve(), ReoilJson::point);
        oilOver(answer.putObject("oilOver"), result.oilOver());
        ObjectNode event = answer.putObject("event");
        oiling(event.putObject("asPlanned"), scenario, result.asPlanned());
        oiling(event.putObject("cheapest"), scenario, result.best());
        JsonAnswer.put(answer, "pairAllAtOnce", result.pairAllAtOnce(), 3);
        JsonAnswer.put(answer, "pairAlone", result.pairAlone(), 3);
        JsonAnswer.putAssumptions(answer, ReoilAssumptions.of(scenario));
        JsonAnswer.putCautions(answer);
        return answer;
    }

    private static void interval(ObjectNode node, ReoilResult result, Interval interval) {
        JsonAnswer.put(node, "everyGames", interval.games(), 2);
        JsonAnswer.put(node, "low", interval.low(), 2);
        JsonAnswer.put(node, "high", interval.high(), 2);
        ObjectNode luck = node.putObject("luck90");
        JsonAnswer.put(luck, "low", interval.luckLow(), 2);
        JsonAnswer.put(luck, "high", interval.luckHigh(), 2);
        JsonAnswer.put(node, "flat", interval.flat(), ReoilJson::flat);
        node.put("beyond", interval.beyond());
        node.put("basis", ReoilWords.basis(interval.basis()));
        JsonAnswer.put(node, "costPerGame", interval.costPerGame(), 4);
        JsonAnswer.put(node, "controlBoards", interval.controlBoards(), 2);
        node.put("text", ReoilWords.sentence(result, interval));
    }

    private static void flat(ObjectNode node, Interval.Flat flat) {
        node.put("from", flat.from());
        node.put("to", flat.to());
        JsonAnswer.put(node, "withinCost", flat.withinCost(), 4);
    }

    private static void leastRegret(ObjectNode node, LeastRegret least) {
        node.put("everyGames", least.games());
        JsonAnswer.put(node, "mostRegretPerGame", least.mostRegret(), 4);
    }

    private static void point(ObjectNode node, CurvePoint point) {
        node.put("games", point.games());
        JsonAnswer.put(node, "windowShiftBoards", point.windowShiftBoards(), 3);
        JsonAnswer.put(node, "windowWidthBoards", point.windowWidthBoards(), 3);
        JsonAnswer.put(node, "pocketShare", point.pocketShare(), 4);
        JsonAnswer.put(node, "paceBoardsPerGame", point.paceBoards(), 3);
        JsonAnswer.put(node, "spreadPins", point.spreadPins(), 3);
        JsonAnswer.put(node, "levelPins", point.levelPins(), 3);
        JsonAnswer.put(node, "costPerGame", point.costPerGame(), 4);
    }

    private static void oilOver(ObjectNode node, OilOver over) {
        node.put("games", over.games());
        JsonAnswer.put(node, "stripSpreadPins", over.stripSpreadPins(), 3);
        JsonAnswer.put(node, "overSpreadPins", over.overSpreadPins(), 3);
        JsonAnswer.put(node, "stripCostPerGame", over.stripCostPerGame(), 4);
        JsonAnswer.put(node, "overCostPerGame", over.overCostPerGame(), 4);
        JsonAnswer.put(node, "stripMinutes", over.stripMinutes(), 2);
        JsonAnswer.put(node, "overMinutes", over.overMinutes(), 2);
    }

    private static void oiling(ObjectNode node, Scenario scenario, EventOiling oiling) {
        oiling.squads()
                .forEach(s -> node.withArray("squads")
                        .add(scenario.event().squads().get(s).id()));
        JsonAnswer.put(node, "costPerPair", oiling.costPerPair(), 3);
    }
}
