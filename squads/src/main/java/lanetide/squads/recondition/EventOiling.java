package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.List;

/**
 * Before which squads of an event to oil.
 *
 * @param squads the squads, counted from zero; the first is always among them
 * @param costPerPair cost of the event on one pair
 */
public record EventOiling(List<Integer> squads, double costPerPair) {
    /** Copies the list. */
    public EventOiling {
        squads = List.copyOf(squads);
    }

    /**
     * The cheapest choice. Found by dynamic programming over the squads, which looks at every choice.
     *
     * @param gamesOfSquad games of each squad on a pair
     * @param lossByGame loss in the first, second, ... game on the oil; the last goes on for older oil
     * @param oiling cost of oiling a pair
     * @return the choice
     */
    static EventOiling best(List<Integer> gamesOfSquad, double[] lossByGame, double oiling) {
        int count = gamesOfSquad.size();
        double[] least = new double[count + 1];
        int[] from = new int[count + 1];
        for (int end = 1; end <= count; end++) {
            least[end] = Double.POSITIVE_INFINITY;
            for (int start = 0; start < end; start++) {
                double cost = least[start] + oiling + loss(gamesOfSquad.subList(start, end), lossByGame);
                if (cost < least[end]) {
                    least[end] = cost;
                    from[end] = start;
                }
            }
        }
        List<Integer> squads = new ArrayList<>();
        for (int end = count; end > 0; end = from[end]) {
            squads.add(0, from[end]);
        }
        return new EventOiling(squads, least[count]);
    }

    /** The cost of a choice that is given. */
    static EventOiling of(List<Integer> squads, List<Integer> gamesOfSquad, double[] lossByGame, double oiling) {
        double cost = 0;
        for (int i = 0; i < squads.size(); i++) {
            int end = i + 1 < squads.size() ? squads.get(i + 1) : gamesOfSquad.size();
            cost += oiling + loss(gamesOfSquad.subList(squads.get(i), end), lossByGame);
        }
        return new EventOiling(squads, cost);
    }

    private static double loss(List<Integer> games, double[] lossByGame) {
        int all = games.stream().mapToInt(Integer::intValue).sum();
        double loss = 0;
        for (int age = 0; age < all; age++) {
            loss += lossByGame[Math.min(age, lossByGame.length - 1)];
        }
        return loss;
    }
}
