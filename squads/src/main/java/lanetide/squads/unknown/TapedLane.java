package lanetide.squads.unknown;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.LaidRatio;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.squads.measured.TapeTaken;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * What lies on a lane, by its tapes. What is there over what is expected differs from one by a share common to the lane
 * and by a field of its own, both normal with mean nothing; tapes tell of both with an error (simple kriging: G.
 * Matheron, "Principles of geostatistics", Economic Geology 58, 1963). Far from all tapes the common share alone is
 * left.
 */
public final class TapedLane {
    /** Standard deviation of the field on a freshly oiled lane (assumption). */
    public static final double FRESH_FIELD = 0.1;

    /** Standard deviation of the common share there: the most that is thought of lanes nobody read. */
    public static final double FRESH_SHARE = 0.08;

    /** The same on a lane that was played on: by the luck of a day and what is not known of wear (assumption). */
    public static final double WORN_FIELD = 0.25;

    /** Standard deviation of the common share there (assumption). */
    public static final double WORN_SHARE = 0.15;

    /** Boards and metres over which the field falls to 1/e of its likeness (assumption). */
    private static final double BOARDS_ALIKE = 4;

    private static final double METRES_ALIKE = 3;

    /** The least that is thought of any place, of what is expected. */
    private static final double LEAST = 0.05;

    private final List<TapeTaken> tapes;
    private final double shareVariance;
    private final double fieldVariance;
    private final double[] expectedUnits;
    private final RealMatrix covariance;
    private final CholeskyDecomposition solver;

    /**
     * A lane.
     *
     * @param expected the film that is expected there
     * @param tapes what was read, at least one tape
     * @param shareSpread standard deviation of the lane's common share, at least 0
     * @param fieldSpread standard deviation of the field, at least 0
     */
    public TapedLane(OilFilm expected, List<TapeTaken> tapes, double shareSpread, double fieldSpread) {
        this(tape -> FilmTapes.units(expected, tape.board(), tape.distanceM()), tapes, shareSpread, fieldSpread);
    }

    /**
     * A lane on which tapes were taken on several patterns.
     *
     * @param expected the oil that is expected at a tape (units)
     * @param tapes what was read, at least one tape
     * @param shareSpread standard deviation of the lane's common share, at least 0
     * @param fieldSpread standard deviation of the field, at least 0
     */
    public TapedLane(
            ToDoubleFunction<TapeTaken> expected, List<TapeTaken> tapes, double shareSpread, double fieldSpread) {
        this.tapes = List.copyOf(tapes);
        this.shareVariance = shareSpread * shareSpread;
        this.fieldVariance = fieldSpread * fieldSpread;
        this.expectedUnits = tapes.stream().mapToDouble(expected).toArray();
        int n = expectedUnits.length;
        this.covariance = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                covariance.setEntry(i, j, expectedUnits[i] * expectedUnits[j] * alike(tapes.get(i), tapes.get(j)));
            }
            double error = tapes.get(i).errorUnits();
            covariance.addToEntry(i, i, error * error);
        }
        this.solver = new CholeskyDecomposition(covariance);
    }

    /** Covariance of the ratios at two tapes. */
    private double alike(TapeTaken one, TapeTaken other) {
        return shareVariance
                + fieldVariance
                        * falling((one.board() - other.board()) / BOARDS_ALIKE)
                        * falling((one.distanceM() - other.distanceM()) / METRES_ALIKE);
    }

    private static double falling(double lengths) {
        return StrictMath.exp(-Math.abs(lengths));
    }

    /**
     * What lies there, of what is expected.
     *
     * @param drawn a draw of a standard normal law, by which the common share is drawn among those that the tapes leave
     * @return the ratio at each place
     */
    public LaidRatio ratio(double drawn) {
        int n = expectedUnits.length;
        double[] off = new double[n];
        for (int i = 0; i < n; i++) {
            off[i] = tapes.get(i).units() - tapes.get(i).meanReading(expectedUnits[i]);
        }
        RealVector weights = solver.getSolver().solve(new ArrayRealVector(off, false));
        int rows = (int) Math.ceil(LaneGeometry.HEAD_PIN_M / LaidRatio.STEP_M) + 1;
        double[][] ratios = new double[rows][LaneGeometry.BOARDS];
        for (double[] row : ratios) {
            Arrays.fill(row, 1 + drawn * Math.sqrt(shareLeft()));
        }
        for (int i = 0; i < n; i++) {
            add(weights.getEntry(i) * expectedUnits[i], tapes.get(i), ratios);
        }
        for (double[] row : ratios) {
            Arrays.setAll(row, board -> Math.max(LEAST, Math.min(LaidRatio.MOST, row[board])));
        }
        return LaidRatio.table(ratios);
    }

    /** Variance of the common share that the tapes leave. */
    private double shareLeft() {
        RealVector common = new ArrayRealVector(expectedUnits).mapMultiply(shareVariance);
        return Math.max(0, shareVariance - common.dotProduct(solver.getSolver().solve(common)));
    }

    private void add(double weight, TapeTaken tape, double[][] ratios) {
        double[] byBoard = new double[LaneGeometry.BOARDS];
        Arrays.setAll(byBoard, board -> falling((tape.board() - board - 1) / BOARDS_ALIKE));
        for (int row = 0; row < ratios.length; row++) {
            double field = fieldVariance * falling((tape.distanceM() - row * LaidRatio.STEP_M) / METRES_ALIKE);
            for (int board = 0; board < byBoard.length; board++) {
                ratios[row][board] += weight * (shareVariance + field * byBoard[board]);
            }
        }
    }

    /**
     * How tapes read before they are read: the lane's share, its field and their own errors.
     *
     * @return covariance of the readings (units squared), tape by tape
     */
    public RealMatrix covariance() {
        return covariance.copy();
    }
}
