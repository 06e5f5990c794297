package lanetide.squads.rotation.design;

import java.util.List;
import java.util.stream.IntStream;

/**
 * In which order squads bowl on one oiling, day by day, so that each is equally often first, second, and so on, and
 * follows each other squad equally often: the rows of a Williams design (1949), whose columns are a day's turns.
 */
public final class SquadOrder {

    private SquadOrder() {}

    /**
     * The fewest days for a balanced order: as many as squads where their number is even, twice as many where it is
     * odd. For 3, 5 and 7 squads as many days as squads are proven not to be enough.
     *
     * @param squads number of squads, at least 1
     * @return the days of {@link #balanced}
     */
    public static int days(int squads) {
        return squads == 1 || squads % 2 == 0 ? squads : 2 * squads;
    }

    /**
     * A balanced order.
     *
     * @param squads number of squads, at least 1
     * @return one row a day, in it the squads counted from zero in order of their turns
     * @throws IllegalArgumentException if {@code squads < 1}
     */
    public static List<List<Integer>> balanced(int squads) {
        if (squads < 1) {
            throw new IllegalArgumentException("squads is " + squads + ", but must be at least 1");
        }
        int[] zigZag = CyclicPlan.zigZag(squads, squads);
        return IntStream.range(0, days(squads))
                .mapToObj(day -> day(day, squads, zigZag))
                .toList();
    }

    /** On the days past the first square the order is turned round. */
    private static List<Integer> day(int day, int squads, int[] zigZag) {
        return IntStream.range(0, squads)
                .mapToObj(turn -> (day + zigZag[day < squads ? turn : squads - 1 - turn]) % squads)
                .toList();
    }
}
