package lanetide.squads.measured;

import lanetide.oilflow.Require;

/**
 * What a bowler scored in a game.
 *
 * @param squad name of the squad
 * @param game game of the squad, from 1
 * @param bowler name of the bowler in the squad
 * @param pins his score without handicap, 0 to 300
 * @param place where it stands, for what is said of it
 */
public record ScoreMade(String squad, int game, String bowler, int pins, String place) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public ScoreMade {
        Require.named(squad, "squad");
        Require.named(bowler, "bowler");
        Require.inRange(game, "game", 1, Integer.MAX_VALUE);
        Require.inRange(pins, "score", 0, 300);
    }
}
