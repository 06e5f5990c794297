package lanetide.des.stats;

import java.util.Arrays;

/**
 * Where the warm-up of a long run ends, by the marginal standard error rule: leave out so many observations that the
 * standard error of the mean of the rest is least. MSER-5 applies it to means of five, MSER-1 to single observations.
 *
 * <p>Sources, from memory: K. P. White, "An effective truncation heuristic for bias reduction in simulation output",
 * Simulation 69, 1997; K. P. White, M. J. Cobb and S. C. Spratt, Winter Simulation Conference 2000; for leaving the last
 * five batches out of the search K. Hoad, S. Robinson and R. Davies, Journal of the Operational Research Society 61, 2010.
 *
 * @param observations how many observations to leave out
 * @param mean mean of the rest, an incomplete last batch not counted
 * @param isFound whether the least lies in the first half; otherwise the run is too short to tell
 */
public record WarmUp(int observations, double mean, boolean isFound) {

    /** Fewer batches say too little about their spread. */
    private static final int LEAST_BATCHES_KEPT = 5;

    /**
     * Finds the end of the warm-up.
     *
     * @param series the observations in their order
     * @param batch how many to take together, at least 1
     * @throws IllegalArgumentException if {@code batch < 1}, if there are fewer than ten batches, or if a value is NaN or
     *     infinite
     */
    public static WarmUp find(double[] series, int batch) {
        double[] batches = batchMeans(series, batch);
        Tally rest = new Tally();
        int best = 0;
        double bestMean = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int left = batches.length - 1; left >= 0; left--) {
            rest.add(batches[left]);
            if (rest.count() >= LEAST_BATCHES_KEPT && squaredError(rest) <= least) {
                least = squaredError(rest);
                best = left;
                bestMean = rest.mean();
            }
        }
        return new WarmUp(best * batch, bestMean, 2 * best <= batches.length);
    }

    private static double squaredError(Tally rest) {
        return rest.variance() * (rest.count() - 1) / ((double) rest.count() * rest.count());
    }

    private static double[] batchMeans(double[] series, int batch) {
        if (batch < 1) {
            throw new IllegalArgumentException("batch is " + batch + ", but must be at least 1");
        }
        double[] means = new double[series.length / batch];
        if (means.length < 2 * LEAST_BATCHES_KEPT) {
            throw new IllegalArgumentException("there are " + series.length + " observations, but must be at least "
                    + 2 * LEAST_BATCHES_KEPT * batch + " for batches of " + batch);
        }
        for (int i = 0; i < means.length; i++) {
            Tally members = new Tally("observation");
            Arrays.stream(series, i * batch, (i + 1) * batch).forEach(members::add);
            means[i] = members.mean();
        }
        return means;
    }
}
