package lanetide.squads.unknown;

import java.util.ArrayList;
import java.util.List;

/**
 * An order of points in which the first few of any number are spread like all: each next one is that which brings those
 * so far closest to all by the energy distance (G. J. Szekely and M. L. Rizzo, "Energy statistics", Journal of
 * Statistical Planning and Inference 143, 2013).
 */
public final class SpreadOrder {
    private SpreadOrder() {}

    /**
     * The order.
     *
     * @param all points in one space
     * @return their places in the list, each once
     */
    public static List<Integer> of(List<double[]> all) {
        int n = all.size();
        double[][] apart = new double[n][n];
        double[] fromAll = new double[n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                apart[i][j] = distance(all.get(i), all.get(j));
                fromAll[i] += apart[i][j] / n;
            }
        }
        List<Integer> chosen = new ArrayList<>();
        double[] fromChosen = new double[n];
        double within = 0;
        while (chosen.size() < n) {
            int size = chosen.size() + 1;
            int best = -1;
            double least = Double.POSITIVE_INFINITY;
            double toAll = chosen.stream().mapToDouble(i -> fromAll[i]).sum();
            for (int i = 0; i < n; i++) {
                if (!chosen.contains(i)) {
                    double energy =
                            2 * (toAll + fromAll[i]) / size - (within + 2 * fromChosen[i]) / ((double) size * size);
                    if (energy < least) {
                        least = energy;
                        best = i;
                    }
                }
            }
            within += 2 * fromChosen[best];
            chosen.add(best);
            for (int i = 0; i < n; i++) {
                fromChosen[i] += apart[i][best];
            }
        }
        return chosen;
    }

    private static double distance(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return Math.sqrt(sum);
    }
}
