package lanetide.squads.fit;

import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.SharedStateContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/** Draws the errors of readings. */
final class NormalErrors {
    private static final double ASYMMETRY = 1e-9;

    private final RealMatrix lower;
    private final SharedStateContinuousSampler normal;

    /** Errors of a covariance, by some chance. */
    NormalErrors(RealMatrix covariance, UniformRandomProvider chance) {
        this.lower = new CholeskyDecomposition(covariance, ASYMMETRY, 0).getL();
        this.normal = ZigguratSampler.NormalizedGaussian.of(chance);
    }

    /** An error of each reading. */
    double[] drawn() {
        double[] drawn = new double[lower.getRowDimension()];
        for (int r = 0; r < drawn.length; r++) {
            drawn[r] = normal.sample();
        }
        return lower.operate(drawn);
    }
}
