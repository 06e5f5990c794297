package lanetide.cli.scenario;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationCheck;
import lanetide.squads.rotation.RotationDesign;
import lanetide.squads.rotation.RotationFinding;
import lanetide.squads.rotation.RotationNames;
import lanetide.squads.rotation.RotationReport;

/** Plans each squad's rotation, and says once why it cannot be had. */
final class RotationPlanner {
    private final Section scenario;
    private final Optional<RotationDesign> design;
    private final Notices notices;
    private final Set<String> said = new HashSet<>();

    RotationPlanner(Notices notices, Section scenario, Optional<RotationDesign> design) {
        this.notices = notices;
        this.scenario = scenario;
        this.design = design;
    }

    Optional<Rotation> plan(Squad squad, int games, Centre centre) {
        if (design.isEmpty()) {
            return Optional.empty();
        }
        try {
            Rotation rotation =
                    design.get().plan(squad.groups().size(), centre.pairs().size(), games);
            if (hasCollision(rotation, squad, centre)) {
                return Optional.empty();
            }
            remark(rotation, squad, centre);
            return Optional.of(rotation);
        } catch (ImpossibleRotationException e) {
            say(NoticeCode.ROTATION_IMPOSSIBLE, squad, e.getMessage());
            return Optional.empty();
        }
    }

    private boolean hasCollision(Rotation rotation, Squad squad, Centre centre) {
        for (int game = 0; game < rotation.games(); game++) {
            Set<Integer> taken = new HashSet<>();
            for (int group = 0; group < rotation.groups(); group++) {
                int pair = rotation.pairOf(game, group);
                if (!taken.add(pair)) {
                    say(
                            NoticeCode.ROTATION_COLLISION,
                            squad,
                            "Two groups would meet on pair "
                                    + centre.pairs().get(pair).id() + " in game " + (game + 1)
                                    + "; a pair must have one group at a time. Correct that row.");
                    return true;
                }
            }
        }
        return false;
    }

    /** What a director should know of a rotation that can be played; squads with the same findings are not told twice. */
    private void remark(Rotation rotation, Squad squad, Centre centre) {
        RotationReport report = RotationCheck.of(rotation);
        RotationNames names = new RotationNames(
                group -> "group " + squad.groups().get(group).id(),
                pair -> "pair " + centre.pairs().get(pair).id());
        note(
                NoticeCode.ROTATION_REPEATS_PAIRS,
                report.repeatedVisits(),
                names,
                "more such",
                "Move by another number of pairs.");
        note(
                NoticeCode.ROTATION_SAME_PREDECESSOR,
                report.solePredecessors(),
                names,
                "more such",
                "A group then meets the oil of one other group only; `balanced` mixes them where the pairs are even.");
    }

    /** The first finding in words, and how many more there are. */
    private void note(
            NoticeCode code,
            List<? extends RotationFinding> findings,
            RotationNames names,
            String others,
            String whatToTry) {
        if (findings.isEmpty()) {
            return;
        }
        int rest = findings.size() - 1;
        String more = rest == 0 ? "" : " And " + rest + " " + others + ".";
        String reason = findings.get(0).sentence(names) + more + " " + whatToTry;
        if (said.add(reason)) {
            Optional<Value> value = scenario.get("rotation");
            notices.add(
                    code,
                    value.map(Value::place).orElse(scenario.place()),
                    "rotation",
                    value.map(Value::plain).orElse(Defaults.ROTATION),
                    reason);
        }
    }

    private void say(NoticeCode code, Squad squad, String reason) {
        if (said.add(reason)) {
            Optional<Value> value = scenario.get("rotation");
            String name = value.map(Value::plain).orElse(Defaults.ROTATION);
            notices.add(
                    code,
                    value.map(Value::place).orElse(scenario.place()),
                    "rotation",
                    name,
                    "Squad " + squad.id() + " cannot play "
                            + (name.isEmpty() ? "this rotation" : "the rotation `" + name + "`") + ". " + reason);
        }
    }
}
