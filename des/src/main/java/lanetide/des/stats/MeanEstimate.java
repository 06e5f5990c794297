package lanetide.des.stats;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * An estimated mean, or mean of differences, by Student's t: what tests and intervals need of it. It holds for
 * independent and roughly normal observations or differences.
 *
 * @param value the estimate
 * @param standardError its estimated standard deviation; 0 if all observations are equal
 * @param degreesOfFreedom degrees of freedom of the standard error, greater than 0, not necessarily whole
 */
public record MeanEstimate(double value, double standardError, double degreesOfFreedom) {

    /**
     * @throws IllegalArgumentException if {@code value} or {@code standardError} is not finite, if {@code standardError
     *     < 0}, or unless {@code 0 < degreesOfFreedom}
     */
    public MeanEstimate {
        Checks.finite(value, "value");
        Checks.notNegative(standardError, "standardError");
        if (!(degreesOfFreedom > 0)) {
            throw new IllegalArgumentException(
                    "degreesOfFreedom is " + degreesOfFreedom + ", but must be greater than 0");
        }
    }

    /**
     * The mean of observations.
     *
     * @throws IllegalStateException if there are fewer than two
     */
    public static MeanEstimate of(Tally observations) {
        double deviation = observations.standardDeviation();
        double varianceOfMean = deviation * deviation / observations.count();
        return new MeanEstimate(observations.mean(), Math.sqrt(varianceOfMean), observations.count() - 1.0);
    }

    /**
     * The mean of the differences {@code a[i] - b[i]}, such as of two schedules that met the same luck in replication
     * i. With common random numbers the differences vary less than either side (A. M. Law, "Simulation Modeling and
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
        return of(differences);
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
}
