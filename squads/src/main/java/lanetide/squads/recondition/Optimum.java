package lanetide.squads.recondition;

import java.util.List;

/**
 * The best length of a cycle.
 *
 * @param games games from one oiling to the next, or any other unit of age
 * @param costPerGame cost of a cycle over its mean length
 * @param rates the same for cycles of one, two, ... games at the most
 */
public record Optimum(double games, double costPerGame, List<Double> rates) {
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
}
