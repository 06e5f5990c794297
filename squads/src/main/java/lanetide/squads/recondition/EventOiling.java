package lanetide.squads.recondition;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.model.Event;

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
     * The cheapest choice.
     *
     * @param gamesOfSquad games of each squad on a pair
     * @param lossByGame loss in the first, second, ... game on the oil; the last goes on for older oil
     * @param oiling cost of oiling a pair
     * @return the choice
     */
    static EventOiling best(List<Integer> gamesOfSquad, double[] lossByGame, double oiling) {
        List<Integer> squads = Stretches.cheapest(gamesOfSquad.size(), cost(gamesOfSquad, lossByGame, oiling));
        return of(squads, gamesOfSquad, lossByGame, oiling);
    }

    /** The squads before which an event plans to oil; lanes are bare before the first. */
    static List<Integer> planned(Event event) {
        return IntStream.range(0, event.squads().size())
                .filter(s -> s == 0 || event.squads().get(s).conditioning().laysOil())
                .boxed()
                .toList();
    }

    /** The cost of a choice that is given. */
    static EventOiling of(List<Integer> squads, List<Integer> gamesOfSquad, double[] lossByGame, double oiling) {
        return new EventOiling(
                squads, Stretches.sum(squads, gamesOfSquad.size(), cost(gamesOfSquad, lossByGame, oiling)));
    }

    private static Stretches.Cost cost(List<Integer> gamesOfSquad, double[] lossByGame, double oiling) {
        return (start, end) -> oiling + loss(gamesOfSquad.subList(start, end), lossByGame);
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
