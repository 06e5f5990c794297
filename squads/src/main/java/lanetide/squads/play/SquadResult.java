package lanetide.squads.play;

import java.util.List;

/**
 * What one squad did.
 *
 * @param squad squad's name
 * @param startMs when practice started (ms from midnight before the first day)
 * @param endMs when its last ball was scored (ms)
 * @param bowlers results in the order of groups and bowling order
 * @param pace how its time was spent
 */
public record SquadResult(String squad, long startMs, long endMs, List<BowlerResult> bowlers, PaceKept pace) {
    /** Copies the list. */
    public SquadResult {
        bowlers = List.copyOf(bowlers);
    }

    /**
     * Mean over all bowlers and games.
     *
     * @return pins a game; NaN without bowlers
     */
    public double meanScore() {
        return bowlers.stream().mapToDouble(BowlerResult::meanScore).average().orElse(Double.NaN);
    }

    /**
     * Games bowled.
     *
     * @return the most that any bowler bowled; 0 without bowlers
     */
    public int games() {
        return bowlers.stream().mapToInt(bowler -> bowler.scores().size()).max().orElse(0);
    }

    /**
     * Mean over all bowlers of one game.
     *
     * @param game game from 0
     * @return pins; NaN without bowlers
     * @throws IndexOutOfBoundsException if {@code game} is not in {@code [0, games)}
     */
    public double meanScore(int game) {
        return bowlers.stream()
                .mapToInt(bowler -> bowler.scores().get(game))
                .average()
                .orElse(Double.NaN);
    }
}
