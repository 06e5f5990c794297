package lanetide.cli.rotate;

import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.JsonAnswer;
import lanetide.squads.model.Event;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.check.GroupExposure;
import lanetide.squads.rotation.check.Walk;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What a plan alone tells of an event's rotations, in the fields that several answers share. */
public final class StructureJson {
    private StructureJson() {}

    /** The checks of all squads together: repeats and indices added up, the range of predecessors, the mean walk. */
    public static void checks(ObjectNode node, Event event) {
        List<Rotation> rotations = event.rotations();
        List<RotationReport> reports =
                rotations.stream().map(RotationReport::of).toList();
        node.put("isPermutation", reports.stream().allMatch(RotationReport::isPermutation));
        ArrayNode repeats = node.putArray("repeatedVisits");
        for (int i = 0; i < reports.size(); i++) {
            repeats(repeats, event, i, reports.get(i).repeatedVisits());
        }
        carryOver(node, event, reports);
        IntSummaryStatistics predecessors = reports.stream()
                .flatMapToInt(report -> IntStream.of(report.fewestPredecessors(), report.mostPredecessors()))
                .summaryStatistics();
        ObjectNode range = node.putObject("distinctPredecessors");
        range.put("min", predecessors.getMin());
        range.put("max", predecessors.getMax());
        List<Integer> leftLanes =
                event.centre().pairs().stream().map(pair -> pair.left()).toList();
        JsonAnswer.put(node, "walkPairsPerGame", meanWalk(rotations, leftLanes), 4);
        JsonAnswer.put(
                node,
                "longestWalkPairs",
                rotations.stream()
                        .mapToDouble(rotation -> Walk.of(rotation, leftLanes).longestPairs())
                        .max()
                        .orElse(0),
                1);
    }

    /** The indices added up, and squad by squad. */
    private static void carryOver(ObjectNode node, Event event, List<RotationReport> reports) {
        List<Rotation> rotations = event.rotations();
        node.put(
                "carryOverIndex",
                reports.stream().mapToInt(RotationReport::carryOverIndex).sum());
        node.put(
                "carryOverMinimum",
                reports.stream().mapToInt(RotationReport::carryOverMinimum).sum());
        node.put(
                "carryOverMaximum",
                rotations.stream()
                        .mapToInt(rotation -> CarryOver.of(rotation).maximum())
                        .sum());
        ArrayNode bySquad = node.putArray("carryOverBySquad");
        for (int i = 0; i < reports.size(); i++) {
            ObjectNode squad = bySquad.addObject();
            squad.put("squad", event.squads().get(i).id());
            squad.put("index", reports.get(i).carryOverIndex());
            squad.put("minimum", reports.get(i).carryOverMinimum());
            squad.put("maximum", CarryOver.of(rotations.get(i)).maximum());
        }
    }

    static void named(ObjectNode node, String field, List<CheckLine> checks) {
        JsonAnswer.putAll(node, field, checks, (line, check) -> {
            line.put("code", check.code());
            line.put("outcome", ConstantName.of(check.outcome()));
            line.put("text", check.text());
        });
    }

    static void exposure(ArrayNode array, Event event, List<GroupExposure> exposures) {
        int at = 0;
        for (var squad : event.squads()) {
            for (var group : squad.groups()) {
                GroupExposure exposure = exposures.get(at++);
                ObjectNode node = array.addObject();
                node.put("squad", squad.id());
                node.put("group", group.id());
                node.put("freshGames", exposure.fresh());
                node.put("middleGames", exposure.middle());
                node.put("wornGames", exposure.worn());
                JsonAnswer.put(node, "gamesSinceOiling", exposure.gamesSinceOiling(), 4);
                JsonAnswer.put(node, "rightHandedGamesBefore", exposure.rightHandedBefore(), 4);
                JsonAnswer.put(node, "leftHandedGamesBefore", exposure.leftHandedBefore(), 4);
            }
        }
    }

    private static void repeats(ArrayNode array, Event event, int squad, List<RepeatedVisit> visits) {
        for (RepeatedVisit visit : visits) {
            ObjectNode node = array.addObject();
            node.put("squad", event.squads().get(squad).id());
            node.put(
                    "group",
                    event.squads().get(squad).groups().get(visit.group()).id());
            node.put("pair", event.centre().pairs().get(visit.pair()).id());
            node.put("firstGame", visit.firstGame() + 1);
            node.put("game", visit.againGame() + 1);
        }
    }

    /** Over all moves of all squads. */
    private static double meanWalk(List<Rotation> rotations, List<Integer> leftLanes) {
        double walked = 0;
        long moves = 0;
        for (Rotation rotation : rotations) {
            long own = (long) rotation.groups() * (rotation.games() - 1);
            walked += Walk.of(rotation, leftLanes).pairsPerGame() * own;
            moves += own;
        }
        return moves == 0 ? 0 : walked / moves;
    }
}
