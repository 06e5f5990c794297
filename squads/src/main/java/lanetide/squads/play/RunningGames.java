package lanetide.squads.play;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanetide.squads.result.BrokenRuleException;

/** The games of a squad that are going on, and where each of them counts. */
final class RunningGames {
    /** In place of a pair: a group plays elsewhere than on the pair of its rotation. */
    static final int ELSEWHERE = -1;

    private final Day day;
    private final String squad;
    private final List<GroupInPlay> groups;
    private final Stopwatch stopwatch;
    private final PairGame.Watcher watcher;
    private final Map<PairGame, Place> places = new LinkedHashMap<>();

    /**
     * Where a game counts.
     *
     * @param pair the pair of the rotation whose turn it takes, or {@link #ELSEWHERE}
     * @param game its number from 0
     */
    record Place(int pair, int game) {}

    RunningGames(Day day, String squad, List<GroupInPlay> groups, Stopwatch stopwatch, PairGame.Watcher watcher) {
        this.day = day;
        this.squad = squad;
        this.groups = groups;
        this.stopwatch = stopwatch;
        this.watcher = watcher;
    }

    /** Lets players play what they have still to play of a game. */
    void play(List<BowlerInGame> players, PairLanes lanes, Place place) {
        requireFree(lanes);
        PairGame game = new PairGame(day, lanes, stopwatch, watcher);
        places.put(game, place);
        for (BowlerInGame player : players) {
            groups.get(player.group()).stands(lanes);
            player.member().goesTo(lanes);
        }
        game.play(players);
    }

    /**
     * Holds that a pair has one game at a time.
     *
     * @throws BrokenRuleException if another one is going on there
     */
    void requireFree(PairLanes lanes) {
        if (places.keySet().stream().anyMatch(game -> game.lanes().equals(lanes))) {
            throw new BrokenRuleException("two groups play on lanes "
                    + lanes.left().number() + " and " + lanes.right().number() + " at one time");
        }
    }

    /** Writes down what a game has made of its lanes. */
    Place close(PairGame game) {
        Place place = places.remove(game);
        for (LaneInPlay lane : game.lanes().both()) {
            lane.countGames(1);
            day.recorder().record(lane, squad, place.game() + 1);
        }
        return place;
    }

    /** In order of start. */
    Collection<PairGame> all() {
        return places.keySet();
    }

    boolean isEmpty() {
        return places.isEmpty();
    }
}
