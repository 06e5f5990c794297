package lanetide.squads.result;

import java.util.List;

/**
 * What came of the finals of one playing.
 *
 * @param endMs when the last ball was scored (ms from midnight before the first day)
 * @param finalists everybody who bowled in them, by seed
 */
public record FinalsResult(long endMs, List<Finalist> finalists) {
    /** Copies the list. */
    public FinalsResult {
        finalists = List.copyOf(finalists);
    }

    /**
     * Somebody who made the cut.
     *
     * @param name the person's name
     * @param seed his place in qualifying, from 1
     * @param games pins of his games, with handicap if that counts
     * @param wins matches he won; a tie in a round robin is half of one
     * @param place where he stands at the end, from 1
     */
    public record Finalist(String name, int seed, List<Integer> games, double wins, int place) {
        /** Copies the list. */
        public Finalist {
            games = List.copyOf(games);
        }
    }
}
