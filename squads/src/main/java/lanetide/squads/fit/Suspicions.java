package lanetide.squads.fit;

import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.descriptive.rank.Percentile;

/**
 * Looks for readings that do not belong: how likely all readings are as they stand, and how likely they would be if
 * something had happened to some of them, each by the normal law of what the members of the ensemble say before they
 * are fitted. Every kind of explanation is thought as likely as any other, and shares that among its cases. What must
 * be reached is set by clean days, of which the members play one each for the purpose.
 */
final class Suspicions {
    /** From this ratio on an explanation is told at all. */
    private static final double TOLD = StrictMath.log(20);

    /** From this chance on, among all explanations, one is named. */
    private static final double SURE = 0.9;

    /** Share of clean days that reach the point from which the tail of their ratios is reckoned. */
    private static final double TAIL = 0.05;

    /** Share of clean days that are accused; beyond the point a likelihood ratio falls at least as one over itself. */
    private static final double ACCUSED = 0.01;

    /** Error of a reading that is wrong by itself, in deviations of all there is to it. */
    private static final double WRONG_BY = 6;

    private static final double ASYMMETRY = 1e-9;

    private final List<Reading> readings;
    private final List<Hypothesis> hypotheses;
    private final Map<Reading, Integer> columns = new LinkedHashMap<>();

    /** For readings, and explanations of them. */
    Suspicions(List<Reading> readings, List<Hypothesis> hypotheses) {
        this.readings = readings;
        this.hypotheses = hypotheses;
        readings.forEach(reading -> columns.putIfAbsent(reading, columns.size()));
        hypotheses.forEach(each -> each.readings().forEach(reading -> columns.putIfAbsent(reading, columns.size())));
    }

    /** All that has to be read in a playing. */
    List<Reading> asked() {
        return List.copyOf(columns.keySet());
    }

    /** What would be read on the mean as the readings stand, where a playing says so much of all that was asked. */
    double[] asTheyStand(double[] said) {
        return taken(said, readings);
    }

    private double[] taken(double[] said, List<Reading> of) {
        return Playings.means(of, there(said, of));
    }

    /** What there is at the places of some of what was asked. */
    double[] there(double[] said, List<Reading> of) {
        return of.stream().mapToDouble(reading -> said[columns.get(reading)]).toArray();
    }

    /** Readings of a playing's day with errors of their own. */
    double[] read(double[] said, NormalErrors errors) {
        double[] there = there(said, readings);
        double[] error = errors.drawn();
        Arrays.setAll(error, r -> readings.get(r).read(there[r], error[r]));
        return error;
    }

    /**
     * What the members foretell, as the readings stand and under each explanation.
     *
     * @param said what each member says of all that was asked
     * @param clean readings of clean days that the members played with other luck, their own errors in them
     * @param ownError covariance of the readings' own errors
     */
    Foretold foretold(List<double[]> said, List<double[]> clean, RealMatrix ownError) {
        Law asTheyStand = new Law(said.stream().map(this::asTheyStand).toList(), ownError);
        List<Law> laws = hypotheses.stream()
                .map(each -> each.readings().equals(readings)
                        ? asTheyStand
                        : new Law(
                                said.stream()
                                        .map(one -> taken(one, each.readings()))
                                        .toList(),
                                ownError))
                .toList();
        Foretold uncalibrated = new Foretold(readings, hypotheses, asTheyStand, asTheyStand.oneWrong(), laws, 0);
        double[] highest = clean.stream()
                .mapToDouble(day -> Arrays.stream(uncalibrated.scores(uncalibrated.ratios(day)))
                        .max()
                        .orElse(0))
                .toArray();
        double from = clean.isEmpty()
                ? 0
                : new Percentile().evaluate(highest, 100 * (1 - TAIL)) + StrictMath.log(TAIL / ACCUSED);
        return new Foretold(readings, hypotheses, asTheyStand, uncalibrated.oneWrong(), laws, from);
    }

    /**
     * What was foretold under each explanation.
     *
     * @param readings the readings
     * @param hypotheses the explanations of groups
     * @param asTheyStand the law of the readings as they stand
     * @param oneWrong the same for readings that are wrong by themselves
     * @param laws under each explanation
     * @param from score that an explanation must exceed to be shown
     */
    record Foretold(
            List<Reading> readings,
            List<Hypothesis> hypotheses,
            Law asTheyStand,
            OneWrong oneWrong,
            List<Law> laws,
            double from) {
        /** Explanations that make what was observed likelier, the best first. */
        List<Suspicion> suspicions(int day, double[] observed) {
            double[] ratios = ratios(observed);
            double[] scores = scores(ratios);
            int best = IntStream.range(0, scores.length)
                    .reduce((a, b) -> scores[b] > scores[a] ? b : a)
                    .orElseThrow();
            double all = Arrays.stream(scores)
                    .map(score -> StrictMath.exp(score - scores[best]))
                    .sum();
            return IntStream.range(0, ratios.length)
                    .filter(e -> ratios[e] > TOLD)
                    .boxed()
                    .sorted(Comparator.comparingDouble(e -> -scores[e]))
                    .map(e -> new Suspicion(day, what(e), ratios[e], verdict(scores[e], scores[best], 1 / all)))
                    .toList();
        }

        private Suspicion.Verdict verdict(double score, double best, double chanceOfBest) {
            if (best <= from) {
                return Suspicion.Verdict.NOT_SHOWN;
            }
            if (chanceOfBest >= SURE) {
                return score == best ? Suspicion.Verdict.NAMED : Suspicion.Verdict.NOT_SHOWN;
            }
            return score > best - TOLD ? Suspicion.Verdict.ONE_OF_SEVERAL : Suspicion.Verdict.NOT_SHOWN;
        }

        private Explanation what(int explanation) {
            return explanation < hypotheses.size()
                    ? hypotheses.get(explanation).what()
                    : new Explanation.OneReading(readings.get(explanation - hypotheses.size()));
        }

        /** Logarithms of the ratios: explanations of groups, then each reading by itself. */
        private double[] ratios(double[] observed) {
            double usual = asTheyStand.logDensity(observed);
            double[] single = oneWrong.ratios(observed);
            return IntStream.range(0, hypotheses.size() + single.length)
                    .mapToDouble(e -> e < hypotheses.size()
                            ? logDensity(hypotheses.get(e), laws.get(e), observed) - usual
                            : single[e - hypotheses.size()])
                    .toArray();
        }

        /** The ratios, each less the logarithm of how many cases its kind has. */
        private double[] scores(double[] ratios) {
            double[] scores = ratios.clone();
            for (int e = 0; e < scores.length; e++) {
                Class<?> kind = what(e).getClass();
                long cases = e < hypotheses.size()
                        ? hypotheses.stream()
                                .filter(each -> kind.isInstance(each.what()))
                                .count()
                        : readings.size();
                scores[e] -= StrictMath.log((double) cases);
            }
            return scores;
        }

        private static double logDensity(Hypothesis hypothesis, Law law, double[] observed) {
            double[] read = observed.clone();
            double stretched = 0;
            for (int r = 0; r < read.length; r++) {
                read[r] /= hypothesis.scaled()[r];
                stretched += StrictMath.log(hypothesis.scaled()[r]);
            }
            return law.logDensity(read) - stretched;
        }
    }

    /** A normal law of readings. */
    static final class Law {
        private final RealVector mean;
        private final RealMatrix covariance;
        private final DecompositionSolver solver;
        private final double logDeterminant;

        Law(List<double[]> said, RealMatrix ownError) {
            int count = ownError.getRowDimension();
            double[] means = new double[count];
            said.forEach(one -> Arrays.setAll(means, r -> means[r] + one[r] / said.size()));
            this.mean = new ArrayRealVector(means);
            this.covariance = LuckCovariance.about(said, means).add(ownError);
            CholeskyDecomposition solved = new CholeskyDecomposition(covariance, ASYMMETRY, 0);
            this.solver = solved.getSolver();
            double sum = 0;
            RealMatrix lower = solved.getL();
            for (int r = 0; r < count; r++) {
                sum += 2 * StrictMath.log(lower.getEntry(r, r));
            }
            this.logDeterminant = sum;
        }

        double logDensity(double[] observed) {
            RealVector off = new ArrayRealVector(observed).subtract(mean);
            return -(logDeterminant + off.dotProduct(solver.solve(off))) / 2;
        }

        /** The same law for readings that are wrong by themselves. */
        OneWrong oneWrong() {
            return new OneWrong(
                    mean, covariance, solver.solve(MatrixUtils.createRealIdentityMatrix(mean.getDimension())));
        }
    }

    /**
     * What a single reading that is wrong by itself changes; one inverse serves all days.
     *
     * @param mean mean of the readings
     * @param covariance their covariance
     * @param inverse its inverse
     */
    record OneWrong(RealVector mean, RealMatrix covariance, RealMatrix inverse) {
        /** For each reading, the logarithm of the ratio if it alone had a large error more. */
        double[] ratios(double[] observed) {
            int count = observed.length;
            RealVector pulled = inverse.operate(new ArrayRealVector(observed).subtract(mean));
            double[] ratios = new double[count];
            for (int r = 0; r < count; r++) {
                double more = WRONG_BY * WRONG_BY * covariance.getEntry(r, r);
                double grown = 1 + more * inverse.getEntry(r, r);
                ratios[r] = (more * pulled.getEntry(r) * pulled.getEntry(r) / grown - StrictMath.log(grown)) / 2;
            }
            return ratios;
        }
    }
}
