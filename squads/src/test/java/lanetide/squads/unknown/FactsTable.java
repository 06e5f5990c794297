package lanetide.squads.unknown;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;

/** What the facts leave of the unknowns, and what the sets say of the facts, as tables of the README. */
final class FactsTable {
    private final List<Bank.Point> points;
    private final List<ValueSearch.Weighted> weighted;
    private final double effective;

    FactsTable(List<Bank.Point> points, List<ValueSearch.Weighted> weighted, double effective) {
        this.points = points;
        this.weighted = weighted;
        this.effective = effective;
    }

    String markdown() {
        return counts() + facts() + unknowns();
    }

    private String counts() {
        long design = points.subList(0, ValueSearch.DESIGN).stream()
                .filter(point -> point.secondLargest() <= ValueSearch.RULED_OUT)
                .count();
        return format(
                "Of %d sets over the whole of all ranges the facts rule out %.0f %%; %d more were worked out where they are"
                        + " met. The sets that ship are worth %.0f independent ones.%n%n",
                ValueSearch.DESIGN,
                100.0 * (ValueSearch.DESIGN - design) / ValueSearch.DESIGN,
                points.size() - ValueSearch.DESIGN,
                effective);
    }

    private String facts() {
        double[] usual = OilFacts.of(ValueSet.USUAL);
        Bank.Point best = points.stream()
                .min(Comparator.comparingDouble(Bank.Point::chiSquare))
                .orElseThrow();
        StringBuilder table = new StringBuilder(
                "| Fact | published | usual values | I | best set | I | sets: 5 %, middle, 95 % | I of the middle | sets that meet it |\n"
                        + "|---|---|---|---|---|---|---|---|---|\n");
        for (int f = 0; f < OilFacts.FACTS.size(); f++) {
            Fact fact = OilFacts.FACTS.get(f);
            int at = f;
            double middle = quantile(0.5, point -> point.said()[at]);
            double met = weighted.stream()
                    .filter(one -> fact.implausibility(one.point().said()[at]) <= 1)
                    .mapToDouble(ValueSearch.Weighted::weight)
                    .sum();
            table.append(format(
                    "| %s%s | %s ± %s%s | %s | %.1f | %s | %.1f | %s, %s, %s | %.1f | %.0f %% |%n",
                    fact.id(),
                    fact.heldOut() ? " (held out)" : "",
                    number(fact.published()),
                    number(fact.tolerance()),
                    fact.side() == 0 ? "" : fact.side() > 0 ? ", less is well" : ", more is well",
                    number(usual[f]),
                    fact.implausibility(usual[f]),
                    number(best.said()[f]),
                    fact.implausibility(best.said()[f]),
                    number(quantile(0.05, point -> point.said()[at])),
                    number(middle),
                    number(quantile(0.95, point -> point.said()[at])),
                    fact.implausibility(middle),
                    100 * met));
        }
        return table.append("\n").toString();
    }

    private String unknowns() {
        StringBuilder table =
                new StringBuilder("| Unknown | range | usual | sets: 5 %, middle, 95 % | of the range's width |\n"
                        + "|---|---|---|---|---|\n");
        for (int u = 0; u < Bank.UNKNOWNS.size(); u++) {
            Unknown unknown = Bank.UNKNOWNS.get(u);
            int at = u;
            double low = quantile(0.05, point -> point.shares()[at]);
            double high = quantile(0.95, point -> point.shares()[at]);
            table.append(format(
                    "| %s | %s to %s | %s | %s, %s, %s | %.0f %% |%n",
                    unknown.id(),
                    number(unknown.low()),
                    number(unknown.high()),
                    number(unknown.usual()),
                    number(unknown.at(low)),
                    number(unknown.at(quantile(0.5, point -> point.shares()[at]))),
                    number(unknown.at(high)),
                    100 * (high - low) / 0.9));
        }
        return table.toString();
    }

    private double quantile(double share, java.util.function.ToDoubleFunction<Bank.Point> of) {
        List<ValueSearch.Weighted> sorted = weighted.stream()
                .filter(one -> !Double.isNaN(of.applyAsDouble(one.point())))
                .sorted(Comparator.comparingDouble(one -> of.applyAsDouble(one.point())))
                .toList();
        double sum = 0;
        for (ValueSearch.Weighted one : sorted) {
            sum += one.weight();
            if (sum >= share) {
                return of.applyAsDouble(one.point());
            }
        }
        return of.applyAsDouble(sorted.get(sorted.size() - 1).point());
    }

    private static String number(double value) {
        return Double.isNaN(value)
                ? "no line"
                : new java.math.BigDecimal(value)
                        .round(new java.math.MathContext(3))
                        .stripTrailingZeros()
                        .toPlainString();
    }

    private static String format(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
