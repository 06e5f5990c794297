package lanetide.squads.model;

import java.util.ArrayList;
import java.util.List;
import lanetide.oilflow.lane.Hand;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Session;

/** An event as its rotations see it: turns on the lanes, and hands. */
public final class Sessions {

    private Sessions() {}

    /**
     * The squads' turns.
     *
     * @param event the event
     * @return one turn for each squad, in order of start; oiling over counts as oiling, on its own lanes alone
     */
    public static List<Session> of(Event event) {
        List<Session> sessions = new ArrayList<>();
        for (int i = 0; i < event.squads().size(); i++) {
            Squad squad = event.squads().get(i);
            sessions.add(new Session(
                    squad.id(),
                    squad.conditioning().laysOil(),
                    event.rotations().get(i),
                    squad.groups().stream().map(Sessions::hands).toList(),
                    pairs(event, i)));
        }
        return sessions;
    }

    private static List<Integer> pairs(Event event, int squad) {
        return event.plans().get(squad).pairs(event.centre()).stream()
                .map(event.centre().pairs()::indexOf)
                .toList();
    }

    private static Hands hands(Group group) {
        int left = (int) group.bowlers().stream()
                .filter(bowler -> bowler.hand() == Hand.LEFT)
                .count();
        return new Hands(group.bowlers().size() - left, left);
    }
}
