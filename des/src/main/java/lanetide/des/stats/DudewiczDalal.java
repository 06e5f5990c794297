package lanetide.des.stats;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * Choosing the best of several systems, such as schedules, with a stated probability of being right whenever the best is
 * ahead of all others by at least an amount that matters. Each system is run a first time; its variance then tells how
 * often it must be run in all, and the choice falls on the best weighted mean. Runs must be independent between systems.
 *
 * <p>Source: E. J. Dudewicz and S. R. Dalal, "Allocation of observations in ranking and selection with unequal variances",
 * Sankhya B 37, 1975; as in A. M. Law, "Simulation Modeling and Analysis", 5th ed. 2015, section 10.4.
 *
 * @param firstStage replications of the first stage, at least 2
 * @param h1 the selection constant
 */
public record DudewiczDalal(int firstStage, double h1) {

    private static final double GREATEST_H1 = 1e4;
    private static final double PRECISION = 1e-9;

    /**
     * Finds the selection constant: the h for which the integral of {@code F(t + h)^(systems - 1) f(t)} is the probability,
     * with the distribution F and the density f of Student's t with {@code firstStage - 1} degrees of freedom.
     *
     * @param systems number of systems to choose from, at least 2
     * @param firstStage replications of the first stage, at least 2
     * @param probability probability of being right, more than a blind choice has
     * @throws IllegalArgumentException if {@code systems < 2} or {@code firstStage < 2}, or unless
     *     {@code 1 / systems < probability < 1}
     */
    public static DudewiczDalal of(int systems, int firstStage, double probability) {
        if (systems < 2 || firstStage < 2) {
            throw new IllegalArgumentException(
                    "systems (" + systems + ") and firstStage (" + firstStage + ") must both be at least 2");
        }
        if (!(probability > 1.0 / systems && probability < 1)) {
            throw new IllegalArgumentException("probability is " + probability + ", but must lie between "
                    + 1.0 / systems + ", that of a blind choice, and 1");
        }
        Quantiles t = new Quantiles(firstStage - 1);
        double h1 = new BrentSolver(PRECISION)
                .solve(1000, h -> t.probabilityOfBeingRight(h, systems) - probability, 0, GREATEST_H1);
        return new DudewiczDalal(firstStage, h1);
    }

    /**
     * How many replications a system needs in all.
     *
     * @param variance its sample variance in the first stage
     * @param indifference the lead that matters, greater than 0
     * @throws IllegalArgumentException if {@code variance} is not finite or negative, or unless {@code 0 < indifference}
     */
    public int replicationsNeeded(double variance, double indifference) {
        double ratio = h1 / positive(indifference);
        double needed = Math.ceil(ratio * ratio * Checks.notNegative(variance, "variance"));
        return (int) Math.min(Integer.MAX_VALUE, Math.max(firstStage + 1.0, needed));
    }

    /**
     * The mean by which a system is judged.
     *
     * @param first its replications of the first stage
     * @param rest all others
     * @param indifference the lead that matters, greater than 0
     * @throws IllegalArgumentException unless {@code first} holds the replications of the first stage and {@code rest} the
     *     others that are needed, and {@code 0 < indifference}
     */
    public double weightedMean(Tally first, Tally rest, double indifference) {
        double needed = replicationsNeeded(first.variance(), indifference);
        if (first.count() != firstStage || first.count() + rest.count() != needed) {
            throw new IllegalArgumentException("there are " + first.count() + " and " + rest.count()
                    + " replications, but must be " + firstStage + " and " + (needed - firstStage));
        }
        double ratio = positive(indifference) / h1;
        double spare = (needed - firstStage) * ratio * ratio / first.variance();
        double weight = firstStage / needed * (1 + Math.sqrt(1 - needed / firstStage * (1 - spare)));
        return weight * first.mean() + (1 - weight) * rest.mean();
    }

    private static double positive(double indifference) {
        if (!(indifference > 0)) {
            throw new IllegalArgumentException("indifference is " + indifference + ", but must be greater than 0");
        }
        return indifference;
    }

    /** The quantiles of Student's t at the points at which an integral over its probability is evaluated. */
    private static final class Quantiles {

        private static final int INTERVALS = 16;
        private static final int POINTS = 20;

        private final TDistribution t;
        private final double[] quantiles = new double[INTERVALS * POINTS];
        private final double[] weights = new double[INTERVALS * POINTS];

        Quantiles(int degreesOfFreedom) {
            t = new TDistribution(null, degreesOfFreedom);
            GaussIntegratorFactory factory = new GaussIntegratorFactory();
            for (int i = 0; i < INTERVALS; i++) {
                GaussIntegrator rule = factory.legendre(POINTS, (double) i / INTERVALS, (i + 1.0) / INTERVALS);
                for (int j = 0; j < POINTS; j++) {
                    quantiles[i * POINTS + j] = t.inverseCumulativeProbability(rule.getPoint(j));
                    weights[i * POINTS + j] = rule.getWeight(j);
                }
            }
        }

        double probabilityOfBeingRight(double h, int systems) {
            double sum = 0;
            for (int i = 0; i < quantiles.length; i++) {
                sum += weights[i] * Math.pow(t.cumulativeProbability(quantiles[i] + h), systems - 1);
            }
            return sum;
        }
    }
}
