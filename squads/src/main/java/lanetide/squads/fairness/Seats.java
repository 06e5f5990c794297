package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.Squad;
import lanetide.squads.qualifying.People;

/**
 * The seats of an event and the bowlers who are drawn into them. A seat has a squad, a group, a place in the bowling
 * order and a hand; a bowler brings his style, his skill, his balls and his luck. Immutable.
 */
final class Seats {
    private final Event event;
    private final List<Seat> seats = new ArrayList<>();
    private final List<Bowler> bowlers = new ArrayList<>();

    /** The seats of an event as it is drawn: bowler i sits in seat i. */
    Seats(Event event) {
        this.event = event;
        for (int s = 0; s < event.squads().size(); s++) {
            Squad squad = event.squads().get(s);
            for (int g = 0; g < squad.groups().size(); g++) {
                for (Bowler bowler : squad.groups().get(g).bowlers()) {
                    seats.add(new Seat(s, g, event.rotations().get(s).pairOf(0, g), bowler.hand()));
                    bowlers.add(bowler.as(People.nameOfEntry(squad.id(), bowler.id()), bowler.hand()));
                }
            }
        }
    }

    int count() {
        return seats.size();
    }

    List<Seat> seats() {
        return seats;
    }

    /** Bowlers in the order of the seats they are drawn into, each named apart over all squads. */
    List<Bowler> bowlers() {
        return bowlers;
    }

    /** For every seat the class it belongs to. */
    int[] classes(ToIntFunction<Seat> classOf) {
        return seats.stream().mapToInt(classOf).toArray();
    }

    /** Bowler i in seat i. */
    int[] asDrawn() {
        return IntStream.range(0, seats.size()).toArray();
    }

    /**
     * The event with a bowler in every seat; he plays with the seat's hand. Nothing fails, nobody rests and there are
     * no finals: the schedule is judged, not the day.
     */
    Event seated(int[] bowlerAtSeat) {
        List<Squad> squads = new ArrayList<>();
        int seat = 0;
        for (Squad squad : event.squads()) {
            List<Group> groups = new ArrayList<>();
            for (Group group : squad.groups()) {
                List<Bowler> members = new ArrayList<>();
                for (Bowler drawn : group.bowlers()) {
                    Bowler bowler = bowlers.get(bowlerAtSeat[seat++]);
                    members.add(bowler.as(bowler.id(), drawn.hand()));
                }
                groups.add(new Group(group.id(), members));
            }
            squads.add(squad.withoutArrangements().withGroups(groups));
        }
        return event.withSquads(squads).withIncidents(Incidents.NONE).withCut(Optional.empty());
    }
}
