package lanetide.squads.fit;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.des.Replications;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;
import lanetide.des.stats.Tally;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.model.Event;
import lanetide.squads.model.Findings;
import lanetide.squads.study.Playable;
import lanetide.squads.unknown.PlayModel;
import lanetide.squads.unknown.ValueSets;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.StatUtils;

/**
 * Do fitted sets hold the truth? Each truth is one of the sets that ship, with luck and lanes of its own; it is fitted
 * from the others, those with its oil left out, so that the fit never saw it. Every fourth truth has the other law of
 * friction, and its fit knows the usual one alone.
 */
final class FitStudy {
    static final int TRUTHS = 100;

    private static final double LEVEL = 0.9;
    private static final int SETS = 20;
    private static final int PLAYINGS = 40;
    private static final int PLAYINGS_OF_TRUTH = 100;
    static final long SEED = 60_013;
    private static final int EVERY = 4;

    /** Truths at a time. */
    private final int threads;

    private final long seed;
    /** The event under the sets that ship, whose lines serve all truths. */
    private final Map<ValueSet, Playable> shipped;

    FitStudy(int threads, long seed) {
        this.threads = threads;
        this.seed = seed;
        this.shipped = ValueSets.of(TwoPairs.EVENT).stream()
                .collect(Collectors.toUnmodifiableMap(
                        set -> set, set -> Playable.of(PlayModel.under(TwoPairs.EVENT, set))));
    }

    /**
     * One truth and what is told of it, before and after the fit.
     *
     * @param truth what is true of each quantity
     * @param before what is told without measurements
     * @param after and with them
     * @param lawUnknown whether the fit does not know the truth's law
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Judged(
            double[] truth,
            ConfidenceInterval[] before,
            ConfidenceInterval[] after,
            double[] notKnownBefore,
            double[] notKnownAfter,
            boolean lawUnknown) {
        boolean holds(int quantity) {
            return holds(after[quantity], truth[quantity]);
        }

        boolean heldBefore(int quantity) {
            return holds(before[quantity], truth[quantity]);
        }

        private static boolean holds(ConfidenceInterval interval, double value) {
            return interval.low() <= value && value <= interval.high();
        }

        double narrowed(int quantity) {
            return (after[quantity].high() - after[quantity].low())
                    / (before[quantity].high() - before[quantity].low());
        }
    }

    /** Truths side by side, each on one thread: a fit by itself cannot keep two busy. */
    List<Judged> run(int from, int to) {
        return Replications.run(to - from, threads, i -> judged(from + i), done -> {});
    }

    private Judged judged(int number) {
        boolean lawUnknown = number % EVERY == EVERY - 1;
        ValueSet truth = truths(lawUnknown).get(number / EVERY + (lawUnknown ? 0 : number % EVERY * TRUTHS / EVERY));
        List<ValueSet> prior = ValueSets.of(TwoPairs.EVENT).stream()
                .filter(set -> set.of(NormalScores.MOVED.get(0)) != truth.of(NormalScores.MOVED.get(0)))
                .filter(set -> !lawUnknown || !NormalScores.hasOtherLaw(set))
                .toList();
        Playable world = shipped.get(truth);
        RandomStreams day = new RandomStreams(seed).forReplication(number);
        Measurements measured = TwoPairs.measured(world, day);
        FitResult fitted = Fit.run(
                List.of(new FitDay(TwoPairs.EVENT, measured)),
                prior,
                shipped,
                new FitPlan(seed + number, 1).withoutChecks(),
                done -> {});
        List<TapeTaken> fresh = measured.tapes().stream()
                .filter(tape -> tape.when().afterGame() == 0)
                .toList();
        Told before = told(prior, List.of(), number);
        Told after = told(fitted.sets(), fresh, number);
        return new Judged(
                truth(world, day, number),
                before.intervals,
                after.intervals,
                before.notKnown,
                after.notKnown,
                lawUnknown);
    }

    private static List<ValueSet> truths(boolean otherLaw) {
        return ValueSets.of(TwoPairs.EVENT).stream()
                .filter(set -> !otherLaw || NormalScores.hasOtherLaw(set))
                .toList();
    }

    /** Tapes of that day with errors of their own; else the truth's own mean over many days. */
    private double[] truth(Playable world, RandomStreams day, int number) {
        RandomStreams errors = new RandomStreams(seed + 1).forReplication(number);
        double[] thatDay = TwoPairs.heldOut(world, day);
        double[] truth = means(Replications.run(
                PLAYINGS_OF_TRUTH,
                1,
                i -> TwoPairs.heldOut(
                        world, new RandomStreams(seed + 2).forReplication(number * PLAYINGS_OF_TRUTH + i)),
                done -> {}));
        for (int q = 0; q < TwoPairs.TAPES; q++) {
            truth[q] = thatDay[q]
                    + TwoPairs.ERROR_UNITS
                            * new NormalDistribution()
                                    .inverseCumulativeProbability(
                                            errors.stream("tape" + q).nextDouble());
        }
        return truth;
    }

    private static double[] means(List<double[]> rows) {
        return IntStream.range(0, rows.get(0).length)
                .mapToDouble(
                        q -> rows.stream().mapToDouble(row -> row[q]).average().orElseThrow())
                .toArray();
    }

    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Told(ConfidenceInterval[] intervals, double[] notKnown) {}

    private Told told(List<ValueSet> sets, List<TapeTaken> fresh, int number) {
        Event event = TwoPairs.EVENT.in(TwoPairs.EVENT.centre().with(new Findings(List.of(), fresh, List.of())));
        List<Playable> worlds = IntStream.range(0, SETS)
                .mapToObj(i -> world(event, sets.get(i)))
                .toList();
        List<double[]> rows = Replications.run(
                PLAYINGS,
                1,
                i -> TwoPairs.heldOut(
                        worlds.get(i % SETS), new RandomStreams(seed + 3).forReplication(number * PLAYINGS + i)),
                done -> {});
        ConfidenceInterval[] intervals = new ConfidenceInterval[TwoPairs.QUANTITIES.size()];
        double[] notKnown = new double[intervals.length];
        for (int q = 0; q < intervals.length; q++) {
            int at = q;
            double[] column = rows.stream().mapToDouble(row -> row[at]).toArray();
            NestedMean nested = NestedMean.of(column, SETS);
            intervals[q] =
                    q < TwoPairs.TAPES ? ofReading(column) : nested.truth().interval(LEVEL);
            notKnown[q] = betweenSets(column);
        }
        return new Told(intervals, notKnown);
    }

    private Playable world(Event event, ValueSet set) {
        Event under = PlayModel.under(event, set);
        return shipped.containsKey(set) ? shipped.get(set).with(under) : Playable.of(under);
    }

    /** Variance over the sets without luck, not kept above nothing so that its mean over truths is right. */
    private static double betweenSets(double[] column) {
        double[] means = IntStream.range(0, SETS)
                .mapToDouble(s -> (column[s] + column[s + SETS]) / 2)
                .toArray();
        double within = IntStream.range(0, SETS)
                .mapToDouble(s -> (column[s] - column[s + SETS]) * (column[s] - column[s + SETS]) / 2)
                .average()
                .orElseThrow();
        return StatUtils.variance(means) - within / 2;
    }

    /** What a reading of one day may be, with the tape's own error. */
    private static ConfidenceInterval ofReading(double[] column) {
        double error = TwoPairs.ERROR_UNITS;
        double deviation = Math.sqrt(StatUtils.variance(column) * (1 + 1.0 / SETS) + error * error);
        double half = new TDistribution(null, SETS - 1.0).inverseCumulativeProbability((1 + LEVEL) / 2) * deviation;
        double mean = StatUtils.mean(column);
        return new ConfidenceInterval(mean - half, mean + half, LEVEL);
    }

    /** The deviation of what is not known after the fit, of that before, over all truths. */
    private static double unknown(List<Judged> judged, int quantity) {
        double before = judged.stream()
                .mapToDouble(one -> one.notKnownBefore()[quantity])
                .sum();
        double after = judged.stream()
                .mapToDouble(one -> one.notKnownAfter()[quantity])
                .sum();
        return Math.sqrt(Math.max(0, after / before));
    }

    static String markdown(List<Judged> judged) {
        StringBuilder table = new StringBuilder();
        for (int q = 0; q < TwoPairs.QUANTITIES.size(); q++) {
            int at = q;
            Tally narrowed = new Tally();
            judged.forEach(one -> narrowed.add(one.narrowed(at)));
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %d of %d | %d of %d | %d | %.2f | %.2f |%n",
                    TwoPairs.QUANTITIES.get(q),
                    judged.stream()
                            .filter(one -> !one.lawUnknown() && one.holds(at))
                            .count(),
                    judged.stream().filter(one -> !one.lawUnknown()).count(),
                    judged.stream()
                            .filter(one -> one.lawUnknown() && one.holds(at))
                            .count(),
                    judged.stream().filter(one -> one.lawUnknown()).count(),
                    judged.stream().filter(one -> one.heldBefore(at)).count(),
                    narrowed.mean(),
                    unknown(judged, at)));
        }
        return table.toString();
    }

    /**
     * Runs the study and prints its table.
     *
     * @param args first and last truth, or nothing
     */
    public static void main(String[] args) {
        int from = args.length > 0 ? Integer.parseInt(args[0]) : 0;
        int to = args.length > 1 ? Integer.parseInt(args[1]) : TRUTHS;
        long start = System.nanoTime();
        System.out.print(markdown(new FitStudy(
                        Runtime.getRuntime().availableProcessors(), args.length > 2 ? Long.parseLong(args[2]) : SEED)
                .run(from, to)));
        System.out.println((System.nanoTime() - start) / 1e9 / (to - from) + " s a truth");
    }
}
