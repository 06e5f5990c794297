package lanetide.squads.unknown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.oilflow.unknown.Unknown;

/**
 * Equally likely sets drawn from weighted points. Their order is such that the first few of any number are spread like
 * all: each next one is that which brings the sets so far closest to all by the energy distance (G. J. Szekely and M.
 * L. Rizzo, "Energy statistics", Journal of Statistical Planning and Inference 143, 2013).
 */
final class DrawnSets {
    /** Sets that ship. */
    static final int COUNT = 200;

    private final List<double[]> ordered;

    /**
     * Draws the sets.
     *
     * @param weighted points in all unknowns; their weights add up to 1
     */
    DrawnSets(List<ValueSearch.Weighted> weighted) {
        this.ordered = ordered(PlaySearch.drawn(weighted, COUNT).stream()
                .map(Bank.Point::shares)
                .toList());
    }

    private static List<double[]> ordered(List<double[]> all) {
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
        return chosen.stream().map(all::get).toList();
    }

    private static double distance(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - b[i]) * (a[i] - b[i]);
        }
        return Math.sqrt(sum);
    }

    /** The lines of the data file. */
    List<String> lines() {
        List<Unknown> unknowns = PlaySearch.ALL;
        List<String> lines = new ArrayList<>(List.of(
                "# Sets of values that published facts do not rule out, equally likely, in an order in which the first few",
                "# are spread like all. Found by ValueSearch (DEVELOPERS.md tells how); do not edit.",
                "unknowns.names = " + unknowns.stream().map(Unknown::id).collect(Collectors.joining(" "))));
        for (int set = 0; set < ordered.size(); set++) {
            double[] shares = ordered.get(set);
            String values = IntStream.range(0, shares.length)
                    .mapToObj(u -> text(unknowns.get(u).at(shares[u])))
                    .collect(Collectors.joining(" "));
            lines.add(String.format(Locale.ROOT, "%03d.values = %s", set + 1, values));
        }
        return lines;
    }

    private static String text(double value) {
        return new java.math.BigDecimal(value)
                .round(new java.math.MathContext(5))
                .stripTrailingZeros()
                .toPlainString();
    }
}
