package lanetide.oilflow.line;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points at which a player's scatter is sampled: a low-discrepancy sequence in four dimensions (laydown, angle, speed,
 * rev rate) turned into standard normal values. The same points serve every line, so that lines are compared fairly.
 * Immutable.
 *
 * <p>Source: Joe and Kuo, Constructing Sobol sequences with better two-dimensional projections, SIAM Journal on
 * Scientific Computing 30 (2008), as implemented in Apache Commons Math.
 */
final class ReleaseNodes {
    static final int DIMENSIONS = 4;

    private final double[][] nodes;

    ReleaseNodes(int count) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(DIMENSIONS);
        NormalDistribution normal = new NormalDistribution(null, 0, 1);
        nodes = new double[count][];
        // The sequence starts at the corner 0, where a normal value would be infinite.
        sobol.skipTo(1);
        for (int i = 0; i < count; i++) {
            double[] point = sobol.nextVector();
            for (int d = 0; d < DIMENSIONS; d++) {
                point[d] = normal.inverseCumulativeProbability(point[d]);
            }
            nodes[i] = point;
        }
    }

    double at(int node, int dimension) {
        return nodes[node][dimension];
    }
}
