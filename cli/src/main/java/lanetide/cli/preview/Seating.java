package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;

/**
 * A bowler where he sits.
 *
 * @param place where he sits
 * @param bowler who he is
 */
public record Seating(Place place, Bowler bowler) {
    /**
     * All bowlers of an event.
     *
     * @param event the event
     * @return each where he sits, by squad, group and place in it
     */
    public static List<Seating> of(Event event) {
        List<Seating> all = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            List<Group> groups = event.squads().get(s).groups();
            for (int g = 0; g < groups.size(); g++) {
                for (Bowler bowler : groups.get(g).bowlers()) {
                    all.add(new Seating(new Place(s, g, Optional.of(bowler.id())), bowler));
                }
            }
        }
        return all;
    }
}
