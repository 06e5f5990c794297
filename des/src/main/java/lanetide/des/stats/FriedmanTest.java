package lanetide.des.stats;

import org.apache.commons.math3.stat.ranking.NaturalRanking;
import org.apache.commons.math3.stat.ranking.TiesStrategy;

/**
 * Whether some treatments rank higher than others in the same blocks, such as starting pairs within squads. Ties get mean
 * ranks, and the statistic is corrected for them.
 *
 * <p>Sources: M. Friedman, Journal of the American Statistical Association 32, 1937; correction for ties as in W. J.
 * Conover, "Practical Nonparametric Statistics", 3rd ed. 1999, section 5.8; R. L. Iman and J. M. Davenport,
 * Communications in Statistics A 9, 1980; M. G. Kendall and B. Babington Smith, Annals of Mathematical Statistics 10,
 * 1939.
 *
 * @param blocks number of blocks
 * @param treatments number of treatments
 * @param chiSquare Friedman's statistic, corrected for ties
 */
public record FriedmanTest(int blocks, int treatments, double chiSquare) {

    /**
     * Ranks the values of each block.
     *
     * @param values by block and treatment
     * @throws IllegalArgumentException if there are fewer than two blocks or treatments, if blocks have different
     *     lengths, if a value is NaN or infinite, or if all values of each block are equal, which leaves nothing to rank
     */
    public static FriedmanTest of(double[][] values) {
        int treatments = Checks.table(values.length, values.length == 0 ? 0 : values[0].length);
        NaturalRanking ranking = new NaturalRanking(TiesStrategy.AVERAGE);
        double[] rankSums = new double[treatments];
        double squares = 0;
        for (double[] block : values) {
            Checks.row(block.length, treatments);
            double[] ranks = ranking.rank(finite(block));
            for (int j = 0; j < treatments; j++) {
                rankSums[j] += ranks[j];
                squares += ranks[j] * ranks[j];
            }
        }
        return new FriedmanTest(values.length, treatments, chiSquare(rankSums, squares, values.length));
    }

    /** Degrees of freedom of the chi-square. */
    public int degreesOfFreedom() {
        return treatments - 1;
    }

    /** Probability of a statistic at least as great if no treatment ranks higher, by the chi-square approximation. */
    public double p() {
        return UpperTail.ofChiSquare(chiSquare, degreesOfFreedom());
    }

    /** Kendall's coefficient of concordance, from 0 (no agreement between blocks) to 1. */
    public double kendallW() {
        return chiSquare / ((double) blocks * (treatments - 1));
    }

    /** The statistic of Iman and Davenport, closer to its distribution than the chi-square; infinite at full agreement. */
    public double imanDavenportF() {
        return (blocks - 1) * chiSquare / ((double) blocks * (treatments - 1) - chiSquare);
    }

    /** Degrees of freedom of the denominator of {@link #imanDavenportF}; of the numerator: {@link #degreesOfFreedom}. */
    public int denominatorDegreesOfFreedom() {
        return (blocks - 1) * (treatments - 1);
    }

    /** Probability of an F at least as great if no treatment ranks higher. */
    public double imanDavenportP() {
        return UpperTail.ofF(imanDavenportF(), degreesOfFreedom(), denominatorDegreesOfFreedom());
    }

    private static double chiSquare(double[] rankSums, double squares, int blocks) {
        int treatments = rankSums.length;
        double expected = blocks * (treatments + 1) / 2.0;
        double between = 0;
        for (double sum : rankSums) {
            between += (sum - expected) * (sum - expected);
        }
        double within = squares - blocks * treatments * (treatments + 1.0) * (treatments + 1.0) / 4;
        if (within == 0) {
            throw new IllegalArgumentException("all values of each block are equal, which leaves nothing to rank");
        }
        return (treatments - 1) * between / within;
    }

    private static double[] finite(double[] block) {
        for (double value : block) {
            Checks.finite(value, "value");
        }
        return block;
    }
}
