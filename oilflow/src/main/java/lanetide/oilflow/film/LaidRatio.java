package lanetide.oilflow.film;

import java.util.Arrays;
import lanetide.oilflow.Require;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;

/**
 * What a machine lays on a lane, of what it is set to: one share everywhere, or one at each board and distance, in
 * straight lines between. Immutable.
 */
public final class LaidRatio {
    /** The most that is laid anywhere, of what a machine is set to. */
    public static final double MOST = 3;

    /** All that a machine is set to. */
    public static final LaidRatio WHOLE = even(1);

    /** Metres between the distances of a table. */
    public static final double STEP_M = LaneGeometry.FOOT_M;

    private final double share;
    private final double[][] byDistanceAndBoard;

    private LaidRatio(double share, double[][] byDistanceAndBoard) {
        this.share = share;
        this.byDistanceAndBoard = byDistanceAndBoard;
    }

    /**
     * The same share everywhere.
     *
     * @param share above 0 and at most {@link #MOST}
     * @return the ratio
     * @throws IllegalArgumentException if the share lies outside its range
     */
    public static LaidRatio even(double share) {
        return new LaidRatio(required(share), new double[0][]);
    }

    /**
     * A share at each place.
     *
     * @param ratios one row for each {@link #STEP_M} from the foul line, at least one; in it one for each board from
     *     the right-hand gutter; all above 0 and at most {@link #MOST}. Beyond the last row as there
     * @return the ratio
     * @throws IllegalArgumentException if there is no row, a row has not as many as there are boards, or one lies
     *     outside its range
     */
    public static LaidRatio table(double[][] ratios) {
        double[][] copy = new double[ratios.length][];
        for (int row = 0; row < copy.length; row++) {
            copy[row] = ratios[row].clone();
            for (double ratio : copy[row]) {
                required(ratio);
            }
            Require.inRange(copy[row].length, "boards of a row", LaneGeometry.BOARDS, LaneGeometry.BOARDS);
        }
        Require.inRange(copy.length, "rows of ratios", 1, Integer.MAX_VALUE);
        return new LaidRatio(1, copy);
    }

    private static double required(double ratio) {
        return Require.inRange(ratio, "share laid", Double.MIN_VALUE, MOST);
    }

    /**
     * Whether it is the same everywhere.
     *
     * @return true for {@link #even}
     */
    public boolean isEven() {
        return byDistanceAndBoard.length == 0;
    }

    /**
     * The share at a place.
     *
     * @param distanceM distance from the foul line (m), at least 0
     * @param board board from the right-hand gutter, 1 to 39
     * @return what is laid there, of what is set
     */
    public double at(double distanceM, int board) {
        if (isEven()) {
            return share;
        }
        double place = Math.min(byDistanceAndBoard.length - 1, distanceM / STEP_M);
        int before = (int) place;
        int after = Math.min(before + 1, byDistanceAndBoard.length - 1);
        double near = byDistanceAndBoard[before][board - 1];
        return near + (byDistanceAndBoard[after][board - 1] - near) * (place - before);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LaidRatio ratio
                && share == ratio.share
                && Arrays.deepEquals(byDistanceAndBoard, ratio.byDistanceAndBoard);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(share) + Arrays.deepHashCode(byDistanceAndBoard);
    }

    /** What is laid in each cell of a grid, column by column, of what is set. */
    double[] onCells(LaneGrid grid) {
        double[] ratios = new double[grid.columns() * grid.rows()];
        for (int column = 0; column < grid.columns(); column++) {
            int board = column / grid.columnsPerBoard() + 1;
            for (int row = 0; row < grid.rows(); row++) {
                ratios[column * grid.rows() + row] = at((row + 0.5) * grid.rowLengthM(), board);
            }
        }
        return ratios;
    }
}
