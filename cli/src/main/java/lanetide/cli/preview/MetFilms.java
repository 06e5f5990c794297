package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.play.LaneObserver;
import lanetide.squads.play.LaneState;
import lanetide.squads.play.TypicalLine;
import lanetide.squads.rotation.Rotation;

/** Keeps the films that a group finds on its pair before each of its games, both lanes; before the first game as before practice. */
final class MetFilms implements LaneObserver {
    private final String squad;
    /** The game before which a lane is met as it is after some game of the squad. */
    private final Map<Key, List<Integer>> wanted = new HashMap<>();

    private final List<List<OilFilm>> byGame = new ArrayList<>();

    private record Key(int lane, int afterGame) {}

    MetFilms(Event event, Seat seat) {
        squad = event.squads().get(seat.squad()).id();
        Rotation rotation = seat.rotation(event);
        for (int game = 0; game < rotation.games(); game++) {
            byGame.add(new ArrayList<>());
            LanePair pair = seat.pair(event, game);
            int before = lastPlayed(rotation, rotation.pairOf(game, seat.group()), game);
            for (int lane : List.of(pair.left(), pair.right())) {
                wanted.computeIfAbsent(new Key(lane, before), key -> new ArrayList<>())
                        .add(game);
            }
        }
    }

    /** The last game before a game in which anybody bowls on a pair, from 1; 0 if nobody does. */
    private static int lastPlayed(Rotation rotation, int pair, int game) {
        int last = game;
        while (last > 0 && rotation.groupOn(last - 1, pair).isEmpty()) {
            last--;
        }
        return last;
    }

    @Override
    public void onLane(LaneState state, OilFilm film, List<TypicalLine> lines) {
        if (state.squad().equals(squad)) {
            for (int game : wanted.getOrDefault(new Key(state.lane(), state.afterGame()), List.of())) {
                byGame.get(game).add(film.copy());
            }
        }
    }

    /** The films of both lanes before each game. */
    List<List<OilFilm>> byGame() {
        return byGame;
    }
}
