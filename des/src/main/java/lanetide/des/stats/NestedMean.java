package lanetide.des.stats;

import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * A mean over groups of observations, where groups differ in what is not known and observations within a group in luck
 * alone: the balanced one-way layout with random groups (H. Scheffe, "The Analysis of Variance", 1959, chapter 7). If
 * groups are equally likely worlds, the truth is one more draw from them, so what is not known does not shrink with
 * their number, and luck does with the number of observations.
 *
 * @param mean mean of the means of the groups
 * @param spread variance of the means of the groups, luck and all; 0 for a single group
 * @param within variance within groups, which is luck; 0 if it cannot be told apart
 * @param groups number of groups, at least 1; with a single one nothing is unknown but luck
 * @param observations number of observations, at least 2
 */
public record NestedMean(double mean, double spread, double within, int groups, int observations) {
    /** Fewest degrees of freedom that an interval is given, where groups are many enough. */
    private static final double LEAST_DEGREES = 3;

    /**
     * Of observations that belong to the groups in turn: number i to group {@code i % groups}.
     *
     * @param values the observations
     * @param groups number of groups, at least 1
     * @return their mean. Groups that have an observation more than others weigh no more. With a single observation in
     *     each group, luck counts among what is not known
     * @throws IllegalArgumentException if a value is NaN or infinite, if there are fewer than two values, or not
     *     {@code 1 <= groups <= values.length}
     */
    public static NestedMean of(double[] values, int groups) {
        if (values.length < 2 || groups < 1 || groups > values.length) {
            throw new IllegalArgumentException(values.length + " values in " + groups
                    + " groups; there must be two values at least, and one in each group");
        }
        double[] means = groupMeans(values, groups);
        Tally ofMeans = new Tally("mean of a group");
        double squares = 0;
        for (int g = 0; g < groups; g++) {
            ofMeans.add(means[g]);
            for (int i = g; i < values.length; i += groups) {
                squares += (values[i] - means[g]) * (values[i] - means[g]);
            }
        }
        int free = values.length - groups;
        return new NestedMean(
                ofMeans.mean(),
                groups == 1 ? 0 : ofMeans.variance(),
                free == 0 ? 0 : squares / free,
                groups,
                values.length);
    }

    /**
     * Of the differences {@code a[i] - b[i]}, such as of two schedules that met the same luck and the same world in
     * replication i.
     *
     * @param a the one side
     * @param b the other side
     * @param groups as for {@link #of}
     * @return the mean difference
     * @throws IllegalArgumentException as for {@link #of}, or if the lengths differ
     */
    public static NestedMean ofPairs(double[] a, double[] b, int groups) {
        if (a.length != b.length) {
            throw new IllegalArgumentException(
                    "a has " + a.length + " values and b has " + b.length + ", but pairs need as many of each");
        }
        double[] differences = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            differences[i] = a[i] - b[i];
        }
        return of(differences, groups);
    }

    private static int size(int values, int groups, int group) {
        return values / groups + (group < values % groups ? 1 : 0);
    }

    /**
     * The means of the groups.
     *
     * @param values as for {@link #of}
     * @param groups as for {@link #of}
     * @return by group
     */
    public static double[] groupMeans(double[] values, int groups) {
        double[] means = new double[groups];
        for (int i = 0; i < values.length; i++) {
            Checks.finite(values[i], "observation");
            means[i % groups] += values[i] / size(values.length, groups, i % groups);
        }
        return means;
    }

    /**
     * Variance between groups.
     *
     * @return {@link #spread} with the luck of the means taken out; never below 0
     */
    public double between() {
        return Math.max(0, spread - luckOfMeans());
    }

    /**
     * The mean over the groups of the square of a group's own mean, which luck would make look larger.
     *
     * @return that mean square with luck taken out; below 0 where luck is larger than all there is
     */
    public double meanSquare() {
        return mean * mean + spread * (groups - 1) / groups - luckOfMeans();
    }

    /**
     * The squares of the means of the groups, with luck taken out; their mean is {@link #meanSquare}.
     *
     * @param values as for {@link #of}
     * @return by group; below 0 where luck is larger than what there is
     */
    public double[] meanSquares(double[] values) {
        double[] squares = groupMeans(values, groups);
        for (int g = 0; g < groups; g++) {
            squares[g] = squares[g] * squares[g] - luckOfMeans();
        }
        return squares;
    }

    private double luckOfMeans() {
        return within * groups / observations;
    }

    /**
     * What is known of the truth, one world among those that the groups stand for.
     *
     * @return the mean, with what is not known and luck in its error: {@code between (1 + 1/groups) + within /
     *     observations}. Degrees of freedom are those of a difference of mean squares (F. E. Satterthwaite, "An
     *     approximate distribution of estimates of variance components", Biometrics Bulletin 2, 1946), from 3 to
     *     {@code groups - 1}: with those of the groups alone, an interval for nine in ten holds eight where luck is
     *     large
     */
    public MeanEstimate truth() {
        if (groups == 1) {
            return luck();
        }
        double variance = between() * (1 + 1.0 / groups) + within / observations;
        return new MeanEstimate(mean, Math.sqrt(variance), degreesOfTruth(variance));
    }

    private double degreesOfTruth(double variance) {
        double more = (1 + 1.0 / groups) * spread;
        double less = luckOfMeans();
        double free = more * more / (groups - 1.0) + less * less / Math.max(1, observations - groups);
        double degrees = free == 0 ? groups - 1.0 : variance * variance / free;
        return Math.max(Math.min(LEAST_DEGREES, groups - 1.0), Math.min(degrees, groups - 1.0));
    }

    /**
     * What is known of the mean over these groups, if they were all there is.
     *
     * @return the mean, with luck alone in its error
     */
    public MeanEstimate luck() {
        int free = Math.max(1, observations - groups);
        return new MeanEstimate(mean, Math.sqrt(within / observations), free);
    }

    /**
     * What remains of the error however often one looks.
     *
     * @return the mean, with what is not known alone in its error
     */
    public MeanEstimate withoutLuck() {
        return new MeanEstimate(mean, Math.sqrt(between() * (1 + 1.0 / groups)), Math.max(1, groups - 1.0));
    }

    /**
     * The means of the groups with their luck taken out: each is drawn towards the mean of all by the share of their
     * spread that is luck (C. N. Morris, "Parametric empirical Bayes inference", Journal of the American Statistical
     * Association 78, 1983).
     *
     * @param values as for {@link #of}
     * @return by group
     */
    public double[] shrunkMeans(double[] values) {
        double[] means = groupMeans(values, groups);
        double kept = keptShare();
        for (int g = 0; g < groups; g++) {
            means[g] = mean + kept * (means[g] - mean);
        }
        return means;
    }

    private double keptShare() {
        return between() == 0 ? 0 : between() / spread;
    }

    /**
     * In which share of the worlds the mean is expected to have the sign that it has over all of them. What luck leaves
     * open of a world's own mean counts by its chance.
     *
     * @param values as for {@link #of}
     * @return the share, 0.5 to 1 for most; 1 if all are 0
     */
    public double signShare(double[] values) {
        double kept = keptShare();
        double open = Math.sqrt(kept * luckOfMeans() + (1 - kept) * (1 - kept) * within / observations);
        double share = 0;
        for (double one : shrunkMeans(values)) {
            share += chanceOfSign(mean < 0 ? -one : one, open) / groups;
        }
        return share;
    }

    /** Chance that a normal value is above 0, or 0 itself where the mean is. */
    private double chanceOfSign(double towards, double open) {
        if (open == 0) {
            return towards > 0 || (towards == 0 && mean == 0) ? 1 : 0;
        }
        return new NormalDistribution(null, towards, open).probability(0, Double.POSITIVE_INFINITY);
    }
}
