package lanetide.squads.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;

/** Bowlers who wait for a place, in order: whoever stays away leaves his to the first who waits for his squad. */
public final class WaitingList {
    private WaitingList() {}

    /**
     * One who waits.
     *
     * @param squad the squad's name
     * @param bowler who he is, whatever his hand and level
     */
    public record Waiting(String squad, Bowler bowler) {}

    /**
     * Fills places of a squad, those of its first groups first.
     *
     * @param event the event
     * @param squad place of the squad in it, counted from zero
     * @param absent names of bowlers of the squad who stay away
     * @param waiting who waits, in order
     * @return the event with those in their places who waited, as far as they go; who else stays away still has his
     */
    public static Change fill(Event event, int squad, Set<String> absent, List<Waiting> waiting) {
        Squad planned = event.squads().get(squad);
        List<Bowler> next = new ArrayList<>(waiting.stream()
                .filter(one -> one.squad().equals(planned.id()))
                .map(Waiting::bowler)
                .toList());
        List<Change.Filled> filled = new ArrayList<>();
        List<Group> groups = new ArrayList<>();
        for (Group group : planned.groups()) {
            List<Bowler> bowlers = new ArrayList<>();
            for (Bowler bowler : group.bowlers()) {
                if (absent.contains(bowler.id()) && !next.isEmpty()) {
                    bowlers.add(next.remove(0));
                    filled.add(new Change.Filled(
                            planned.id(),
                            group.id(),
                            bowlers.get(bowlers.size() - 1).id(),
                            bowler.id()));
                } else {
                    bowlers.add(bowler);
                }
            }
            groups.add(new Group(group.id(), bowlers));
        }
        List<Squad> squads = new ArrayList<>(event.squads());
        squads.set(squad, planned.withGroups(groups));
        return new Change(
                event.withSquads(squads),
                List.of(),
                List.of(),
                List.of(),
                filled.stream()
                        .map(place -> new Change.Absent(place.squad(), place.absent()))
                        .toList(),
                List.of(),
                List.of(),
                filled);
    }

    /**
     * Who has no place.
     *
     * @param waiting who waits, in order
     * @param event an event in which some of them may bowl
     * @return those who do not
     */
    public static List<Waiting> still(List<Waiting> waiting, Event event) {
        List<Bowler> there = event.squads().stream()
                .flatMap(squad -> squad.groups().stream())
                .flatMap(group -> group.bowlers().stream())
                .toList();
        return waiting.stream()
                .filter(one -> there.stream().noneMatch(bowler -> bowler.equals(one.bowler())))
                .toList();
    }
}
