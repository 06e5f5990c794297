package lanetide.squads.recondition;

import java.util.Arrays;

/**
 * The rising curve that lies nearest to noisy values: values that fall are pooled with those before them (pool adjacent
 * violators: R. E. Barlow, D. J. Bartholomew, J. M. Bremner and H. D. Brunk, "Statistical Inference under Order
 * Restrictions", 1972).
 */
final class Isotonic {
    private Isotonic() {}

    /**
     * Fits a curve that never falls, by least squares.
     *
     * @param values the values
     * @param weights how much each weighs, at least 0; what weighs nothing takes the value of what is before it, the
     *     first ones 0
     * @return the curve
     */
    static double[] rising(double[] values, double[] weights) {
        int count = values.length;
        double[] means = new double[count];
        double[] sums = new double[count];
        int[] ends = new int[count];
        int blocks = 0;
        for (int i = 0; i < count; i++) {
            if (weights[i] > 0) {
                means[blocks] = values[i];
                sums[blocks] = weights[i];
                ends[blocks] = i + 1;
                blocks++;
                while (blocks > 1 && means[blocks - 2] >= means[blocks - 1]) {
                    double both = sums[blocks - 2] + sums[blocks - 1];
                    means[blocks - 2] =
                            (sums[blocks - 2] * means[blocks - 2] + sums[blocks - 1] * means[blocks - 1]) / both;
                    sums[blocks - 2] = both;
                    ends[blocks - 2] = ends[blocks - 1];
                    blocks--;
                }
            } else if (blocks > 0) {
                ends[blocks - 1] = i + 1;
            }
        }
        return spread(means, ends, blocks, firstWeighed(weights), count);
    }

    private static int firstWeighed(double[] weights) {
        int first = 0;
        while (first < weights.length && weights[first] == 0) {
            first++;
        }
        return first;
    }

    private static double[] spread(double[] means, int[] ends, int blocks, int first, int count) {
        double[] curve = new double[count];
        int from = first;
        for (int block = 0; block < blocks; block++) {
            Arrays.fill(curve, from, ends[block], means[block]);
            from = ends[block];
        }
        return curve;
    }
}
