package lanetide.squads.unknown;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.oilflow.unknown.Unknown;

/** Equally likely sets drawn from weighted points, in an order in which the first few are spread like all. */
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
        List<double[]> drawn = PlaySearch.drawn(weighted, COUNT).stream()
                .map(Bank.Point::shares)
                .toList();
        this.ordered = SpreadOrder.of(drawn).stream().map(drawn::get).toList();
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
