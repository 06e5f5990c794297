package lanetide.cli.preview;

import java.util.Optional;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.rotation.Rotation;

/**
 * Whose way through an event is looked at.
 *
 * @param squad his squad, counted from zero
 * @param group his group, counted from zero
 * @param bowler his name; empty if any bowler of the group is meant
 */
public record Seat(int squad, int group, Optional<String> bowler) {
    /**
     * Where he bowls.
     *
     * @param event the event
     * @param game game, counted from zero
     * @return the pair
     */
    public LanePair pair(Event event, int game) {
        return event.centre().pairs().get(rotation(event).pairOf(game, group));
    }

    /**
     * How his squad moves.
     *
     * @param event the event
     * @return the rotation
     */
    public Rotation rotation(Event event) {
        return event.rotations().get(squad);
    }
}
