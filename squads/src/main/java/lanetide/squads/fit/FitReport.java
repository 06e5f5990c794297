package lanetide.squads.fit;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.stat.StatUtils;

/** What is told of a fit: readings beside what is said of them, and what was learnt of each unknown. */
record FitReport(List<Reading> readings, RealMatrix ownError, List<FreshLane> fresh) {
    private static final MathContext DIGITS = new MathContext(6, RoundingMode.HALF_EVEN);

    /** Of members that were moved, so many are chosen; what they say is empty if nobody has looked. */
    FitResult of(
            Ensemble before,
            List<ValueSet> moved,
            List<Integer> chosen,
            List<double[]> after,
            double otherLaw,
            List<Suspicion> suspicions) {
        List<ValueSet> sets = new ArrayList<>();
        for (int number = 1; number <= chosen.size(); number++) {
            ValueSet set = moved.get(chosen.get(number - 1));
            sets.add(new ValueSet(number, rounded(set.values()), set.seed()));
        }
        List<FitResult.Check> checks = after.isEmpty() ? List.of() : checks(before, after);
        double lawBefore = (double) before.ofLaw(true).size() / before.sets().size();
        return new FitResult(sets, checks, learnt(before.sets(), sets), fresh, suspicions, lawBefore, otherLaw);
    }

    private List<FitResult.Check> checks(Ensemble before, List<double[]> after) {
        return IntStream.range(0, readings.size())
                .mapToObj(r -> new FitResult.Check(readings.get(r), said(before.said(), r), said(after, r)))
                .toList();
    }

    /** To the digits with which sets are written down, so that what is told is what a file keeps. */
    private static Map<String, Double> rounded(Map<String, Double> values) {
        Map<String, Double> rounded = new TreeMap<>();
        values.forEach((id, value) ->
                rounded.put(id, new BigDecimal(value).round(DIGITS).doubleValue()));
        return rounded;
    }

    private FitResult.Said said(List<double[]> members, int reading) {
        double[] column =
                members.stream().mapToDouble(member -> member[reading]).toArray();
        double error = ownError.getEntry(reading, reading);
        return new FitResult.Said(StatUtils.mean(column), Math.sqrt(StatUtils.variance(column) + error));
    }

    private static List<FitResult.Learnt> learnt(List<ValueSet> before, List<ValueSet> after) {
        return NormalScores.MOVED.stream()
                .map(unknown -> learnt(unknown, before, after))
                .sorted(Comparator.comparingDouble(FitResult.Learnt::narrowed).reversed())
                .toList();
    }

    private static FitResult.Learnt learnt(Unknown unknown, List<ValueSet> before, List<ValueSet> after) {
        double narrowed = 1 - spread(unknown, after) / spread(unknown, before);
        return new FitResult.Learnt(unknown, points(unknown, before), points(unknown, after), narrowed);
    }

    private static double spread(Unknown unknown, List<ValueSet> sets) {
        return Math.sqrt(StatUtils.variance(sets.stream()
                .mapToDouble(set -> unknown.shareOf(set.of(unknown)))
                .toArray()));
    }

    private static FitResult.Points points(Unknown unknown, List<ValueSet> sets) {
        double[] values = sets.stream().mapToDouble(set -> set.of(unknown)).toArray();
        return new FitResult.Points(
                StatUtils.percentile(values, 5), StatUtils.percentile(values, 50), StatUtils.percentile(values, 95));
    }
}
