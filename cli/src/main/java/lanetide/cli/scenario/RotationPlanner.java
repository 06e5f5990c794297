package lanetide.cli.scenario;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationDesign;

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
            return hasCollision(rotation, squad, centre) ? Optional.empty() : Optional.of(rotation);
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
