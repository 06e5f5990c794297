package lanetide.des.stats;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * An estimated mean, or difference of two means, by Student's t: what tests and intervals need of it. It holds for
 * independent and roughly normal observations or differences.
 *
 * @param value the estimate
 * @param standardError its estimated standard deviation; 0 if all observations are equal
 * @param degreesOfFreedom degrees of freedom of the standard error, greater than 0, not necessarily whole
 */
public record MeanEstimate(double value, double standardError, double degreesOfFreedom) {

    /**
     * @throws IllegalArgumentException if {@code value} or {@code standardError} is not finite, if
     *     {@code standardError < 0}, or unless {@code 0 < degreesOfFreedom}
     */
    public MeanEstimate {
        Checks.finite(value, "value");
        Checks.notNegative(standardError, "standardError");
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degreesOfFreedom is " + degreesOfFreedom + ", but must be greater than 0");
        }
    }

    /** The mean of one sample. */
    public static MeanEstimate of(Sample sample) {
        return new MeanEstimate(sample.mean(), Math.sqrt(sample.varianceOfMean()), sample.count() - 1.0);
    }

    /**
     * The mean of the differences {@code a[i] - b[i]}, such as of two schedules that met the same luck in replication i.
     * With common random numbers the differences vary less than either side (A. M. Law, "Simulation Modeling and
     * Analysis", 5th ed. 2015, sections 10.2 and 11.2).
     *
     * @throws IllegalArgumentException if the lengths differ or are less than 2, or if a value is NaN or infinite
     */
    public static MeanEstimate ofPairs(double[] a, double[] b) {
        if (a.length != b.length) {
            throw new IllegalArgumentException(
                    "a has " + a.length + " values and b has " + b.length + ", but pairs need as many of each");
        }
        Tally differences = new Tally("difference");
        for (int i = 0; i < a.length; i++) {
            differences.add(Checks.finite(a[i], "a") - Checks.finite(b[i], "b"));
        }
        return of(differences.sample());
    }

    /**
     * The mean of a less the mean of b, of independent samples whose variances may differ. Source: B. L. Welch, "The
     * generalization of 'Student's' problem when several different population variances are involved", Biometrika 34,
     * 1947.
     */
    public static MeanEstimate ofDifference(Sample a, Sample b) {
        double va = a.varianceOfMean();
        double vb = b.varianceOfMean();
        double variance = va + vb;
        double degreesOfFreedom = variance == 0
                ? a.count() + b.count() - 2.0
                : variance * variance / (va * va / (a.count() - 1) + vb * vb / (b.count() - 1));
        return new MeanEstimate(a.mean() - b.mean(), Math.sqrt(variance), degreesOfFreedom);
    }

    /** The mean of a less the mean of b, of independent samples from populations of the same variance. */
    public static MeanEstimate ofDifferenceAtEqualVariance(Sample a, Sample b) {
        double degreesOfFreedom = a.count() + b.count() - 2.0;
        double squares =
                (a.count() - 1) * square(a.standardDeviation()) + (b.count() - 1) * square(b.standardDeviation());
        double variance = squares / degreesOfFreedom * (1.0 / a.count() + 1.0 / b.count());
        return new MeanEstimate(a.mean() - b.mean(), Math.sqrt(variance), degreesOfFreedom);
    }

    /**
     * How many standard errors the estimate lies above a value: Student's t. Without any spread it is 0 at the estimate
     * itself and infinite elsewhere.
     */
    public double t(double hypothesis) {
        double distance = value - Checks.finite(hypothesis, "hypothesis");
        return distance == 0 ? 0 : distance / standardError;
    }

    /** Probability of an estimate at least as far from the true mean, on either side, were it the given value. */
    public double twoSidedP(double hypothesis) {
        return 2 * upperTail(Math.abs(t(hypothesis)));
    }

    /**
     * Confidence interval for the true mean.
     *
     * @throws IllegalArgumentException unless {@code 0 < level < 1}
     */
    public ConfidenceInterval interval(double level) {
        Checks.level(level);
        double halfWidth = -distribution().inverseCumulativeProbability((1 - level) / 2) * standardError;
        return new ConfidenceInterval(value - halfWidth, value + halfWidth, level);
    }

    /** Probability that Student's t exceeds a value. */
    double upperTail(double t) {
        return distribution().cumulativeProbability(-t);
    }

    private TDistribution distribution() {
        return new TDistribution(null, degreesOfFreedom);
    }

    private static double square(double x) {
        return x * x;
    }
}
