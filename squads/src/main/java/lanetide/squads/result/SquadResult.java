package lanetide.squads.result;

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
     * Mean over all games of all bowlers.
     *
     * @return pins a game
     * @throws java.util.NoSuchElementException if nobody bowled
     */
    public double meanScore() {
        return bowlers.stream()
                .flatMap(bowler -> bowler.scores().stream())
                .mapToInt(Integer::intValue)
                .average()
                .orElseThrow();
    }

    /**
     * Games bowled.
     *
     * @return the last game that anybody bowled, from 1; 0 if nobody bowled
     */
    public int games() {
        return bowlers.stream()
                .mapToInt(bowler -> bowler.firstGame() + bowler.scores().size())
                .max()
                .orElse(0);
    }

    /**
     * Mean of one game over all who bowled it.
     *
     * @param game game from 0
     * @return pins
     * @throws java.util.NoSuchElementException if nobody bowled it
     */
    public double meanScore(int game) {
        return bowlers.stream()
                .flatMapToInt(bowler -> bowler.score(game).stream())
                .average()
                .orElseThrow();
    }
}
