package lanetide.cli.rotate;

import java.util.Optional;
import java.util.OptionalInt;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.scenario.Reading;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.scenario.value.TimeOfDay;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.Rotation;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** What {@code rotate} answers, for programs. */
public final class RotateJson {
    private RotateJson() {}

    /**
     * Writes the answer.
     *
     * @param reading the scenario as it was read, without errors
     * @param answer what there is to say
     * @param changes late changes that it tells of, if any
     * @return the JSON text
     */
    public static String write(Reading reading, RotationAnswer answer, Optional<LateChanges> changes) {
        ObjectNode node = JsonAnswer.opening(reading);
        design(node.putObject("design"), answer.note());
        JsonAnswer.put(node, "changes", changes, (inner, late) -> changes(inner, late, answer.pairs()));
        rotation(node.putArray("rotation"), answer);
        ObjectNode checks = node.putObject("checks");
        StructureJson.checks(checks, answer.event());
        StructureJson.named(checks, "named", answer.checks());
        JsonAnswer.putAll(node, "squads", answer.squads(), RotateJson::squad);
        alternatives(node.putArray("alternatives"), answer);
        StructureJson.exposure(
                node.putArray("exposure"), answer.event(), answer.wear().groups());
        JsonAnswer.putCautions(node);
        return JsonAnswer.write(node);
    }

    private static void design(ObjectNode node, RotationNote note) {
        node.put("name", note.label().name());
        node.put("move", note.label().move());
        node.put("every", note.label().every());
        node.put("text", note.description());
    }

    private static void changes(ObjectNode node, LateChanges late, PairRow pairs) {
        JsonAnswer.putAll(node, "visits", late.change().visits(), (entry, visit) -> {
            entry.put("squad", visit.squad());
            entry.put("group", visit.group());
            entry.put("game", visit.game() + 1);
            entry.put("plannedPair", pairs.name(visit.planned()));
            entry.put("pair", pairs.name(visit.now()));
        });
        JsonAnswer.putAll(node, "movedBowlers", late.change().moved(), (entry, mover) -> {
            entry.put("squad", mover.squad());
            entry.put("bowler", mover.bowler());
            entry.put("plannedGroup", mover.from());
            entry.put("group", mover.to());
        });
        JsonAnswer.putAll(
                node,
                "dissolvedGroups",
                late.change().dissolved(),
                (entry, group) -> entry.put("squad", group.squad()).put("group", group.group()));
        JsonAnswer.putAll(
                node,
                "absentBowlers",
                late.change().absent(),
                (entry, bowler) -> entry.put("squad", bowler.squad()).put("bowler", bowler.bowler()));
        if (!late.change().parted().isEmpty()) {
            JsonAnswer.putAll(
                    node,
                    "partedPartners",
                    late.change().parted(),
                    (entry, parted) -> entry.put("squad", parted.squad()).put("partners", parted.partners()));
        }
        JsonAnswer.putAll(node, "starts", late.change().starts(), (entry, start) -> {
            entry.put("squad", start.squad());
            entry.put("plannedStart", TimeOfDay.write(start.plannedMs()));
            entry.put("start", TimeOfDay.write(start.nowMs()));
        });
        StructureJson.checks(node.putObject("plannedChecks"), late.planned());
        ChangeWords.of(late, pairs).forEach(node.putArray("text")::add);
    }

    private static void rotation(ArrayNode array, RotationAnswer answer) {
        for (int i = 0; i < answer.event().squads().size(); i++) {
            Squad squad = answer.event().squads().get(i);
            Rotation rotation = answer.event().rotations().get(i);
            for (int game = 0; game < rotation.games(); game++) {
                for (int pair = 0; pair < rotation.pairs(); pair++) {
                    OptionalInt group = rotation.groupOn(game, pair);
                    if (group.isPresent()) {
                        ObjectNode node = array.addObject();
                        node.put("squad", squad.id());
                        node.put("game", game + 1);
                        node.put("pair", answer.pairs().name(pair));
                        node.put("group", squad.groups().get(group.getAsInt()).id());
                    }
                }
            }
        }
    }

    private static void squad(ObjectNode node, SquadRotation squad) {
        squad.squads().forEach(node.putArray("ids")::add);
        RotateWords.verdict(squad).forEach(node.putArray("verdict")::add);
        StructureJson.named(node, "checks", squad.checks());
        squad.search().ifPresent(found -> {
            ObjectNode search = node.putObject("search");
            search.put("start", RotationDesigns.labelOf(found.start()).name());
            JsonAnswer.put(search, "startCost", found.startCost(), 6);
            JsonAnswer.put(search, "cost", found.cost(), 6);
            search.put("tries", found.tries());
            search.put("stoppedBecause", RotateWords.reason(found.reason()));
        });
    }

    private static void alternatives(ArrayNode array, RotationAnswer answer) {
        for (SquadRotation squad : answer.squads()) {
            alternative(array.addObject(), squad, squad.planned(), true);
            squad.alternatives().forEach(other -> alternative(array.addObject(), squad, other, false));
        }
    }

    private static void alternative(ObjectNode node, SquadRotation squad, Alternative alternative, boolean planned) {
        node.put("design", alternative.label().name());
        node.put("move", alternative.label().move());
        squad.squads().forEach(node.putArray("squads")::add);
        node.put("isPlanned", planned);
        node.put("carryOverIndex", alternative.report().carryOverIndex());
        node.put("carryOverMinimum", alternative.report().carryOverMinimum());
        node.put("carryOverMaximum", CarryOver.of(alternative.rotation()).maximum());
        node.put("repeatedVisits", alternative.report().repeatedVisits().size());
        ObjectNode predecessors = node.putObject("distinctPredecessors");
        predecessors.put("min", alternative.report().fewestPredecessors());
        predecessors.put("max", alternative.report().mostPredecessors());
        JsonAnswer.put(node, "walkPairsPerGame", alternative.walk().pairsPerGame(), 4);
        JsonAnswer.put(node, "longestWalkPairs", alternative.walk().longestPairs(), 1);
        JsonAnswer.put(node, "cost", alternative.cost(), 6);
    }
}
