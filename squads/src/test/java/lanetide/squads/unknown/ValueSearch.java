package lanetide.squads.unknown;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
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

    /** The unknowns of the oil model, in the order of a point's shares. */
    static final List<Unknown> OIL = OilModel.UNKNOWNS.all();

    private final Bank bank;

    /** A search whose points stand in a file as far as they have been worked out. */
    ValueSearch(Path file) {
        this.bank = new Bank(file, OIL, OilFacts::of);
    }

    private static double chiSquare(Bank.Point point) {
        return Fact.chiSquare(OilFacts.FACTS, point.said());
    }

    /** All points: the design and the waves, in this order. */
    List<Bank.Point> run() {
        bank.extend(0, design());
        for (int wave = 1; wave <= WAVES; wave++) {
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
    record Weighted(Bank.Point point, double weight) {}

    /**
     * The points of the waves, each with the weight that the facts give it over that with which the rough copy drew it;
     * every wave weighs as much as it is worth. They add up to 1.
     */
    List<Weighted> weighted() {
        List<Weighted> all = new ArrayList<>();
        double sum = 0;
        for (int wave = 1; wave <= WAVES; wave++) {
            Copy copy = copy(wave);
            int from = DESIGN + (wave - 1) * WAVE;
            List<Bank.Point> points = bank.points().subList(from, from + WAVE);
            double[] weights = points.stream()
                    .mapToDouble(point -> Fact.secondLargest(OilFacts.FACTS, point.said()) > RULED_OUT
                            ? 0
                            : Math.exp((copy.chiSquare(point.shares()) - chiSquare(point)) / 2))
                    .toArray();
            double worth = effectiveSize(weights) / Arrays.stream(weights).sum();
            for (int i = 0; i < weights.length; i++) {
                all.add(new Weighted(points.get(i), worth * weights[i]));
                sum += worth * weights[i];
            }
        }
        double total = sum;
        return all.stream()
                .map(one -> new Weighted(one.point(), one.weight() / total))
                .toList();
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
        ValueSearch oil = new ValueSearch(folder.resolve("oil.txt"));
        oil.run();
        PlaySearch play = new PlaySearch(folder.resolve("play.txt"), oil.weighted());
        Files.write(Path.of(args[1]), new DrawnSets(play.weighted()).lines(), StandardCharsets.UTF_8);
        System.out.println(new FactsTable(oil.bank.points(), oil.weighted(), play.weighted()).markdown());
    }
}
