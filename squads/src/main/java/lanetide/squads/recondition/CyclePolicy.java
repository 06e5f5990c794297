package lanetide.squads.recondition;

import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.Require;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.analysis.integration.UnivariateIntegrator;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * When to renew something that gets worse: the cost of a cycle over its length is least. By whole games all lengths are tried; as a
 * continuous age the minimum is searched for, and the cost must have one minimum in the interval.
 *
 * <p><em>Loss that grows</em>: a cycle of length T costs K plus the loss gathered by then. With a loss of a pins per game and game that is
 * T* = sqrt(2 K / a); with minimal repairs of cost c at a power-law rate it is the block policy of R. E. Barlow and L. C. Hunter, "Optimum
 * preventive maintenance policies", Operations Research 8 (1960).
 *
 * <p><em>Age replacement</em>: renewed at age T for cp, or at failure for cf if that comes first (R. E. Barlow and F. Proschan,
 * "Mathematical Theory of Reliability", 1965, chapter 3).
 */
public final class CyclePolicy {
    private static final double PRECISION = 1e-10;
    private static final int MOST_STEPS = 10_000;
    private static final int NODES = 8;

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
     * Loss that grows, over a continuous age.
     *
     * @param renewal cost of renewing
     * @param gathered loss gathered by an age
     * @param low shortest cycle, above 0
     * @param high longest cycle
     * @return the best age
     */
    public static Optimum growingLoss(double renewal, DoubleUnaryOperator gathered, double low, double high) {
        return least(age -> (renewal + gathered.applyAsDouble(age)) / age, low, high);
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

    /**
     * Age replacement over a continuous age.
     *
     * @param survival chance to live to an age
     * @param planned cost of renewing in time
     * @param failed cost of renewing after a failure
     * @param low earliest age, above 0
     * @param high latest age
     * @return the best age
     * @throws IllegalArgumentException unless {@code 0 <= planned <= failed}
     */
    public static Optimum ageReplacement(
            DoubleUnaryOperator survival, double planned, double failed, double low, double high) {
        requireCosts(planned, failed);
        UnivariateIntegrator integrator = new IterativeLegendreGaussIntegrator(NODES, PRECISION, PRECISION);
        return least(
                age -> {
                    double lives = survival.applyAsDouble(age);
                    double meanLength = integrator.integrate(MOST_STEPS, survival::applyAsDouble, 0, age);
                    return (planned * lives + failed * (1 - lives)) / meanLength;
                },
                low,
                high);
    }

    private static Optimum least(DoubleUnaryOperator rate, double low, double high) {
        UnivariatePointValuePair found = new BrentOptimizer(PRECISION, PRECISION)
                .optimize(
                        new UnivariateObjectiveFunction(rate::applyAsDouble),
                        GoalType.MINIMIZE,
                        new SearchInterval(low, high),
                        new MaxEval(MOST_STEPS));
        return new Optimum(found.getPoint(), found.getValue());
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
