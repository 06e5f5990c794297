package lanetide.cli.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/**
 * A rotation, and the squads that follow it with groups of the same names.
 *
 * @param squads names of these squads
 * @param groups names of their groups, in the rotation's order
 * @param pairs names of the pairs
 * @param rotation the rotation
 */
record RotationPlan(List<String> squads, List<String> groups, List<String> pairs, Rotation rotation) {
    /** The plans of an event, each once. */
    static List<RotationPlan> of(Event event) {
        List<String> pairs =
                event.centre().pairs().stream().map(pair -> pair.id()).toList();
        List<RotationPlan> plans = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            List<String> groups = squad.groups().stream().map(Group::id).toList();
            RotationPlan plan = new RotationPlan(
                    List.of(squad.id()), groups, pairs, event.rotations().get(s));
            int same = IntStream.range(0, plans.size())
                    .filter(i -> plans.get(i).rotation().equals(plan.rotation())
                            && plans.get(i).groups().equals(groups))
                    .findFirst()
                    .orElse(-1);
            if (same < 0) {
                plans.add(plan);
            } else {
                plans.set(same, plans.get(same).with(squad.id()));
            }
        }
        return plans;
    }

    private RotationPlan with(String squad) {
        List<String> more = new ArrayList<>(squads);
        more.add(squad);
        return new RotationPlan(more, groups, pairs, rotation);
    }

    /** For example {@code Squads A, B, C}. */
    String heading() {
        return (squads.size() == 1 ? "Squad " : "Squads ") + String.join(", ", squads);
    }

    String pairOf(int game, int group) {
        return pairs.get(rotation.pairOf(game, group));
    }
}
