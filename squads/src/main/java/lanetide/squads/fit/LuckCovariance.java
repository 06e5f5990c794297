package lanetide.squads.fit;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Covariance of the day's luck in readings, from pairs of playings that differ in luck alone. Correlations are shrunk
 * toward none by the share of them that is chance (J. Schaefer and K. Strimmer, "A shrinkage approach to large-scale
 * covariance matrix estimation", Statistical Applications in Genetics and Molecular Biology 4, 2005).
 */
final class LuckCovariance {
    private LuckCovariance() {}

    /**
     * The covariance.
     *
     * @param first what one playing of each pair says of each reading, at least two pairs
     * @param second what the other says
     * @return the covariance, by reading
     */
    static RealMatrix of(double[][] first, double[][] second) {
        int pairs = first.length;
        int readings = first[0].length;
        double[][] off = new double[pairs][readings];
        double[] deviations = new double[readings];
        for (int r = 0; r < readings; r++) {
            double squares = 0;
            for (int pair = 0; pair < pairs; pair++) {
                off[pair][r] = (first[pair][r] - second[pair][r]) / Math.sqrt(2);
                squares += off[pair][r] * off[pair][r];
            }
            deviations[r] = Math.sqrt(squares / pairs);
        }
        return shrunk(off, deviations);
    }

    private static RealMatrix shrunk(double[][] off, double[] deviations) {
        int pairs = off.length;
        int readings = deviations.length;
        double[][] correlations = new double[readings][readings];
        double chance = 0;
        double all = 0;
        for (int a = 0; a < readings; a++) {
            for (int b = 0; b < a; b++) {
                double sum = 0;
                double squares = 0;
                double scale = deviations[a] * deviations[b];
                for (int pair = 0; scale > 0 && pair < pairs; pair++) {
                    double product = off[pair][a] * off[pair][b] / scale;
                    sum += product;
                    squares += product * product;
                }
                double mean = sum / pairs;
                correlations[a][b] = mean;
                chance += (squares / pairs - mean * mean) / (pairs - 1);
                all += mean * mean;
            }
        }
        double kept = all > 0 ? Math.max(0, 1 - chance / all) : 0;
        RealMatrix covariance = new Array2DRowRealMatrix(readings, readings);
        for (int a = 0; a < readings; a++) {
            covariance.setEntry(a, a, deviations[a] * deviations[a]);
            for (int b = 0; b < a; b++) {
                double value = kept * correlations[a][b] * deviations[a] * deviations[b];
                covariance.setEntry(a, b, value);
                covariance.setEntry(b, a, value);
            }
        }
        return covariance;
    }
}
