package lanetide.squads.unknown;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What the model says of one fact, as a full quadratic in the shares of the ranges: least squares, with a little ridge
 * so that no direction runs away. It serves to look where sets may be found, never to judge one.
 */
final class Emulator {
    private static final double RIDGE = 1e-3;

    private final RealVector coefficients;
    private final double error;

    /**
     * Learns from points of a bank.
     *
     * @param points the points
     * @param said what is learnt of each
     */
    Emulator(List<Bank.Point> points, ToDoubleFunction<Bank.Point> said) {
        int terms = terms(points.get(0).shares()).length;
        RealMatrix rows = new Array2DRowRealMatrix(points.size(), terms);
        RealVector right = new ArrayRealVector(points.size());
        for (int i = 0; i < points.size(); i++) {
            rows.setRow(i, terms(points.get(i).shares()));
            right.setEntry(i, said.applyAsDouble(points.get(i)));
        }
        RealMatrix normal = rows.transpose().multiply(rows);
        for (int t = 1; t < terms; t++) {
            normal.addToEntry(t, t, RIDGE * points.size());
        }
        coefficients = new CholeskyDecomposition(normal).getSolver().solve(rows.preMultiply(right));
        RealVector miss = right.subtract(rows.operate(coefficients));
        error = Math.sqrt(miss.dotProduct(miss) / Math.max(1, points.size() - terms / 2));
    }

    /** What the model would say about here. */
    double at(double[] terms) {
        double sum = 0;
        for (int t = 0; t < terms.length; t++) {
            sum += terms[t] * coefficients.getEntry(t);
        }
        return sum;
    }

    /** By how much that is off, as a standard deviation. */
    double error() {
        return error;
    }

    /** One, the shares about their middle, and all their products. */
    static double[] terms(double[] shares) {
        int n = shares.length;
        double[] terms = new double[1 + n + n * (n + 1) / 2];
        terms[0] = 1;
        int next = 1;
        for (int i = 0; i < n; i++) {
            terms[next++] = 2 * shares[i] - 1;
        }
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                terms[next++] = terms[1 + i] * terms[1 + j];
            }
        }
        return terms;
    }
}
