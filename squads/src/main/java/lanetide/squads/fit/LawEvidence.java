package lanetide.squads.fit;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.stat.correlation.Covariance;

/** How well an ensemble foretold the readings. */
final class LawEvidence {
    private static final double ASYMMETRY = 1e-9;

    private LawEvidence() {}

    /**
     * The logarithm of the density of the readings under the normal law of what its members say.
     *
     * @param said what the members say, their luck in it, at least three and more than readings
     * @param observed the readings
     * @param ownError covariance of the readings' own error
     * @return its logarithm, up to what is common to all ensembles
     */
    static double logarithm(List<double[]> said, double[] observed, RealMatrix ownError) {
        RealMatrix rows = new Array2DRowRealMatrix(said.toArray(double[][]::new));
        RealVector off = new ArrayRealVector(observed);
        for (int k = 0; k < observed.length; k++) {
            off.addToEntry(k, -Arrays.stream(rows.getColumn(k)).average().orElseThrow());
        }
        RealMatrix total = new Covariance(rows).getCovarianceMatrix().add(ownError);
        CholeskyDecomposition solved = new CholeskyDecomposition(total, ASYMMETRY, 0);
        return -(StrictMath.log(solved.getDeterminant())
                        + off.dotProduct(solved.getSolver().solve(off)))
                / 2;
    }
}
