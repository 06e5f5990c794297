package lanetide.squads.fairness;

import java.util.Arrays;

/**
 * Estimates with the noise of estimating taken out of their spread: each is drawn towards zero by the share of the
 * spread that is noise (C. N. Morris, "Parametric empirical Bayes inference", Journal of the American Statistical
 * Association 78, 1983). The largest difference of many noisy numbers is mostly noise; that of the shrunken ones is
 * not.
 */
record Shrinkage(double variance) {
    /** Estimates the true spread of values that add up to zero in so many sums. */
    static Shrinkage of(double[] means, double[] errors, int sums) {
        double squares = Arrays.stream(means).map(mean -> mean * mean).sum();
        double noise = Arrays.stream(errors).map(error -> error * error).sum();
        return new Shrinkage(Math.max(0, (squares - noise) / Math.max(1, means.length - sums)));
    }

    /** Variance of what may be true of an estimate. */
    double remainingVariance(double error) {
        double noise = error * error;
        return variance == 0 ? 0 : variance * noise / (variance + noise);
    }

    /** What is likely to be true of an estimate. */
    double apply(double mean, double error) {
        return variance == 0 ? 0 : mean * variance / (variance + error * error);
    }

    double[] apply(double[] means, double[] errors) {
        double[] shrunk = new double[means.length];
        for (int i = 0; i < means.length; i++) {
            shrunk[i] = apply(means[i], errors[i]);
        }
        return shrunk;
    }
}
