package lanetide.des.stats;

/**
 * Whether some treatments succeed more often than others in the same blocks, each of which succeeds or fails. Source: W. G.
 * Cochran, "The comparison of percentages in matched samples", Biometrika 37, 1950.
 *
 * @param treatments number of treatments
 * @param q the statistic
 */
public record CochranQTest(int treatments, double q) {

    /**
     * Counts the successes.
     *
     * @param successes by block and treatment
     * @throws IllegalArgumentException if there are fewer than two blocks or treatments, if blocks have different
     *     lengths, or if in each block all succeed or all fail, which leaves nothing to compare
     */
    public static CochranQTest of(boolean[][] successes) {
        int treatments = Checks.table(successes.length, successes.length == 0 ? 0 : successes[0].length);
        long[] byTreatment = new long[treatments];
        long all = 0;
        long squaresByBlock = 0;
        for (boolean[] block : successes) {
            Checks.row(block.length, treatments);
            long inBlock = 0;
            for (int j = 0; j < treatments; j++) {
                byTreatment[j] += block[j] ? 1 : 0;
                inBlock += block[j] ? 1 : 0;
            }
            all += inBlock;
            squaresByBlock += inBlock * inBlock;
        }
        return new CochranQTest(treatments, q(byTreatment, all, squaresByBlock));
    }

    /** Degrees of freedom of the chi-square. */
    public int degreesOfFreedom() {
        return treatments - 1;
    }

    /** Probability of a statistic at least as great if all treatments succeed alike, by the chi-square approximation. */
    public double p() {
        return UpperTail.ofChiSquare(q, degreesOfFreedom());
    }

    private static double q(long[] byTreatment, long all, long squaresByBlock) {
        int treatments = byTreatment.length;
        long squares = 0;
        for (long successes : byTreatment) {
            squares += successes * successes;
        }
        long spread = treatments * all - squaresByBlock;
        if (spread == 0) {
            throw new IllegalArgumentException(
                    "in each block all succeed or all fail, which leaves nothing to compare");
        }
        return (treatments - 1) * (double) (treatments * squares - all * all) / spread;
    }
}
