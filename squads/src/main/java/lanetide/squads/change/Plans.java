package lanetide.squads.change;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.rotation.Rotation;

/** Parts of events and rotations put together anew. */
final class Plans {

    private Plans() {}

    /** The rotation of some of the groups. */
    static Rotation ofGroups(Rotation rotation, List<Integer> groups) {
        return Rotation.tabulate(
                groups.size(),
                rotation.pairs(),
                rotation.games(),
                (game, group) -> rotation.pairOf(game, groups.get(group)));
    }

    /** Some games of a rotation. */
    static Rotation ofGames(Rotation rotation, int from, int to) {
        return Rotation.tabulate(
                rotation.groups(), rotation.pairs(), to - from, (game, group) -> rotation.pairOf(from + game, group));
    }

    /** The event with one squad replaced by others, which play on its oil. */
    static Event replaced(Event event, int squad, List<Squad> squads, List<Rotation> rotations) {
        List<Squad> allSquads = new ArrayList<>(event.squads());
        List<SquadPlan> plans = new ArrayList<>(event.plans());
        allSquads.remove(squad);
        SquadPlan plan = plans.remove(squad);
        allSquads.addAll(squad, squads);
        plans.addAll(squad, rotations.stream().map(plan::withRotation).toList());
        return event.withSquads(allSquads, plans);
    }

    /** The groups of a squad that do not go on. */
    static List<Change.Dissolved> dissolved(Squad squad, List<Integer> keep) {
        return IntStream.range(0, squad.groups().size())
                .filter(group -> !keep.contains(group))
                .mapToObj(group -> new Change.Dissolved(
                        squad.id(), squad.groups().get(group).id()))
                .toList();
    }
}
