package lanetide.squads.unknown;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lanetide.oilflow.friction.FrictionModel;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknown;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.apache.commons.math3.random.Well19937c;

/**
 * Finds the sets of values that the facts do not rule out: a space-filling design, then waves that look where a rough
 * copy of the model says that sets may be found (P. S. Craig, M. Goldstein, A. H. Seheult and J. A. Smith, "Pressure
 * matching for hydrocarbon reservoirs", 1997; I. Vernon, M. Goldstein and R. G. Bower, "Galaxy formation: a Bayesian
 * uncertainty analysis", Bayesian Analysis 5, 2010).
 */
final class ValueSearch {
    /** Points of the first design: over the whole of all ranges. */
    static final int DESIGN = 2048;
    /** Points of each wave. */
    static final int WAVE = 1024;
    /** Waves after the design. */
    static final int WAVES = 2;
    /** A set is ruled out if the second largest implausibility is above this (Pukelsheim's three-sigma rule). */
    static final double RULED_OUT = 3;

    private static final int STEPS_BETWEEN = 400;
    private static final int BURN_IN = 20_000;

    /** Name of the unknown that says which law of friction holds. */
    static final String LAW = "friction-law";

    /** The unknowns of the oil model under one law of friction, in the order of a point's shares. */
    static final List<Unknown> OIL = OilModel.UNKNOWNS.all().stream()
            .filter(unknown -> !unknown.id().equals(LAW))
            .toList();

    private final Bank bank;
    private final int waves;

    /**
     * A search under one law of friction.
     *
     * @param file where its points stand as far as they have been worked out
     * @param law the law
     * @param waves waves after the design
     */
    ValueSearch(Path file, FrictionModel law, int waves) {
        this.bank = new Bank(file, OIL, set -> OilFacts.of(law, set));
        this.waves = waves;
    }

    private static double chiSquare(Bank.Point point) {
        return Fact.chiSquare(OilFacts.FACTS, point.said());
    }

    /** All points: the design and the waves, in this order. */
    List<Bank.Point> run() {
        bank.extend(0, design());
        for (int wave = 1; wave <= waves; wave++) {
            bank.extend(DESIGN + (wave - 1) * WAVE, wave(wave));
        }
        return bank.points();
    }

    /** Points over the whole of all ranges, by the library's Sobol' generator. */
    static List<double[]> design() {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(OIL.size());
        sobol.skipTo(1);
        return IntStream.range(0, DESIGN).mapToObj(i -> sobol.nextVector()).toList();
    }

    /** Where the rough copy, learnt from all points before, says that the facts are met. */
    private List<double[]> wave(int wave) {
        Copy copy = copy(wave);
        RandomGenerator random = new Well19937c(20_271 + wave);
        double[] at = copy.start();
        double[] best = {copy.chiSquare(at)};
        List<double[]> found = new ArrayList<>();
        for (long step = 0; found.size() < WAVE; step++) {
            at = walked(copy, at, best, random);
            if (step >= BURN_IN && step % STEPS_BETWEEN == 0) {
                found.add(at);
            }
        }
        return found;
    }

    /** The copy from which a wave was drawn, or would be. */
    Copy copy(int wave) {
        return new Copy(bank.points().subList(0, DESIGN + (wave - 1) * WAVE));
    }

    /** One step of a random walk (N. Metropolis and others, 1953) over all ranges, some values at a time. */
    private static double[] walked(Copy copy, double[] from, double[] chiSquare, RandomGenerator random) {
        double[] to = from.clone();
        double size = Math.exp(-4 * random.nextDouble());
        for (int u = 0; u < to.length; u++) {
            if (random.nextInt(4) == 0) {
                to[u] += 0.5 * size * random.nextGaussian();
                if (to[u] < 0 || to[u] > 1) {
                    return from;
                }
            }
        }
        double there = copy.chiSquare(to);
        if (random.nextDouble() < Math.exp((chiSquare[0] - there) / 2)) {
            chiSquare[0] = there;
            return to;
        }
        return from;
    }

    /** A rough copy of the model, with its own errors among those of the facts. */
    static final class Copy {
        private final List<Emulator> emulators = new ArrayList<>();
        private final List<Fact> facts = new ArrayList<>();
        private final double[] start;

        Copy(List<Bank.Point> points) {
            List<Bank.Point> whole = points.stream().filter(Bank.Point::isWhole).toList();
            double[] chi =
                    whole.stream().mapToDouble(ValueSearch::chiSquare).sorted().toArray();
            // The better half alone: what the model does where it contradicts everything need not be known.
            double enough = chi[chi.length / 2];
            List<Bank.Point> near = whole.stream()
                    .filter(point -> ValueSearch.chiSquare(point) <= enough)
                    .toList();
            for (int f = 0; f < OilFacts.FACTS.size(); f++) {
                Fact fact = OilFacts.FACTS.get(f);
                int at = f;
                if (!fact.heldOut()) {
                    Emulator emulator = new Emulator(near, point -> point.said()[at]);
                    emulators.add(emulator);
                    facts.add(new Fact(
                            fact.id(),
                            fact.published(),
                            fact.tolerance(),
                            Math.hypot(fact.scatter(), emulator.error()),
                            fact.allowance(),
                            fact.side(),
                            false));
                }
            }
            start = whole.stream()
                    .min((a, b) -> Double.compare(ValueSearch.chiSquare(a), ValueSearch.chiSquare(b)))
                    .orElseThrow()
                    .shares();
        }

        double[] start() {
            return start;
        }

        double chiSquare(double[] shares) {
            double[] terms = Emulator.terms(shares);
            double sum = 0;
            for (int f = 0; f < facts.size(); f++) {
                double miss = facts.get(f).implausibility(emulators.get(f).at(terms));
                sum += miss * miss;
            }
            return sum;
        }
    }

    /** A point and how likely it is, over all points of the waves. */
    record Weighted(Bank.Point point, double weight) {
        Weighted times(double factor) {
            return new Weighted(point, factor * weight);
        }
    }

    /**
     * The points of the waves, each with the weight that the facts give it over that with which the rough copy drew it;
     * every wave weighs as much as it is worth. Without waves, those of the design with the weight that the facts give.
     * They add up to 1.
     */
    List<Weighted> weighted() {
        List<Weighted> all = new ArrayList<>();
        if (waves == 0) {
            all.addAll(weighted(bank.points().subList(0, DESIGN), shares -> 0));
        }
        for (int wave = 1; wave <= waves; wave++) {
            int from = DESIGN + (wave - 1) * WAVE;
            all.addAll(weighted(bank.points().subList(from, from + WAVE), copy(wave)::chiSquare));
        }
        double sum = all.stream().mapToDouble(Weighted::weight).sum();
        return all.stream().map(one -> one.times(1 / sum)).toList();
    }

    /** Points that a chance of exp(-drawn / 2) has drawn, each with its weight; together as many as they are worth. */
    private static List<Weighted> weighted(List<Bank.Point> points, ToDoubleFunction<double[]> drawn) {
        double[] weights = points.stream()
                .mapToDouble(point -> likelihood(point) * Math.exp(drawn.applyAsDouble(point.shares()) / 2))
                .toArray();
        double worth = effectiveSize(weights) / Arrays.stream(weights).sum();
        return IntStream.range(0, weights.length)
                .mapToObj(i -> new Weighted(points.get(i), worth * weights[i]))
                .toList();
    }

    private static double likelihood(Bank.Point point) {
        boolean ruledOut = Fact.secondLargest(OilFacts.FACTS, point.said()) > RULED_OUT;
        return ruledOut ? 0 : Math.exp(-chiSquare(point) / 2);
    }

    /** How well the law meets the facts over the whole of all ranges: the mean likelihood over the design. */
    double evidence() {
        return bank.points().subList(0, DESIGN).stream()
                .mapToDouble(ValueSearch::likelihood)
                .average()
                .orElseThrow();
    }

    /** As many equally likely points would tell as much (L. Kish, "Survey Sampling", 1965). */
    static double effectiveSize(double[] weights) {
        double sum = Arrays.stream(weights).sum();
        return sum * sum / Arrays.stream(weights).map(weight -> weight * weight).sum();
    }

    /**
     * Works out both banks, draws the sets that ship, writes them, and prints what the facts leave.
     *
     * @param args a folder for the banks, of which what it holds already is not worked out again; and the file that the
     *     program ships
     * @throws IOException if that cannot be written
     */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        ValueSearch usual = new ValueSearch(folder.resolve("oil.txt"), FrictionModel.MIXED_LUBRICATION, WAVES);
        ValueSearch other = new ValueSearch(folder.resolve("other-law.txt"), FrictionModel.EXPONENTIAL_STRIBECK, 0);
        usual.run();
        other.run();
        double share = usual.evidence() / (usual.evidence() + other.evidence());
        PlaySearch play = new PlaySearch(folder.resolve("play.txt"), both(usual.weighted(), other.weighted(), share));
        Files.write(Path.of(args[1]), new DrawnSets(play.weighted()).lines(), StandardCharsets.UTF_8);
        System.out.printf(Locale.ROOT, "The usual law of friction has %.0f %% of the evidence.%n%n", 100 * share);
        System.out.println(new FactsTable(usual.bank.points(), usual.weighted(), play.weighted()).markdown());
    }

    /** Sets of both laws, each marked with its law, laws weighed by their evidence. */
    static List<Weighted> both(List<Weighted> usual, List<Weighted> other, double share) {
        List<Weighted> both = new ArrayList<>();
        usual.forEach(one -> both.add(marked(one.times(share), 0)));
        other.forEach(one -> both.add(marked(one.times(1 - share), 1)));
        return both;
    }

    /** The law's share stands behind those of the other unknowns. */
    private static Weighted marked(Weighted one, double law) {
        double[] shares = Arrays.copyOf(one.point().shares(), OIL.size() + 1);
        shares[OIL.size()] = law;
        return new Weighted(new Bank.Point(shares, one.point().said()), one.weight());
    }
}
