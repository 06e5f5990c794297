package lanetide.squads.measured;

import lanetide.oilflow.Require;

/**
 * When a game of a squad was done on its last pair.
 *
 * @param squad name of the squad
 * @param game game of the squad, from 1
 * @param endedMs when (ms from midnight before the first day), at least 0
 * @param errorMs its error (ms, standard deviation), above 0
 * @param place where it stands, for what is said of it
 */
public record GameEnded(String squad, int game, long endedMs, double errorMs, String place) {
    /** Error of a time where none is stated (ms, standard deviation): people look at a clock (assumption). */
    public static final double USUAL_ERROR_MS = 60_000;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public GameEnded {
        Require.named(squad, "squad");
        Require.inRange(game, "game", 1, Integer.MAX_VALUE);
        Require.inRange((double) endedMs, "end of a game (ms)", 0, Double.MAX_VALUE);
        Require.positive(errorMs, "error of the end of a game (ms)");
    }
}
