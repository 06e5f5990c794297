package lanetide.cli.preview;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.oilflow.ball.Coverstock;
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
public record Place(int squad, int group, Optional<String> bowler) {
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
     * The last game before a game in which anybody bowled on its pair: the lanes are met as that game left them.
     *
     * @param event the event
     * @param game game, counted from zero
     * @return that game, from 1; 0 if nobody of the squad has bowled there
     */
    public int lastPlayed(Event event, int game) {
        Rotation rotation = rotation(event);
        int pair = rotation.pairOf(game, group);
        int last = game;
        while (last > 0 && rotation.groupOn(last - 1, pair).isEmpty()) {
            last--;
        }
        return last;
    }

    /**
     * The place of his group.
     *
     * @return the same place, whoever sits there
     */
    public Place ofGroup() {
        return new Place(squad, group, Optional.empty());
    }

    /**
     * The balls that his entry says he brings for full racks.
     *
     * @param event the event
     * @return their covers; none where anybody is meant
     */
    public List<Coverstock> bag(Event event) {
        return bowler.stream()
                .flatMap(name -> event.squads().get(squad).groups().get(group).bowlers().stream()
                        .filter(other -> other.id().equals(name)))
                .flatMap(who -> Stream.concat(Stream.of(who.cover()), who.secondCover().stream()))
                .toList();
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
