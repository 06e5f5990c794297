package lanetide.des.stats;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Probabilities of several tests, adjusted so that the chance of even one false alarm among them stays at the level of
 * a single test. Source: S. Holm, "A simple sequentially rejective multiple test procedure", Scandinavian Journal of
 * Statistics 6, 1979.
 */
public final class Holm {

    private Holm() {}

    /**
     * Adjusted probabilities, in the order of the given ones.
     *
     * @throws IllegalArgumentException unless all lie between 0 and 1
     */
    public static double[] adjust(double[] probabilities) {
        for (double probability : probabilities) {
            Checks.probability(probability, "probability");
        }
        int tests = probabilities.length;
        int[] order = IntStream.range(0, tests)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> probabilities[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[tests];
        double greatest = 0;
        for (int rank = 0; rank < tests; rank++) {
            double scaled = Math.min(1, (tests - rank) * probabilities[order[rank]]);
            greatest = Math.max(greatest, scaled);
            adjusted[order[rank]] = greatest;
        }
        return adjusted;
    }
}
