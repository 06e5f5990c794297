package lanetide.squads.recondition;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * The cheapest way to part squads that follow one another into stretches, each played on one oiling: dynamic
 * programming (R. Bellman, "On the approximation of curves by line segments using dynamic programming", Communications
 * of the ACM 4, 1961), which looks at every choice without trying each.
 */
final class Stretches {
    private Stretches() {}

    /** What a stretch costs. */
    interface Cost {
        /**
         * Cost of oiling before a squad and of playing on that oil.
         *
         * @param start the squad before which lanes are oiled, counted from zero
         * @param end the squad before which they are oiled again, or the number of squads
         * @return the cost
         */
        double of(int start, int end);
    }

    /**
     * The cheapest stretches of a given number.
     *
     * @param squads number of squads, at least 1
     * @param oilings number of stretches, from 1 to {@code squads}
     * @param cost what a stretch costs
     * @return the first squad of each; of equal choices the one that oils late
     */
    static List<Integer> cheapest(int squads, int oilings, Cost cost) {
        double[] least = new double[squads + 1];
        Arrays.fill(least, 1, squads + 1, Double.POSITIVE_INFINITY);
        int[][] from = new int[oilings][];
        for (int stretch = 0; stretch < oilings; stretch++) {
            double[] before = least;
            least = new double[squads + 1];
            least[0] = Double.POSITIVE_INFINITY;
            from[stretch] = oneMore(before, least, cost);
        }
        Deque<Integer> starts = new ArrayDeque<>();
        int end = squads;
        for (int stretch = oilings - 1; stretch >= 0; stretch--) {
            end = from[stretch][end];
            starts.push(end);
        }
        return List.copyOf(starts);
    }

    /** The cheapest stretches of any number. */
    static List<Integer> cheapest(int squads, Cost cost) {
        double[] least = new double[squads + 1];
        int[] from = oneMore(least, least, cost);
        Deque<Integer> starts = new ArrayDeque<>();
        for (int end = squads; end > 0; end = from[end]) {
            starts.push(from[end]);
        }
        return List.copyOf(starts);
    }

    /** Adds a last stretch to what is cheapest before it, up to every squad. */
    private static int[] oneMore(double[] before, double[] least, Cost cost) {
        int[] from = new int[least.length];
        for (int end = 1; end < least.length; end++) {
            least[end] = Double.POSITIVE_INFINITY;
            for (int start = end - 1; start >= 0; start--) {
                double sum = before[start] + cost.of(start, end);
                if (sum < least[end]) {
                    least[end] = sum;
                    from[end] = start;
                }
            }
        }
        return from;
    }

    /** What stretches cost together. */
    static double sum(List<Integer> starts, int squads, Cost cost) {
        double sum = 0;
        for (int i = 0; i < starts.size(); i++) {
            sum += cost.of(starts.get(i), i + 1 < starts.size() ? starts.get(i + 1) : squads);
        }
        return sum;
    }
}
