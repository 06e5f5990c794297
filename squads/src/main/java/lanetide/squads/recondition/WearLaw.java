package lanetide.squads.recondition;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.apache.commons.math3.special.Gamma;

/** Wear as a random process with a limit: how likely the limit has been reached by an age. */
public sealed interface WearLaw {
    /**
     * Chance that the limit has been reached.
     *
     * @param games age in games, above 0
     * @param limit the limit, above 0
     * @return from 0 to 1
     */
    double reachedBy(double games, double limit);

    /**
     * The age by which the limit has been reached with some chance.
     *
     * @param chance between 0 and 1
     * @param limit the limit, above 0
     * @param latest an age by which it has been reached with a greater chance
     * @return age in games
     */
    default double ageAt(double chance, double limit, double latest) {
        DoubleUnaryOperator over = games -> reachedBy(games, limit) - chance;
        return new BrentSolver(1e-12).solve(10_000, over::applyAsDouble, 1e-9, latest);
    }

    /**
     * A Wiener process with drift: the age at which it first meets the limit is inverse Gaussian (R. S. Chhikara and J. L. Folks, "The
     * Inverse Gaussian Distribution", 1989).
     *
     * @param driftPerGame mean wear of a game, above 0
     * @param deviationPerGame standard deviation of a game's wear, above 0
     */
    record Wiener(double driftPerGame, double deviationPerGame) implements WearLaw {
        @Override
        public double reachedBy(double games, double limit) {
            double scale = deviationPerGame * Math.sqrt(games);
            double mirrored = StrictMath.exp(2 * driftPerGame * limit / (deviationPerGame * deviationPerGame))
                    * normal(-(limit + driftPerGame * games) / scale);
            return normal((driftPerGame * games - limit) / scale) + mirrored;
        }

        private static double normal(double z) {
            return 0.5 * Erf.erfc(-z / Math.sqrt(2));
        }
    }

    /**
     * A gamma process, which never heals (J. M. van Noortwijk, "A survey of the application of gamma processes in maintenance",
     * Reliability Engineering and System Safety 94, 2009).
     *
     * @param shapePerGame shape gathered in a game, above 0
     * @param scale scale, above 0
     */
    record GammaProcess(double shapePerGame, double scale) implements WearLaw {
        @Override
        public double reachedBy(double games, double limit) {
            return Gamma.regularizedGammaQ(shapePerGame * games, limit / scale);
        }

        /** Density of the wear of one game. */
        double density(double wear) {
            return StrictMath.pow(wear / scale, shapePerGame - 1)
                    * StrictMath.exp(-wear / scale - Gamma.logGamma(shapePerGame))
                    / scale;
        }
    }
}
