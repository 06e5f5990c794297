package lanetide.squads.recondition;

import java.util.Collections;
import java.util.List;

/**
 * The best length of a cycle.
 *
 * @param games games from one oiling to the next, or any other unit of age
 * @param costPerGame cost of a cycle over its mean length
 * @param rates the same for cycles of one, two, ... games at the most
 */
public record Optimum(double games, double costPerGame, List<Double> rates) {
    private static final double NOT_SHOWN = 0.05;

    /** Copies the list. */
    public Optimum {
        rates = List.copyOf(rates);
    }

    /** From how many to how many games, next to the best and without a gap, cost at most a share more than that. */
    Interval.Flat flat(double share) {
        double most = costPerGame * (1 + share);
        int from = (int) games;
        int to = from;
        while (from > 1 && rates.get(from - 2) <= most) {
            from--;
        }
        while (to < rates.size() && rates.get(to) <= most) {
            to++;
        }
        return new Interval.Flat(from, to, most - costPerGame);
    }

    /**
     * From how many to how many games, next to the best and without a gap, are not shown to cost at least a share more
     * than that: in one of twenty redrawn playings or more they do not.
     *
     * @param redrawn rates of the same cycles in playings that were drawn again
     * @param share of the least cost
     */
    Interval.Flat notShownToCostMore(List<List<Double>> redrawn, double share) {
        int best = (int) games - 1;
        int from = best;
        while (from > 0 && isNotShown(redrawn, from - 1, best, share)) {
            from--;
        }
        int to = best;
        while (to + 1 < rates.size() && isNotShown(redrawn, to + 1, best, share)) {
            to++;
        }
        double most = Collections.max(rates.subList(from, to + 1));
        return new Interval.Flat(from + 1, to + 1, most - costPerGame);
    }

    private static boolean isNotShown(List<List<Double>> redrawn, int other, int best, double share) {
        long not = redrawn.stream()
                .filter(one -> one.get(other) <= one.get(best) * (1 + share))
                .count();
        return not >= NOT_SHOWN * redrawn.size();
    }
}
