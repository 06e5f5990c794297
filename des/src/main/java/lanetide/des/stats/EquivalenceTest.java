package lanetide.des.stats;

/**
 * Two one-sided tests: whether a mean lies between two bounds that are drawn where a difference begins to matter.
 * Absence of evidence is not enough for it: with too few observations nothing is equivalent. Source: D. J. Schuirmann,
 * "A comparison of the two one-sided tests procedure and the power approach for assessing the equivalence of average
 * bioavailability", Journal of Pharmacokinetics and Biopharmaceutics 15, 1987.
 *
 * @param estimate what was found
 * @param low lower bound of what does not matter
 * @param high upper bound of what does not matter
 */
public record EquivalenceTest(MeanEstimate estimate, double low, double high) {

    /** @throws IllegalArgumentException if {@code low} or {@code high} is not finite, or unless {@code low < high} */
    public EquivalenceTest {
        Checks.finite(low, "low");
        Checks.finite(high, "high");
        if (low >= high) {
            throw new IllegalArgumentException("low is " + low + ", but must be less than high, which is " + high);
        }
    }

    /** The test against bounds at the same distance from 0 on both sides. */
    public static EquivalenceTest about0(MeanEstimate estimate, double margin) {
        return new EquivalenceTest(estimate, -margin, margin);
    }

    /** Student's t against the lower bound. */
    public double tLow() {
        return estimate.t(low);
    }

    /** Probability of lying so far above the lower bound, were the true mean there. */
    public double pLow() {
        return estimate.upperTail(tLow());
    }

    /** Student's t against the upper bound. */
    public double tHigh() {
        return estimate.t(high);
    }

    /** Probability of lying so far below the upper bound, were the true mean there. */
    public double pHigh() {
        return estimate.upperTail(-tHigh());
    }

    /** The greater of the two probabilities, which decides. */
    public double p() {
        return Math.max(pLow(), pHigh());
    }

    /**
     * Whether the mean lies between the bounds, at an error of {@code alpha}; the same as whether the interval of level
     * {@code 1 - 2 alpha} does.
     *
     * @throws IllegalArgumentException unless {@code 0 < alpha < 0.5}
     */
    public boolean isEquivalent(double alpha) {
        return p() < Checks.alpha(alpha);
    }

    /**
     * The interval of level {@code 1 - 2 alpha} that belongs to the test.
     *
     * @throws IllegalArgumentException unless {@code 0 < alpha < 0.5}
     */
    public ConfidenceInterval interval(double alpha) {
        return estimate.interval(1 - 2 * Checks.alpha(alpha));
    }
}
