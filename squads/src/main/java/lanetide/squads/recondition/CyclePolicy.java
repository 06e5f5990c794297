package lanetide.squads.recondition;

import java.util.Arrays;
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
        double[] rates = new double[lossByGame.length];
        double spent = renewal;
        for (int game = 0; game < rates.length; game++) {
            spent += lossByGame[game];
            rates[game] = spent / (game + 1);
        }
        return least(rates);
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
        double[] rates = new double[survival.length];
        double meanLength = 0;
        for (int game = 0; game < rates.length; game++) {
            meanLength += game == 0 ? 1 : survival[game - 1];
            rates[game] = (planned * survival[game] + failed * (1 - survival[game])) / meanLength;
        }
        return least(rates);
    }

    /** The least of rates by whole games, of equal ones the first. */
    static Optimum least(double[] rates) {
        int best = 0;
        for (int game = 1; game < rates.length; game++) {
            best = rates[game] < rates[best] ? game : best;
        }
        return new Optimum(best + 1, rates[best], Arrays.stream(rates).boxed().toList());
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
