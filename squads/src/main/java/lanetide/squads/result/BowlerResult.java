package lanetide.squads.result;

import java.util.List;
import java.util.OptionalInt;
import lanetide.squads.model.Bowler;

/**
 * What one bowler scored.
 *
 * @param bowler the bowler
 * @param group group he played in
 * @param firstGame first game he bowled, from 0; later than 0 for a substitute and for one who came late
 * @param scores pins of that game and those after it, without handicap
 * @param sheets their score sheets, such as {@code X X X 72 S8/ F9 X 7/ 9- XX8}
 * @param ballChanges how often he changed his ball for full racks
 */
public record BowlerResult(
        Bowler bowler, String group, int firstGame, List<Integer> scores, List<String> sheets, int ballChanges) {
    /** Copies the lists. */
    public BowlerResult {
        scores = List.copyOf(scores);
        sheets = List.copyOf(sheets);
    }

    /**
     * Mean over the games he bowled.
     *
     * @return pins a game
     * @throws java.util.NoSuchElementException without games
     */
    public double meanScore() {
        return scores.stream().mapToInt(Integer::intValue).average().orElseThrow();
    }

    /**
     * His score in a game.
     *
     * @param game the squad's game, from 0
     * @return pins; empty if he did not bowl it
     */
    public OptionalInt score(int game) {
        int at = game - firstGame;
        return at >= 0 && at < scores.size() ? OptionalInt.of(scores.get(at)) : OptionalInt.empty();
    }
}
