package lanetide.squads.model;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lanetide.oilflow.Require;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.rotation.Rotation;

/**
 * A whole event, ready to be played.
 *
 * @param name what the director calls it
 * @param centre the lanes
 * @param pattern the oil pattern laid on every lane
 * @param squads in order of start, at least one
 * @param rotations one for each squad: which group plays which pair in which game
 * @param pace how long things take
 */
public record Event(
        String name, Centre centre, OilPattern pattern, List<Squad> squads, List<Rotation> rotations, PaceOfPlay pace) {
    /**
     * Copies the lists and checks that they fit together.
     *
     * @throws IllegalArgumentException if there is no squad, squads are not in order of start, a rotation does not fit its
     *     squad or the centre, the first squad finds bare lanes, or a bowler's name stands twice in a squad
     */
    public Event {
        Require.named(name, "event");
        squads = List.copyOf(squads);
        rotations = List.copyOf(rotations);
        if (squads.isEmpty() || rotations.size() != squads.size()) {
            throw new IllegalArgumentException(
                    "an event needs squads, and a rotation for each: " + squads.size() + " and " + rotations.size());
        }
        if (squads.get(0).conditioning() == Conditioning.NONE) {
            throw new IllegalArgumentException(
                    "the first squad, " + squads.get(0).id() + ", would find bare lanes");
        }
        for (int i = 0; i < squads.size(); i++) {
            checkSquad(squads.get(i), rotations.get(i), centre);
            if (i > 0 && squads.get(i).startMs() < squads.get(i - 1).startMs()) {
                throw new IllegalArgumentException("squad " + squads.get(i).id() + " starts before squad "
                        + squads.get(i - 1).id() + "; list squads in order of start");
            }
        }
    }

    private static void checkSquad(Squad squad, Rotation rotation, Centre centre) {
        if (rotation.groups() != squad.groups().size()
                || rotation.pairs() != centre.pairs().size()) {
            throw new IllegalArgumentException("squad " + squad.id() + " has "
                    + squad.groups().size() + " groups on " + centre.pairs().size() + " pairs, its rotation "
                    + rotation.groups() + " on " + rotation.pairs());
        }
        Set<String> names = new HashSet<>();
        for (Group group : squad.groups()) {
            for (Bowler bowler : group.bowlers()) {
                if (!names.add(bowler.id())) {
                    throw new IllegalArgumentException(
                            "bowler " + bowler.id() + " stands twice in squad " + squad.id());
                }
            }
        }
    }
}
