package lanetide.squads.unknown;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;

/** What the facts leave of the unknowns, and what the sets say of the facts, as tables of the README. */
final class FactsTable {
    private final List<Bank.Point> points;
    private final List<ValueSearch.Weighted> weighted;
    private final List<ValueSearch.Weighted> played;

    FactsTable(List<Bank.Point> points, List<ValueSearch.Weighted> weighted, List<ValueSearch.Weighted> played) {
        this.points = points;
        this.weighted = weighted;
        this.played = played;
    }

    String markdown() {
        return counts() + facts() + scores() + unknowns();
    }

    private String counts() {
        long design = points.subList(0, ValueSearch.DESIGN).stream()
                .filter(point -> Fact.secondLargest(OilFacts.FACTS, point.said()) <= ValueSearch.RULED_OUT)
                .count();
        return format(
                "Of %d sets over the whole of all ranges under the usual law the facts rule out %.0f %%; %d more were worked out where they are"
                        + " met, worth %.0f independent ones. %d sets of both laws were played, worth %.0f; those that ship"
                        + " are drawn from them.%n%n",
                ValueSearch.DESIGN,
                100.0 * (ValueSearch.DESIGN - design) / ValueSearch.DESIGN,
                points.size() - ValueSearch.DESIGN,
                effective(weighted),
                played.size(),
                effective(played));
    }

    private static double effective(List<ValueSearch.Weighted> weighted) {
        return ValueSearch.effectiveSize(
                weighted.stream().mapToDouble(ValueSearch.Weighted::weight).toArray());
    }

    private String scores() {
        double[] usual = PlayFacts.of(ValueSet.USUAL);
        StringBuilder table = new StringBuilder("""
                | Fact | published | usual values | I | sets: 5 %, middle, 95 % |
                |---|---|---|---|---|
                """);
        for (int f = 0; f < usual.length; f++) {
            Fact fact = PlayFacts.FACTS.get(f);
            int at = f;
            table.append(format(
                    "| %s | %s ± %s | %s | %.1f | %s |%n",
                    fact.id(),
                    number(fact.published()),
                    number(fact.tolerance()),
                    number(usual[f]),
                    fact.implausibility(usual[f]),
                    spread(played, point -> point.said()[at])));
        }
        return table.append("\n").toString();
    }

    private static String spread(List<ValueSearch.Weighted> of, ToDoubleFunction<Bank.Point> value) {
        return number(quantile(of, 0.05, value)) + ", " + number(quantile(of, 0.5, value)) + ", "
                + number(quantile(of, 0.95, value));
    }

    private String facts() {
        double[] usual = OilFacts.of(ValueSet.USUAL);
        Bank.Point best = points.stream()
                .min(Comparator.comparingDouble(point -> Fact.chiSquare(OilFacts.FACTS, point.said())))
                .orElseThrow();
        StringBuilder table = new StringBuilder("""
                | Fact | published | usual values | I | best set | I | sets: 5 %, middle, 95 % | I of the middle | sets that meet it |
                |---|---|---|---|---|---|---|---|---|
                """);
        for (int f = 0; f < OilFacts.FACTS.size(); f++) {
            Fact fact = OilFacts.FACTS.get(f);
            int at = f;
            double middle = quantile(weighted, 0.5, point -> point.said()[at]);
            double met = weighted.stream()
                    .filter(one -> fact.implausibility(one.point().said()[at]) <= 1)
                    .mapToDouble(ValueSearch.Weighted::weight)
                    .sum();
            table.append(format(
                    "| %s%s | %s ± %s%s | %s | %.1f | %s | %.1f | %s | %.1f | %.0f %% |%n",
                    fact.id(),
                    fact.heldOut() ? " (held out)" : "",
                    number(fact.published()),
                    number(fact.tolerance()),
                    fact.side() == 0 ? "" : fact.side() > 0 ? ", less is well" : ", more is well",
                    number(usual[f]),
                    fact.implausibility(usual[f]),
                    number(best.said()[f]),
                    fact.implausibility(best.said()[f]),
                    spread(weighted, point -> point.said()[at]),
                    fact.implausibility(middle),
                    100 * met));
        }
        return table.append("\n").toString();
    }

    private String unknowns() {
        StringBuilder table = new StringBuilder("""
                | Unknown | range | usual | sets: 5 %, middle, 95 % | of the range's width |
                |---|---|---|---|---|
                """);
        for (int u = 0; u < PlaySearch.ALL.size(); u++) {
            Unknown unknown = PlaySearch.ALL.get(u);
            int at = u;
            double low = quantile(played, 0.05, point -> point.shares()[at]);
            double high = quantile(played, 0.95, point -> point.shares()[at]);
            table.append(format(
                    "| %s | %s to %s | %s | %s, %s, %s | %.0f %% |%n",
                    unknown.id(),
                    number(unknown.low()),
                    number(unknown.high()),
                    number(unknown.usual()),
                    number(unknown.at(low)),
                    number(unknown.at(quantile(played, 0.5, point -> point.shares()[at]))),
                    number(unknown.at(high)),
                    100 * (high - low) / 0.9));
        }
        return table.toString();
    }

    private static double quantile(List<ValueSearch.Weighted> all, double share, ToDoubleFunction<Bank.Point> of) {
        List<ValueSearch.Weighted> sorted = all.stream()
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
