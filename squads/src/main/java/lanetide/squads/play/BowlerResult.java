package lanetide.squads.play;

import java.util.List;
import lanetide.squads.model.Bowler;

/**
 * What one bowler scored.
 *
 * @param bowler the bowler
 * @param group group he played in
 * @param scores pins by game
 */
public record BowlerResult(Bowler bowler, String group, List<Integer> scores) {
    /** Copies the list. */
    public BowlerResult {
        scores = List.copyOf(scores);
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
