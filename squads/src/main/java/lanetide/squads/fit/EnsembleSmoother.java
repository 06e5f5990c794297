package lanetide.squads.fit;

import java.util.function.DoubleSupplier;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * One step of an ensemble smoother with several assimilations of the same data (A. A. Emerick and A. C. Reynolds,
 * "Ensemble smoother with multiple data assimilation", Computers &amp; Geosciences 55, 2013): each member is moved by
 * the regression of parameters on what members say, toward the readings with noise of its own. The noise is inflated so
 * that all steps together count the readings once.
 */
final class EnsembleSmoother {
    private static final double PIVOT = 1e-12;

    private EnsembleSmoother() {}

    /**
     * One step.
     *
     * @param parameters a row a member, at least three
     * @param said what each member says of each reading
     * @param observed the readings
     * @param noise covariance of the readings' noise in this step, without what members' own luck already adds;
     *     positive definite
     * @param normal draws from the standard normal law
     * @return the moved parameters
     */
    static double[][] step(
            double[][] parameters, double[][] said, double[] observed, RealMatrix noise, DoubleSupplier normal) {
        RealMatrix off = fromMean(said);
        double freedom = said.length - 1.0;
        RealMatrix total =
                off.transpose().multiply(off).scalarMultiply(1 / freedom).add(noise);
        RealMatrix products = fromMean(parameters).transpose().multiply(off).scalarMultiply(1 / freedom);
        CholeskyDecomposition solver = new CholeskyDecomposition(total, PIVOT, PIVOT);
        RealMatrix lower = new CholeskyDecomposition(noise, PIVOT, PIVOT).getL();
        double[][] moved = new double[parameters.length][];
        for (int member = 0; member < moved.length; member++) {
            RealVector luck = new ArrayRealVector(observed.length);
            for (int k = 0; k < observed.length; k++) {
                luck.setEntry(k, normal.getAsDouble());
            }
            RealVector miss =
                    new ArrayRealVector(observed).add(lower.operate(luck)).subtract(new ArrayRealVector(said[member]));
            moved[member] = new ArrayRealVector(parameters[member])
                    .add(products.operate(solver.getSolver().solve(miss)))
                    .toArray();
        }
        return moved;
    }

    private static RealMatrix fromMean(double[][] rows) {
        RealMatrix off = new Array2DRowRealMatrix(rows);
        for (int column = 0; column < off.getColumnDimension(); column++) {
            double mean = 0;
            for (double[] row : rows) {
                mean += row[column] / rows.length;
            }
            off.setColumnVector(column, off.getColumnVector(column).mapSubtract(mean));
        }
        return off;
    }
}
