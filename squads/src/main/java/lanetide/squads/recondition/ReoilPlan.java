package lanetide.squads.recondition;

import lanetide.oilflow.Require;
import lanetide.squads.model.Costs;

/**
 * How the question when to oil again is studied.
 *
 * @param seed master seed of all chance
 * @param replications independent playings, 4 to 100 000
 * @param games oldest oil looked at, in games a pair has seen, 2 to 100
 * @param marginPins change of the expected score that is still accepted (pins a game), above 0
 * @param limitBoards move of the windows that counts as a failure of the lane (boards), above 0
 * @param costs what oiling costs and what it saves
 */
public record ReoilPlan(long seed, int replications, int games, double marginPins, double limitBoards, Costs costs) {
    /** Oldest oil looked at where nobody says otherwise. */
    public static final int DEFAULT_GAMES = 24;

    /**
     * The limit used where nobody sets another (assumption): bowlers follow a board, the trade's smallest move at the
     * arrows, and more is felt.
     */
    public static final double DEFAULT_LIMIT_BOARDS = 1.5;

    /** Largest limit. */
    public static final double MAX_LIMIT_BOARDS = 20;

    /** Fewest playings. */
    public static final int MIN_REPLICATIONS = 4;

    /** Most playings. */
    public static final int MAX_REPLICATIONS = 100_000;

    /** Oldest oil that can be looked at. */
    public static final int MAX_GAMES = 100;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public ReoilPlan {
        Require.inRange(replications, "replications", MIN_REPLICATIONS, MAX_REPLICATIONS);
        Require.inRange(games, "games", 2, MAX_GAMES);
        Require.inRange(marginPins, "margin (pins a game)", Double.MIN_VALUE, 50);
        Require.inRange(limitBoards, "limit (boards)", Double.MIN_VALUE, MAX_LIMIT_BOARDS);
    }
}
