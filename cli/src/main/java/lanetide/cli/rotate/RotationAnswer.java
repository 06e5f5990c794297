package lanetide.cli.rotate;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.cli.scenario.key.RotationDesigns;
import lanetide.cli.words.DesignWords;
import lanetide.cli.words.FindingWords;
import lanetide.squads.model.Centre;
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
    private static Collection<List<Integer>> alike(Event event) {
        return IntStream.range(0, event.squads().size())
                .boxed()
                .collect(Collectors.groupingBy(
                        squad -> List.of(
                                event.rotations().get(squad),
                                names(event.squads().get(squad))),
                        LinkedHashMap::new,
                        Collectors.toList()))
                .values();
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
        PairRow pairs = row.without(event.centre(alike.get(0)).spare()).usedBy(rotation);
        FindingWords names =
                new FindingWords(group -> "group " + first.groups().get(group).id(), pairs::name);
        Alternative planned = Alternative.of(
                note.labels().get(alike.get(0)),
                note.descriptions().get(alike.get(0)),
                pairs.overUsed(rotation),
                pairs,
                objective);
        Classics.Choice classics = Classics.of(rotation.groups(), pairs.inUse(), rotation.games());
        List<Alternative> alternatives = alternatives(classics, planned, pairs, objective);
        Optional<SearchResult> search = order.map(asked -> searched(rotation, pairs, objective, asked));
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

    private static SearchResult searched(Rotation like, PairRow pairs, SearchObjective objective, SearchOrder order) {
        return RotationSearch.run(
                like.groups(),
                pairs.inUse(),
                like.games(),
                objective,
                order.seed(),
                RotationSearch.defaultTries(like.groups(), like.games()),
                order.onRound());
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
        // Squads of one size share a rotation: a search need not be made twice.
        Map<List<Object>, Rotation> planned = new HashMap<>();
        return event.withRotations(IntStream.range(0, event.squads().size())
                .mapToObj(squad -> {
                    Rotation old = event.rotations().get(squad);
                    Centre centre = event.centre(squad);
                    return planned.computeIfAbsent(
                            List.of(old.groups(), old.games(), centre.spare()),
                            size -> centre.plan(design, old.groups(), old.games()));
                })
                .toList());
    }
}
