package lanetide.des.stats;

/**
 * What is known of a sample once its observations are gone.
 *
 * @param count number of observations, at least 2
 * @param mean their mean
 * @param standardDeviation square root of their sample variance, at least 0
 */
public record Sample(long count, double mean, double standardDeviation) {

    /**
     * @throws IllegalArgumentException if {@code count < 2}, if {@code mean} or {@code standardDeviation} is not finite,
     *     or if {@code standardDeviation < 0}
     */
    public Sample {
        if (count < 2) {
            throw new IllegalArgumentException("count is " + count + ", but must be at least 2");
        }
        Checks.finite(mean, "mean");
        Checks.notNegative(standardDeviation, "standardDeviation");
    }

    double varianceOfMean() {
        return standardDeviation * standardDeviation / count;
    }
}
