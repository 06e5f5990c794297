package lanetide.des.stats;

/**
 * Mean, spread and range of observations, taken one at a time and not kept.
 *
 * <p>The sum of squared deviations is updated with each observation (E. A. Youngs and E. M. Cramer, "Some results
 * relevant to choice of sum and sum-of-product algorithms", Technometrics 13, 1971) and never as a difference of two
 * large sums, so that a small spread about a large mean keeps its digits. Observations beyond about 1e150 in size
 * overflow it to infinity.
 */
public final class Tally {

    private final String name;
    private long count;
    private double sum;
    private double squaredDeviations;
    private double min = Double.POSITIVE_INFINITY;
    private double max = Double.NEGATIVE_INFINITY;

    /** An empty tally of something without a name of its own. */
    public Tally() {
        this("observation");
    }

    /**
     * An empty tally.
     *
     * @param name what is observed, for error messages
     */
    public Tally(String name) {
        this.name = name;
    }

    /**
     * Takes one observation.
     *
     * @throws IllegalArgumentException if {@code x} is NaN or infinite
     */
    public void add(double x) {
        Checks.finite(x, name);
        count++;
        sum += x;
        min = Math.min(min, x);
        max = Math.max(max, x);
        if (count > 1) {
            double scaledDeviation = count * x - sum;
            squaredDeviations += scaledDeviation * scaledDeviation / ((double) count * (count - 1));
        }
    }

    /** Number of observations. */
    public long count() {
        return count;
    }

    /**
     * Mean of the observations.
     *
     * @throws IllegalStateException if {@code count() < 1}
     */
    public double mean() {
        requireCount(1, "mean");
        return sum / count;
    }

    /**
     * Sample variance, with divisor {@code count() - 1}.
     *
     * @throws IllegalStateException if {@code count() < 2}
     */
    public double variance() {
        requireCount(2, "variance");
        return squaredDeviations / (count - 1);
    }

    /**
     * Square root of the sample variance.
     *
     * @throws IllegalStateException if {@code count() < 2}
     */
    public double standardDeviation() {
        return Math.sqrt(variance());
    }

    /**
     * Estimated standard deviation of the mean, if the observations are independent.
     *
     * @throws IllegalStateException if {@code count() < 2}
     */
    public double standardError() {
        return Math.sqrt(variance() / count);
    }

    /**
     * Smallest observation.
     *
     * @throws IllegalStateException if {@code count() < 1}
     */
    public double min() {
        requireCount(1, "minimum");
        return min;
    }

    /**
     * Largest observation.
     *
     * @throws IllegalStateException if {@code count() < 1}
     */
    public double max() {
        requireCount(1, "maximum");
        return max;
    }

    /**
     * Confidence interval for the mean by Student's t with {@code count() - 1} degrees of freedom. It holds for
     * independent and roughly normal observations, such as the means of replications (A. M. Law, "Simulation Modeling
     * and Analysis", 5th ed. 2015, section 9.4), and not for the successive values within one run.
     *
     * @param level probability of covering, between 0 and 1, such as 0.95
     * @throws IllegalArgumentException unless {@code 0 < level < 1}
     * @throws IllegalStateException if {@code count() < 2}
     */
    public ConfidenceInterval meanInterval(double level) {
        Checks.level(level);
        requireCount(2, "confidence interval");
        return MeanEstimate.of(this).interval(level);
    }

    private void requireCount(long least, String statistic) {
        if (count < least) {
            throw new IllegalStateException("the " + statistic + " of " + name + " needs at least " + least
                    + " observations, but has " + count);
        }
    }
}
