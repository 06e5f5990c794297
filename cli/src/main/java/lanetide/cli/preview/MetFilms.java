package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;

/**
 * Keeps the films that a group finds on its pair before each of its games, both lanes; before the first game as before
 * practice.
 */
final class MetFilms implements LaneObserver {
    private final String squad;
    /** The game before which a lane is met as it is after some game of the squad. */
    private final Map<Key, List<Integer>> wanted = new HashMap<>();

    private final List<List<LaneMet>> byGame = new ArrayList<>();
    private final Set<Integer> lanes = new HashSet<>();
    private final Map<Integer, OilFilm> laid = new HashMap<>();

    private record Key(int lane, int afterGame) {}

    /** A lane as it is met, and as it was when it was last oiled. */
    record LaneMet(int lane, OilFilm film, OilFilm laid) {}

    MetFilms(Event event, Place place) {
        squad = event.squads().get(place.squad()).id();
        for (int game = 0; game < place.rotation(event).games(); game++) {
            byGame.add(new ArrayList<>());
            LanePair pair = place.pair(event, game);
            int before = place.lastPlayed(event, game);
            for (int lane : List.of(pair.left(), pair.right())) {
                lanes.add(lane);
                wanted.computeIfAbsent(new Key(lane, before), key -> new ArrayList<>())
                        .add(game);
            }
        }
    }

    @Override
    public void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines) {
        if (moment.gamesOnOil() == 0 && lanes.contains(moment.lane())) {
            laid.put(moment.lane(), film.copy());
        }
        if (moment.squad().equals(squad)) {
            for (int game : wanted.getOrDefault(new Key(moment.lane(), moment.afterGame()), List.of())) {
                byGame.get(game).add(new LaneMet(moment.lane(), film.copy(), laid.get(moment.lane())));
            }
        }
    }

    /** Both lanes before each game. */
    List<List<LaneMet>> byGame() {
        return byGame;
    }
}
