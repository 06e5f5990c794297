package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A fixed number of games split into stints, each on one renewal. Found by dynamic programming over the games, which looks at every
 * split (as a race is split into stints on sets of tyres: A. Heilmeier, M. Graf and M. Lienkamp, "A race simulation for strategy
 * decisions in circuit motorsports", IEEE ITSC 2018).
 *
 * @param stints the stints in order
 * @param cost loss of all stints and cost of the renewals between them
 */
public record StintPlan(List<Stint> stints, double cost) {
    /** Copies the list. */
    public StintPlan {
        stints = List.copyOf(stints);
    }

    /**
     * One stint.
     *
     * @param law index of the law by which it wears
     * @param games its length, at least 1
     */
    public record Stint(int law, int games) {}

    /**
     * The cheapest plan with a number of stints.
     *
     * @param games games in all, at least {@code stints}
     * @param stints number of stints, at least 1
     * @param lossByGame for every law the loss in the first, second, ... game of a stint, for at least {@code games} games
     * @param renewal cost of each renewal between two stints
     * @return the plan; of equal ones that whose last stint is shortest
     * @throws IllegalArgumentException if {@code stints < 1}, {@code games < stints}, or a law covers fewer games
     */
    public static StintPlan best(int games, int stints, List<double[]> lossByGame, double renewal) {
        if (stints < 1
                || games < stints
                || lossByGame.isEmpty()
                || lossByGame.stream().anyMatch(law -> law.length < games)) {
            throw new IllegalArgumentException("a plan of " + games + " games in " + stints
                    + " stints needs at least one game a stint, and laws that cover all games");
        }
        List<double[]> gathered = lossByGame.stream().map(StintPlan::gathered).toList();
        double[][] least = new double[stints + 1][games + 1];
        Stint[][] last = new Stint[stints + 1][games + 1];
        for (double[] row : least) {
            java.util.Arrays.fill(row, Double.POSITIVE_INFINITY);
        }
        least[0][0] = -renewal;
        for (int stint = 1; stint <= stints; stint++) {
            for (int end = stint; end <= games; end++) {
                for (int length = 1; length <= end; length++) {
                    for (int law = 0; law < gathered.size(); law++) {
                        double cost = least[stint - 1][end - length] + renewal + gathered.get(law)[length];
                        if (cost < least[stint][end]) {
                            least[stint][end] = cost;
                            last[stint][end] = new Stint(law, length);
                        }
                    }
                }
            }
        }
        List<Stint> plan = new ArrayList<>();
        for (int stint = stints, end = games; stint > 0; end -= last[stint][end].games(), stint--) {
            plan.add(last[stint][end]);
        }
        Collections.reverse(plan);
        return new StintPlan(plan, least[stints][games]);
    }

    private static double[] gathered(double[] lossByGame) {
        double[] gathered = new double[lossByGame.length + 1];
        for (int game = 0; game < lossByGame.length; game++) {
            gathered[game + 1] = gathered[game] + lossByGame[game];
        }
        return gathered;
    }
}
