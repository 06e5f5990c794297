package lanetide.squads.unknown;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;
import lanetide.des.stats.Tally;
import lanetide.oilflow.film.SplitModel;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.unknown.Unknown;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.model.Event;
import lanetide.squads.model.Laws;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Do intervals hold the truth as often as they say? Truths are drawn from the whole of all ranges. Each has facts of
 * its own, made with the tolerances as noise; sets are drawn by these facts from the stored design, as the sets that
 * ship were by the published ones, and a small event is studied over them. Judged against the truth's own mean over
 * many playings. One-sided facts tell a truth nothing and are left out.
 */
final class CoverageStudy {
    /** Truths under the usual laws. */
    static final int TRUTHS = 200;
    /** Truths under the other law of friction. */
    static final int OTHER_TRUTHS = 50;

    private static final double LEVEL = 0.9;
    private static final int PLAYINGS_OF_TRUTH = 400;
    private static final int PLAYINGS = 40;
    private static final int SETS = 20;
    private static final long SEED = 20_281;
    private static final List<double[]> DESIGN = ValueSearch.design();
    private static final List<Unknown> WITHOUT_LAW = PlaySearch.ALL.stream()
            .filter(unknown -> !unknown.id().equals(ValueSearch.LAW))
            .toList();

    private final FrictionModel law;
    /** What the model says of each point of the design under the usual law, and then, if sets know of it, the other. */
    private final List<double[]> said;

    /**
     * A study.
     *
     * @param law the law of friction that is true
     * @param setsKnowBoth whether sets are drawn from both laws, as those that ship are, or from the usual one alone
     */
    CoverageStudy(FrictionModel law, boolean setsKnowBoth) {
        this.law = law;
        this.said = new ArrayList<>(read("design.txt"));
        if (setsKnowBoth) {
            said.addAll(read("design-other-law.txt"));
        }
    }

    private static List<double[]> read(String name) {
        try (InputStream in = CoverageStudy.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> Arrays.stream(line.split(" ", -1))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * One truth and what was told of it.
     *
     * @param truth the truth's own means
     * @param told what was told of each
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    record Judged(double[] truth, NestedMean[] told) {
        boolean holds(int quantity) {
            return holds(told[quantity].truth().interval(LEVEL), truth[quantity]);
        }

        boolean luckAloneHolds(int quantity) {
            return holds(told[quantity].luck().interval(LEVEL), truth[quantity]);
        }

        double halfWidth(int quantity) {
            ConfidenceInterval interval = told[quantity].truth().interval(LEVEL);
            return (interval.high() - interval.low()) / 2;
        }

        private static boolean holds(ConfidenceInterval interval, double value) {
            return interval.low() <= value && value <= interval.high();
        }
    }

    /** Some truths, by number, on all processors. */
    List<Judged> run(int from, int to) {
        ExecutorService pool = Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
        try {
            List<Future<Judged>> running = IntStream.range(from, to)
                    .mapToObj(number -> pool.submit(() -> judged(number)))
                    .toList();
            List<Judged> all = new ArrayList<>();
            for (Future<Judged> one : running) {
                all.add(one.get());
            }
            return all;
        } catch (InterruptedException | ExecutionException e) {
            throw new IllegalStateException(e);
        } finally {
            pool.shutdown();
        }
    }

    private Judged judged(int number) {
        RandomGenerator random = new Well19937c(SEED + number);
        ValueSet truth;
        double[] facts;
        do {
            truth = Bank.set(WITHOUT_LAW, uniform(random, WITHOUT_LAW.size()));
            facts = OilFacts.of(law, truth);
        } while (Arrays.stream(facts).anyMatch(Double::isNaN));
        for (int f = 0; f < facts.length; f++) {
            facts[f] += OilFacts.FACTS.get(f).tolerance() * random.nextGaussian();
        }
        double[] weights = weights(facts);
        List<ValueSet> sets = new ArrayList<>();
        for (int s = 0; s < SETS; s++) {
            sets.add(drawn(weights, random));
        }
        return new Judged(truthMeans(truth), told(sets, number));
    }

    private static double[] uniform(RandomGenerator random, int size) {
        return IntStream.range(0, size).mapToDouble(i -> random.nextDouble()).toArray();
    }

    private double[] weights(double[] facts) {
        return said.stream().mapToDouble(one -> weight(one, facts)).toArray();
    }

    private static double weight(double[] said, double[] facts) {
        double sum = 0;
        for (int f = 0; f < facts.length; f++) {
            Fact fact = OilFacts.FACTS.get(f);
            double miss = fact.heldOut() || fact.side() != 0 ? 0 : fact.implausibility(said[f], facts[f]);
            sum += miss * miss;
        }
        return Math.exp(-sum / 2);
    }

    /** A set of the design by its weight, with values of play drawn from their ranges. */
    private static ValueSet drawn(double[] weights, RandomGenerator random) {
        double left = random.nextDouble() * Arrays.stream(weights).sum();
        int at = 0;
        while (at < weights.length - 1 && left >= weights[at]) {
            left -= weights[at++];
        }
        Map<String, Double> values = new TreeMap<>(
                Bank.set(ValueSearch.OIL, DESIGN.get(at % DESIGN.size())).values());
        values.put(ValueSearch.LAW, at < DESIGN.size() ? 0.0 : 1.0);
        values.putAll(Bank.set(
                        PlayModel.UNKNOWNS.all(),
                        uniform(random, PlayModel.UNKNOWNS.all().size()))
                .values());
        return new ValueSet(at + 1, values);
    }

    private double[] truthMeans(ValueSet truth) {
        Event event = PlayModel.under(SmallEvent.EVENT.withLaws(new Laws(law, SplitModel.FORWARD_ROLL)), truth);
        List<double[]> playings = SmallEvent.play(event, 0, PLAYINGS_OF_TRUTH);
        return IntStream.range(0, SmallEvent.QUANTITIES.size())
                .mapToDouble(q ->
                        playings.stream().mapToDouble(one -> one[q]).average().orElseThrow())
                .toArray();
    }

    /** Rounds have luck of their own, other than the truth's, and go to the sets in turn. */
    private static NestedMean[] told(List<ValueSet> sets, int number) {
        double[][] values = new double[SmallEvent.QUANTITIES.size()][PLAYINGS];
        for (int s = 0; s < SETS; s++) {
            Event event = PlayModel.under(SmallEvent.EVENT, sets.get(s));
            int first = PLAYINGS_OF_TRUTH + number * PLAYINGS + s * (PLAYINGS / SETS);
            List<double[]> playings = SmallEvent.play(event, first, PLAYINGS / SETS);
            for (int i = 0; i < playings.size(); i++) {
                for (int q = 0; q < values.length; q++) {
                    values[q][i * SETS + s] = playings.get(i)[q];
                }
            }
        }
        return Arrays.stream(values).map(of -> NestedMean.of(of, SETS)).toArray(NestedMean[]::new);
    }

    /** What came of it, quantity by quantity. */
    static String markdown(List<Judged> judged) {
        StringBuilder table = new StringBuilder();
        for (int q = 0; q < SmallEvent.QUANTITIES.size(); q++) {
            int at = q;
            Tally widths = new Tally();
            Tally truths = new Tally();
            judged.forEach(one -> {
                widths.add(one.halfWidth(at));
                truths.add(one.truth()[at]);
            });
            table.append(String.format(
                    Locale.ROOT,
                    "| %s | %d | %d of %d | %d | %.2f | %.2f |%n",
                    SmallEvent.QUANTITIES.get(q),
                    judged.size(),
                    judged.stream().filter(one -> one.holds(at)).count(),
                    judged.size(),
                    judged.stream().filter(one -> one.luckAloneHolds(at)).count(),
                    widths.mean(),
                    truths.standardDeviation() * new NormalDistribution().inverseCumulativeProbability(0.95)));
        }
        return table.toString();
    }

    /**
     * Runs the whole study and prints its table.
     *
     * @param args nothing
     */
    public static void main(String[] args) {
        System.out.println("usual law, sets of both");
        System.out.print(markdown(new CoverageStudy(FrictionModel.MIXED_LUBRICATION, true).run(0, TRUTHS)));
        for (boolean setsKnowBoth : new boolean[] {true, false}) {
            System.out.println("other law, sets " + (setsKnowBoth ? "of both" : "of the usual one alone"));
            System.out.print(markdown(new CoverageStudy(FrictionModel.EXPONENTIAL_STRIBECK, setsKnowBoth)
                    .run(TRUTHS, TRUTHS + OTHER_TRUTHS)));
        }
    }
}
