package lanetide.squads.recondition;

import lanetide.oilflow.Require;

/**
 * When to renew something that gets worse: the cost of a cycle over its length is least. All lengths in whole games are
 * tried.
 *
 * <p><em>Loss that grows</em>: a cycle of length T costs K plus the loss gathered by then. With a loss of a pins per
 * game and game that is T* = sqrt(2 K / a); with minimal repairs of cost c at a power-law rate it is the block policy
 * of R. E. Barlow and L. C. Hunter, "Optimum preventive maintenance policies", Operations Research 8 (1960).
 *
 * <p><em>Age replacement</em>: renewed at age T for cp, or at failure for cf if that comes first (R. E. Barlow and F.
 * Proschan, "Mathematical Theory of Reliability", 1965, chapter 3).
 */
public final class CyclePolicy {
    private CyclePolicy() {}

    /**
     * Loss that grows, by whole games.
     *
     * @param renewal cost of renewing, at least 0
     * @param lossByGame loss in the first, second, ... game of a cycle
     * @return the best number of games, of equal ones the smallest
     * @throws IllegalArgumentException if there is no game or {@code renewal < 0}
     */
    public static Optimum growingLoss(double renewal, double[] lossByGame) {
        Require.inRange(renewal, "cost of renewing", 0, Double.MAX_VALUE);
        requireGames(lossByGame);
        double spent = renewal;
        Optimum best = new Optimum(Double.NaN, Double.POSITIVE_INFINITY);
        for (int games = 1; games <= lossByGame.length; games++) {
            spent += lossByGame[games - 1];
            best = better(best, games, spent / games);
        }
        return best;
    }

    /**
     * Age replacement by whole games: what fails in a game is renewed after it.
     *
     * @param survival chance to live through the first, the first two, ... games
     * @param planned cost of renewing in time
     * @param failed cost of renewing after a failure
     * @return the best number of games, of equal ones the smallest
     * @throws IllegalArgumentException if there is no game, or unless {@code 0 <= planned <= failed}
     */
    public static Optimum ageReplacement(double[] survival, double planned, double failed) {
        requireCosts(planned, failed);
        requireGames(survival);
        double meanLength = 0;
        Optimum best = new Optimum(Double.NaN, Double.POSITIVE_INFINITY);
        for (int games = 1; games <= survival.length; games++) {
            meanLength += games == 1 ? 1 : survival[games - 2];
            double lives = survival[games - 1];
            best = better(best, games, (planned * lives + failed * (1 - lives)) / meanLength);
        }
        return best;
    }

    private static Optimum better(Optimum best, int games, double rate) {
        return rate < best.costPerGame() ? new Optimum(games, rate) : best;
    }

    private static void requireGames(double[] byGame) {
        if (byGame.length == 0) {
            throw new IllegalArgumentException("a cycle needs at least one game to look at, but there is none");
        }
    }

    private static void requireCosts(double planned, double failed) {
        if (!(planned >= 0 && failed >= planned)) {
            throw new IllegalArgumentException("cost of renewing in time (" + planned
                    + ") must be at least 0, and at most that after a failure (" + failed + ")");
        }
    }
}
