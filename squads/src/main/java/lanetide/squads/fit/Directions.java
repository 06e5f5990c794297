package lanetide.squads.fit;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * Many readings summed up in a few numbers: in units of their noise, along the directions in which the members of an
 * ensemble differ most. With few members the many other directions would show nothing but false correlations (the
 * subspace inversion of G. Evensen, "Sampling strategies and square root analysis schemes for the EnKF", Ocean Dynamics
 * 54, 2004).
 */
final class Directions {
    /** By how much sums may differ in their last bits, of the largest variance; and the least pivot. */
    private static final double ASYMMETRY = 1e-9;

    private static final double PIVOT = 1e-12;

    private final RealMatrix lower;
    private final RealVector centre;
    private final RealMatrix kept;

    /**
     * Directions of an ensemble.
     *
     * @param said what each member says of each reading, a row a member, at least two
     * @param noise covariance of the readings' noise, positive definite
     * @param most so many directions at most, at least 1
     */
    Directions(double[][] said, RealMatrix noise, int most) {
        this.lower = new CholeskyDecomposition(noise, ASYMMETRY, PIVOT).getL();
        RealMatrix white = new Array2DRowRealMatrix(said.length, noise.getRowDimension());
        for (int member = 0; member < said.length; member++) {
            white.setRowVector(member, white(said[member]));
        }
        this.centre = new ArrayRealVector(white.getColumnDimension());
        for (int member = 0; member < said.length; member++) {
            centre.combineToSelf(1, 1.0 / said.length, white.getRowVector(member));
        }
        for (int member = 0; member < said.length; member++) {
            white.setRowVector(member, white.getRowVector(member).subtract(centre));
        }
        RealMatrix all = new SingularValueDecomposition(white).getV();
        int count = Math.min(most, all.getColumnDimension());
        this.kept = all.getSubMatrix(0, all.getRowDimension() - 1, 0, count - 1);
    }

    private RealVector white(double[] readings) {
        RealVector white = new ArrayRealVector(readings);
        MatrixUtils.solveLowerTriangularSystem(lower, white);
        return white;
    }

    /** How many there are. */
    int count() {
        return kept.getColumnDimension();
    }

    /** Readings along the directions, from the mean of the members. */
    double[] along(double[] readings) {
        return kept.preMultiply(white(readings).subtract(centre)).toArray();
    }

    /** A covariance of readings along the directions. */
    RealMatrix along(RealMatrix covariance) {
        RealMatrix half = whiteColumns(covariance);
        RealMatrix both =
                kept.transpose().multiply(whiteColumns(half.transpose())).multiply(kept);
        return both.add(both.transpose()).scalarMultiply(0.5);
    }

    private RealMatrix whiteColumns(RealMatrix matrix) {
        RealMatrix white = new Array2DRowRealMatrix(matrix.getRowDimension(), matrix.getColumnDimension());
        for (int column = 0; column < matrix.getColumnDimension(); column++) {
            white.setColumnVector(column, white(matrix.getColumn(column)));
        }
        return white;
    }
}
