package lanetide.squads.play;

import java.util.List;
import lanetide.squads.model.Bowler;

/**
 * What one bowler scored.
 *
 * @param bowler the bowler
 * @param group group he played in
 * @param scores pins by game, without handicap
 * @param sheets score sheets by game, such as {@code X X X 72 S8/ F9 X 7/ 9- XX8}
 * @param ballChanges how often he changed his ball for full racks
 */
public record BowlerResult(Bowler bowler, String group, List<Integer> scores, List<String> sheets, int ballChanges) {
    /** Copies the lists. */
    public BowlerResult {
        scores = List.copyOf(scores);
        sheets = List.copyOf(sheets);
    }

    /**
     * Mean over the games.
     *
     * @return pins a game; NaN without games
     */
    public double meanScore() {
        return scores.stream().mapToInt(Integer::intValue).average().orElse(Double.NaN);
    }
}
