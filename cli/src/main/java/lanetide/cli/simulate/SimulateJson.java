package lanetide.cli.simulate;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.LaneStop;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.result.WaitCause;
import lanetide.squads.study.CutStatistics;
import lanetide.squads.study.Precision;
import lanetide.squads.study.SquadStatistics;
import lanetide.squads.study.StudyResult;
import lanetide.squads.study.TeamStatistics;
import lanetide.squads.study.TimeSpread;
import lanetide.squads.study.TimetableStatistics;
import lanetide.squads.study.WindowStudy;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What {@code simulate} answers, for programs. */
public final class SimulateJson {
    private SimulateJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param study what came of playing it
     * @return the JSON text
     */
    public static String write(Reading reading, StudyResult study) {
        return JsonAnswer.write(tree(reading, study));
    }

    /**
     * The answer, to stand in something larger.
     *
     * @param reading the scenario as it was read, without errors
     * @param study what came of playing it
     * @return the JSON object
     */
    public static ObjectNode tree(Reading reading, StudyResult study) {
        Scenario scenario = reading.scenario().orElseThrow();
        ObjectNode answer = JsonAnswer.opening(reading);
        answer.put("replications", study.replications());
        answer.put("sets", study.sets());
        answer.put("shots", study.first().shots());
        JsonAnswer.put(answer, "untilHalfWidth", study.precision(), SimulateJson::precision);
        squads(answer.putArray("squads"), study);
        JsonAnswer.putAll(answer, "timetable", study.timetable(), SimulateJson::entry);
        JsonAnswer.putAll(answer, "stops", study.first().stops(), SimulateJson::stop);
        lanes(answer.putArray("lanes"), study.first().lanes());
        JsonAnswer.putAll(answer, "lineMoves", study.moves(), SimulateJson::move);
        study.cut().ifPresent(cut -> cut(answer.putObject("cut"), cut));
        if (!study.teams().isEmpty()) {
            JsonAnswer.putAll(answer, "teams", study.teams(), SimulateJson::team);
        }
        oil(answer.putObject("oil"), study.first().oil());
        JsonAnswer.putAssumptions(answer, scenario.assumptions());
        JsonAnswer.putCautions(answer);
        return answer;
    }

    private static void cut(ObjectNode node, CutStatistics cut) {
        JsonAnswer.put(node, "scorePins", cut.scorePins(), 2);
        JsonAnswer.put(node, "scoreCi95", cut.scoreCi95(), SimulateJson::interval);
        JsonAnswer.putAll(node, "seeds", cut.seeds(), (row, seed) -> {
            row.put("seed", seed.seed());
            JsonAnswer.put(row, "firstShare", seed.firstShare(), 4);
            JsonAnswer.put(row, "firstCi95", seed.firstCi95(), SimulateJson::share);
            JsonAnswer.put(row, "meanGame", seed.meanGame(), 2);
        });
        node.put(
                "finalsEnd", cut.end().map(end -> TimeOfDay.write(end.meanMs())).orElse(null));
    }

    private static void team(ObjectNode node, TeamStatistics team) {
        node.put("name", team.name());
        node.put("bowlers", team.bowlers());
        JsonAnswer.put(node, "totalPins", team.totalPins(), 2);
        JsonAnswer.put(node, "totalCi95", team.totalCi95(), SimulateJson::interval);
        JsonAnswer.put(node, "place", team.place(), 2);
        JsonAnswer.put(node, "firstShare", team.firstShare(), 4);
        JsonAnswer.put(node, "firstCi95", team.firstCi95(), SimulateJson::share);
    }

    private static void share(ObjectNode ends, ConfidenceInterval found) {
        JsonAnswer.put(ends, "low", found.low(), 4);
        JsonAnswer.put(ends, "high", found.high(), 4);
    }

    private static void squads(ArrayNode squads, StudyResult study) {
        for (int i = 0; i < study.squads().size(); i++) {
            SquadStatistics statistics = study.squads().get(i);
            SquadResult first = study.first().squads().get(i);
            ObjectNode node = squads.addObject();
            node.put("id", statistics.squad());
            node.put("start", TimeOfDay.write(first.startMs()));
            node.put("end", TimeOfDay.write(first.endMs()));
            node.put("earliestEnd", TimeOfDay.write(statistics.earliestEndMs()));
            node.put("latestEnd", TimeOfDay.write(statistics.latestEndMs()));
            node.put("games", statistics.meanByGame().size());
            node.put("bowlers", first.bowlers().size());
            JsonAnswer.putAll(node, "results", first.bowlers(), SimulateJson::result);
            JsonAnswer.put(node, "meanScore", statistics.meanScore(), 2);
            JsonAnswer.put(node, "meanScoreCi95", statistics.meanScoreCi95(), SimulateJson::interval);
            JsonAnswer.put(node, "luckCi95", statistics.luckCi95(), SimulateJson::interval);
            ArrayNode byGame = node.putArray("meanScoreByGame");
            statistics.meanByGame().forEach(mean -> byGame.add(JsonAnswer.rounded(mean, 2)));
            pace(node, statistics.pace());
        }
    }

    /** A bowler, with the score sheet of each game. */
    private static void result(ObjectNode node, BowlerResult bowler) {
        node.put("id", bowler.bowler().id());
        node.put("group", bowler.group());
        bowler.bowler().partners().ifPresent(name -> node.put("partners", name));
        node.put("level", bowler.bowler().level().id());
        node.put("handicapPins", bowler.bowler().handicapPins());
        bowler.scores().forEach(node.putArray("scores")::add);
        bowler.sheets().forEach(node.putArray("sheets")::add);
        node.put("ballChanges", bowler.ballChanges());
    }

    private static void precision(ObjectNode node, Precision precision) {
        JsonAnswer.put(node, "wantedPins", precision.wantedPins(), 3);
        JsonAnswer.put(node, "reachedPins", precision.reachedPins(), 3);
        node.put("met", precision.met());
        node.put("projectedReplications", precision.projected());
    }

    private static void move(ObjectNode node, WindowStudy.Move move) {
        node.put("squad", move.moment().squad());
        node.put("afterGame", move.moment().afterGame());
        node.put("style", move.style());
        node.put("hand", ConstantName.of(move.hand()));
        JsonAnswer.put(node, "movedBoards", move.boards(), 2);
        JsonAnswer.put(node, "ci90", move.ci90(), SimulateJson::interval);
    }

    private static void stop(ObjectNode node, LaneStop stop) {
        node.put("lane", stop.lane());
        node.put("kind", ConstantName.of(stop.kind()));
        node.put("start", TimeOfDay.write(stop.startMs()));
        node.put("end", TimeOfDay.write(stop.endMs()));
    }

    private static void pace(ObjectNode node, PaceKept pace) {
        JsonAnswer.put(node, "paceMinutesPerBowlerGame", pace.minutesPerBowlerGame(), 3);
        ObjectNode waited = node.putObject("waitedMinutesPerBowlerGame");
        for (WaitCause cause : WaitCause.values()) {
            JsonAnswer.put(waited, camelCase(cause), pace.minutesWaited(cause), 3);
        }
    }

    private static String camelCase(WaitCause cause) {
        String[] words = ConstantName.of(cause).split("_", -1);
        StringBuilder name = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            name.append(words[i].substring(0, 1).toUpperCase(Locale.ROOT)).append(words[i].substring(1));
        }
        return name.toString();
    }

    private static void interval(ObjectNode node, ConfidenceInterval interval) {
        JsonAnswer.put(node, "low", interval.low(), 2);
        JsonAnswer.put(node, "high", interval.high(), 2);
    }

    private static void entry(ObjectNode node, TimetableStatistics entry) {
        node.put("squad", entry.squad());
        node.put("what", ConstantName.of(entry.what()));
        node.put("game", entry.game());
        time(node, "start", entry.start());
        time(node, "end", entry.end());
    }

    private static void time(ObjectNode node, String field, TimeSpread time) {
        node.put(field, TimeOfDay.write(time.meanMs()));
        ObjectNode range = node.putObject(field + "Range90");
        range.put("low", TimeOfDay.write(time.lowMs()));
        range.put("high", TimeOfDay.write(time.highMs()));
    }

    private static void lanes(ArrayNode lanes, List<LaneState> states) {
        Map<Integer, List<LaneState>> byLane =
                states.stream().collect(Collectors.groupingBy(LaneState::lane, TreeMap::new, Collectors.toList()));
        byLane.forEach((lane, games) -> {
            ObjectNode node = lanes.addObject();
            node.put("lane", lane);
            JsonAnswer.putAll(node, "games", games, SimulateJson::game);
        });
    }

    private static void game(ObjectNode node, LaneState state) {
        node.put("squad", state.squad());
        node.put("afterGame", state.afterGame());
        node.put("gamesOnOil", state.gamesOnOil());
        JsonAnswer.put(node, "volumeMl", state.volumeMl(), 3);
        JsonAnswer.put(node, "headUnits", state.headUnits(), 2);
        JsonAnswer.put(node, "headUnitsLow", state.headUnitsLow(), 2);
        JsonAnswer.put(node, "carrydownMl", state.carrydownMl(), 4);
        JsonAnswer.putAll(node, "windows", state.windows(), SimulateJson::window);
    }

    private static void window(ObjectNode node, StyleWindow window) {
        node.put("style", window.style());
        node.put("hand", ConstantName.of(window.hand()));
        JsonAnswer.put(node, "low", window.boards(), StyleWindow.Boards::low, 2);
        JsonAnswer.put(node, "high", window.boards(), StyleWindow.Boards::high, 2);
        JsonAnswer.put(node, "best", window.boards(), StyleWindow.Boards::best, 2);
    }

    private static void oil(ObjectNode node, OilAccount oil) {
        JsonAnswer.put(node, "appliedMl", oil.appliedMl(), 3);
        JsonAnswer.put(node, "onLanesMl", oil.onLanesMl(), 3);
        JsonAnswer.put(node, "onBallsMl", oil.onBallsMl(), 3);
        JsonAnswer.put(node, "absorbedMl", oil.absorbedMl(), 3);
        JsonAnswer.put(node, "wipedMl", oil.wipedMl(), 3);
        JsonAnswer.put(node, "strippedMl", oil.strippedMl(), 3);
        // Not rounded: what matters is how small it is.
        node.put("relativeError", oil.relativeError());
    }
}
