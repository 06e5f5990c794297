package lanetide.squads.fit;

import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Covariances of readings from few playings: of the day's luck, from pairs that differ in luck alone. Correlations are
 * shrunk toward none by the share of them that is chance (J. Schaefer and K. Strimmer, "A shrinkage approach to
 * large-scale covariance matrix estimation", Statistical Applications in Genetics and Molecular Biology 4, 2005).
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

    /**
     * Covariance of what members say, luck and all, shrunk alike.
     *
     * @param said what each member says of each reading, at least two members
     * @param means their means
     * @return the covariance, by reading
     */
    static RealMatrix about(List<double[]> said, double[] means) {
        double[][] off = new double[said.size()][means.length];
        double[] deviations = new double[means.length];
        double more = Math.sqrt(said.size() / (said.size() - 1.0));
        for (int r = 0; r < means.length; r++) {
            double squares = 0;
            for (int member = 0; member < off.length; member++) {
                off[member][r] = more * (said.get(member)[r] - means[r]);
                squares += off[member][r] * off[member][r];
            }
            deviations[r] = Math.sqrt(squares / off.length);
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
