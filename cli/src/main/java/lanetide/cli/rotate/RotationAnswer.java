package lanetide.cli.rotate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.words.DesignWords;
import lanetide.cli.words.FindingWords;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Sessions;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.check.EventChecks;
import lanetide.squads.rotation.check.RotationChecks;
import lanetide.squads.rotation.check.WearExposure;
import lanetide.squads.rotation.design.Classics;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RotationSearch;
import lanetide.squads.rotation.design.SearchObjective;
import lanetide.squads.rotation.design.SearchResult;

/**
 * Everything that {@code rotate} tells of an event.
 *
 * @param event the event with the rotations that are told of
 * @param note where its rotations come from
 * @param pairs the pairs
 * @param squads one entry for each different rotation
 * @param checks checks that need all squads
 * @param wear how fresh the lanes are that groups find
 * @param objective what rotations are ranked by
 */
public record RotationAnswer(
        Event event,
        RotationNote note,
        PairRow pairs,
        List<SquadRotation> squads,
        List<CheckLine> checks,
        WearExposure wear,
        SearchObjective objective) {
    /** Copies the lists. */
    public RotationAnswer {
        squads = List.copyOf(squads);
        checks = List.copyOf(checks);
    }

    /**
     * Looks an event over.
     *
     * @param event the event
     * @param note where its rotations come from
     * @param objective what rotations are ranked by
     * @param search that a better rotation is to be searched for; empty for no search
     * @return the answer
     */
    public static RotationAnswer of(
            Event event, RotationNote note, SearchObjective objective, Optional<SearchOrder> search) {
        PairRow pairs = PairRow.of(event.centre(), note.spare());
        List<SquadRotation> squads = new ArrayList<>();
        for (List<Integer> alike : alike(event)) {
            squads.add(squad(event, alike, note, pairs, objective, search.map(order -> order.after(squads.size()))));
        }
        EventChecks checks = EventChecks.of(Sessions.of(event));
        return new RotationAnswer(event, note, pairs, squads, EventCheckWords.of(checks), checks.exposure(), objective);
    }

    /**
     * Counts the rotations that differ.
     *
     * @param event the event
     * @return for how many squads a rotation would be searched for
     */
    public static int searches(Event event) {
        return alike(event).size();
    }

    /** Squads that share rotation and group names, by their place in the event. */
    private static List<List<Integer>> alike(Event event) {
        List<List<Integer>> classes = new ArrayList<>();
        for (int squad = 0; squad < event.squads().size(); squad++) {
            int here = squad;
            classes.stream()
                    .filter(known -> isAlike(event, known.get(0), here))
                    .findFirst()
                    .ifPresentOrElse(known -> known.add(here), () -> classes.add(new ArrayList<>(List.of(here))));
        }
        return classes;
    }

    private static boolean isAlike(Event event, int one, int other) {
        return event.rotations().get(one).equals(event.rotations().get(other))
                && names(event.squads().get(one)).equals(names(event.squads().get(other)));
    }

    private static List<String> names(Squad squad) {
        return squad.groups().stream().map(Group::id).toList();
    }

    private static SquadRotation squad(
            Event event,
            List<Integer> alike,
            RotationNote note,
            PairRow row,
            SearchObjective objective,
            Optional<SearchOrder> order) {
        Squad first = event.squads().get(alike.get(0));
        Rotation rotation = event.rotations().get(alike.get(0));
        PairRow pairs = row.usedBy(rotation);
        FindingWords names =
                new FindingWords(group -> "group " + first.groups().get(group).id(), pairs::name);
        Alternative planned =
                Alternative.of(note.label(), note.description(), pairs.overUsed(rotation), pairs, objective);
        Classics.Choice classics = Classics.of(rotation.groups(), pairs.inUse(), rotation.games());
        List<Alternative> alternatives = alternatives(classics, planned, pairs, objective);
        Optional<SearchResult> search = order.map(asked -> RotationSearch.run(
                rotation.groups(),
                pairs.inUse(),
                rotation.games(),
                objective,
                asked.seed(),
                RotationSearch.defaultTries(rotation.groups(), rotation.games()),
                asked.onRound()));
        search.ifPresent(found -> alternatives.add(Alternative.of(
                new RotationDesigns.Label("searched", 0, 0),
                "Designed by search.",
                found.rotation(),
                pairs,
                objective)));
        return new SquadRotation(
                alike.stream().map(squad -> event.squads().get(squad).id()).toList(),
                first.groups(),
                pairs,
                planned,
                RotationCheckWords.of(RotationChecks.of(rotation, pairs.leftLanes(), pairs.inUse()), names),
                alternatives,
                classics.refused(),
                search);
    }

    /** The classic designs; of those that give the same rotation, the first. */
    private static List<Alternative> alternatives(
            Classics.Choice classics, Alternative planned, PairRow pairs, SearchObjective objective) {
        Set<Rotation> told = new HashSet<>(Set.of(planned.rotation()));
        List<Alternative> alternatives = new ArrayList<>();
        for (Classics.Planned classic : classics.planned()) {
            Alternative other = Alternative.of(
                    RotationDesigns.labelOf(classic.design()),
                    DesignWords.describe(classic.design()),
                    classic.rotation(),
                    pairs,
                    objective);
            if (told.add(other.rotation())) {
                alternatives.add(other);
            }
        }
        return alternatives;
    }

    /**
     * The same event with another design.
     *
     * @param event the event
     * @param design a design over the pairs that are not spare
     * @return the event with new rotations
     * @throws lanetide.squads.rotation.ImpossibleRotationException if the design cannot serve a squad
     */
    public static Event redesigned(Event event, RotationDesign design) {
        List<Rotation> rotations = new ArrayList<>();
        for (int i = 0; i < event.squads().size(); i++) {
            int earlier = sameSize(event, i);
            rotations.add(
                    earlier < i
                            ? rotations.get(earlier)
                            : event.centre()
                                    .plan(
                                            design,
                                            event.squads().get(i).groups().size(),
                                            event.rotations().get(i).games()));
        }
        return event.withRotations(rotations);
    }

    /** The first squad with as many groups and games, so that nothing is planned twice. */
    private static int sameSize(Event event, int squad) {
        int first = 0;
        while (event.rotations().get(first).groups()
                        != event.rotations().get(squad).groups()
                || event.rotations().get(first).games()
                        != event.rotations().get(squad).games()) {
            first++;
        }
        return first;
    }
}
