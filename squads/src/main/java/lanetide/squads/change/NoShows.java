package lanetide.squads.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import org.apache.commons.rng.sampling.ListSampler;

/** Bowlers who stay away: groups are evened out, and go on as planned while there is a bowler for each. */
public final class NoShows {

    private NoShows() {}

    /**
     * Takes bowlers out of a squad.
     *
     * @param event the event
     * @param squad place of the squad in it, counted from zero
     * @param absent names of those who stay away
     * @return the changed event
     * @throws ImpossibleRotationException if nobody is left or a name is no bowler of the squad
     */
    public static Change of(Event event, int squad, Set<String> absent) {
        Squad planned = event.squads().get(squad);
        requireKnown(planned, absent);
        List<List<Bowler>> there = planned.groups().stream()
                .map(group -> group.bowlers().stream()
                        .filter(bowler -> !absent.contains(bowler.id()))
                        .toList())
                .toList();
        int bowlers = there.stream().mapToInt(List::size).sum();
        if (bowlers == 0) {
            throw new ImpossibleRotationException(
                    "number of bowlers left in squad " + planned.id(), 0, "at least 1", "Leave the squad out.");
        }
        List<Integer> keep = largest(there, Math.min(together(there), there.size()));
        List<String> names = planned.groups().stream().map(Group::id).toList();
        Regrouping.Result result = Regrouping.even(planned.id(), there, names, keep);
        Rotation rotation = Plans.ofGroups(event.rotations().get(squad), keep);
        Change change = new Change(
                Plans.replaced(event, squad, List.of(planned.withGroups(result.groups())), List.of(rotation)),
                List.of(),
                result.moved(),
                Plans.dissolved(planned, keep),
                absent.stream()
                        .sorted()
                        .map(name -> new Change.Absent(planned.id(), name))
                        .toList(),
                List.of());
        return change.parting(result.parted());
    }

    /** How many single bowlers and partners there are, none of whom can be parted to fill a group. */
    private static int together(List<List<Bowler>> groups) {
        return groups.stream()
                .mapToInt(group -> PartnersRegrouping.together(group).size())
                .sum();
    }

    /**
     * Draws by lot who stays away, where only their number is known.
     *
     * @param squad the squad
     * @param number how many
     * @param seed same seed, same names
     * @return their names
     * @throws ImpossibleRotationException if not {@code 1 <= number < bowlers of the squad}
     */
    public static Set<String> drawn(Squad squad, int number, long seed) {
        List<String> names = new ArrayList<>(squad.groups().stream()
                .flatMap(group -> group.bowlers().stream())
                .map(Bowler::id)
                .toList());
        if (number < 1 || number >= names.size()) {
            throw new ImpossibleRotationException(
                    "number of absent bowlers of squad " + squad.id(),
                    number,
                    (names.size() == 1 ? "0" : "1 to " + (names.size() - 1)) + ", so that somebody bowls",
                    "Leave the squad out if nobody comes.");
        }
        ListSampler.shuffle(new RandomStreams(seed).stream("absent/" + squad.id()), names);
        return Set.copyOf(names.subList(0, number));
    }

    /** The fullest groups, in their order. */
    private static List<Integer> largest(List<List<Bowler>> groups, int number) {
        return IntStream.range(0, groups.size())
                .boxed()
                .sorted(Comparator.comparingInt(
                        (Integer group) -> -groups.get(group).size()))
                .limit(number)
                .sorted()
                .toList();
    }

    private static void requireKnown(Squad squad, Set<String> absent) {
        for (String name : absent) {
            boolean known = squad.groups().stream()
                    .flatMap(group -> group.bowlers().stream())
                    .anyMatch(bowler -> bowler.id().equals(name));
            if (!known) {
                throw new ImpossibleRotationException(
                        "absent bowler", name, "a bowler of squad " + squad.id(), "Check the name in the entries.");
            }
        }
    }
}
