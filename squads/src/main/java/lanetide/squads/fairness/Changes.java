package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Squad;
import lanetide.squads.qualifying.Teams;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.Counter;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.rotation.design.RowComplete;
import lanetide.squads.rotation.design.SearchObjective;
import lanetide.squads.rotation.design.Searched;
import lanetide.squads.rotation.design.Stay;
import lanetide.squads.study.PossibleEvents;

/** The changes of an event that could make it fairer. One that is impossible, or changes nothing, is left out. */
final class Changes {
    /** Tries of the search for a rotation: a second or so, as the change has to be played anyway. */
    private static final int TRIES = 200_000;

    private static final RotationDesign BALANCED = new RowComplete();
    private static final List<RotationDesign> DESIGNS = List.of(
            BALANCED,
            new Counter(1),
            new Ring(1, 1),
            new Ring(2, 1),
            new Searched(SearchObjective.DEFAULT, 1, TRIES),
            new Stay());

    private final Event event;
    private final Set<Integer> lost;

    /**
     * Changes of an event.
     *
     * @param event the event
     * @param lost pairs that no rotation may send a group to, beside the spare ones; counted from zero
     */
    Changes(Event event, Set<Integer> lost) {
        this.event = event;
        this.lost = Set.copyOf(lost);
    }

    /** The centre as a squad has it now. */
    private Centre usable(int squad) {
        Centre centre = event.centre(squad);
        return lost.isEmpty()
                ? centre
                : centre.withSpare(
                        Stream.concat(centre.spare().stream(), lost.stream().map(centre.pairs()::get))
                                .toList());
    }

    /**
     * A changed event.
     *
     * @param what what is changed
     * @param event the event as changed for those whom the scenario has in it
     * @param onceTheyCame the part of it that is to be done once it is known who comes
     */
    record Change(RemedyChange what, Event event, UnaryOperator<Event> onceTheyCame) {
        /** The changed event under the sets of the unchanged one. */
        PossibleEvents under(PossibleEvents events) {
            return events.with(event, onceTheyCame);
        }
    }

    List<Change> list() {
        Optional<Event> fresh = oiled(Conditioning.STRIP_AND_OIL);
        Event reseeded = reseeded(event);
        List<Change> changes = new ArrayList<>();
        for (RotationDesign design : DESIGNS) {
            rotated(event, design).ifPresent(add(changes, RemedyChange.rotation(design)));
        }
        RemedyChange oiling = RemedyChange.oiling(Conditioning.STRIP_AND_OIL);
        fresh.ifPresent(add(changes, oiling));
        oiled(Conditioning.OIL_OVER).ifPresent(add(changes, RemedyChange.oiling(Conditioning.OIL_OVER)));
        if (!reseeded.equals(event)) {
            changes.add(new Change(RemedyChange.of(RemedyChange.Kind.GROUPS), reseeded, Changes::reseeded));
        }
        turnedRound().ifPresent(add(changes, RemedyChange.of(RemedyChange.Kind.SQUAD_ORDER)));
        fresh.flatMap(oiled -> rotated(oiled, BALANCED)).ifPresent(add(changes, oiling.and(BALANCED)));
        return changes;
    }

    private Consumer<Event> add(List<Change> changes, RemedyChange what) {
        return changed -> {
            if (!changed.equals(event)) {
                changes.add(new Change(what, changed, UnaryOperator.identity()));
            }
        };
    }

    private Optional<Event> rotated(Event of, RotationDesign design) {
        List<Rotation> rotations = new ArrayList<>();
        try {
            for (Rotation old : of.rotations()) {
                rotations.add(usable(rotations.size()).plan(design, old.groups(), old.games()));
            }
            return Optional.of(of.withRotations(rotations));
        } catch (ImpossibleRotationException e) {
            return Optional.empty();
        }
    }

    /** The first squad keeps what it has unless lanes are to be cleaned, since oil over bare lanes is fresh oil too. */
    private Optional<Event> oiled(Conditioning how) {
        List<Squad> squads = new ArrayList<>();
        for (Squad squad : event.squads()) {
            boolean keep = how == Conditioning.OIL_OVER
                    && (squads.isEmpty() || squad.conditioning() == Conditioning.STRIP_AND_OIL);
            Conditioning now = keep ? squad.conditioning() : how;
            squads.add(squad.withConditioning(now));
        }
        return Optional.of(event.withSquads(squads));
    }

    /**
     * Deals the bowlers of each squad to its groups to and fro, in the order of hand and rev rate. Where partners stay
     * together, groups stay as they are.
     */
    private static Event reseeded(Event event) {
        if (!new Teams(event).names().isEmpty()) {
            return event;
        }
        List<Squad> squads = new ArrayList<>();
        for (Squad squad : event.squads()) {
            List<Bowler> bowlers = squad.groups().stream()
                    .flatMap(group -> group.bowlers().stream())
                    .sorted(Comparator.comparing(Bowler::hand)
                            .thenComparingDouble(
                                    bowler -> -bowler.style().release().spinRadps())
                            .thenComparing(Bowler::id))
                    .toList();
            squads.add(squad.withGroups(dealt(squad, bowlers)));
        }
        return event.withSquads(squads);
    }

    private static List<Group> dealt(Squad squad, List<Bowler> bowlers) {
        List<List<Bowler>> hands = new ArrayList<>();
        squad.groups().forEach(group -> hands.add(new ArrayList<>()));
        int next = 0;
        int step = 1;
        for (Bowler bowler : bowlers) {
            while (hands.get(next).size() == squad.groups().get(next).size()) {
                next = (next + 1) % hands.size();
            }
            hands.get(next).add(bowler);
            boolean turn = next + step < 0 || next + step >= hands.size();
            step = turn ? -step : step;
            next = turn ? next : next + step;
        }
        List<Group> groups = new ArrayList<>();
        for (int g = 0; g < hands.size(); g++) {
            groups.add(new Group(squad.groups().get(g).id(), hands.get(g)));
        }
        return groups;
    }

    /**
     * The last squad's bowlers play first, and so on, if all squads have the same groups and games. Oil, machines and
     * breaks belong to the time of day and stay; a change of the line-up goes with the bowlers.
     */
    private Optional<Event> turnedRound() {
        int last = event.squads().size() - 1;
        List<Squad> squads = new ArrayList<>();
        for (int s = 0; s <= last; s++) {
            Squad here = event.squads().get(s);
            Squad from = event.squads().get(last - s);
            if (here.groups().size() != from.groups().size() || event.games(s) != event.games(last - s)) {
                return Optional.empty();
            }
            squads.add(from.startingAt(here.startMs())
                    .withConditioning(here.conditioning())
                    .withPractice(here.practiceMs())
                    .withArrangements(
                            here.arrangements().withChanges(from.arrangements().changes())));
        }
        return Optional.of(event.withSquads(squads));
    }
}
