package lanetide.oilflow.film;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import lanetide.oilflow.Require;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;

/**
 * What tapes read on a freshly oiled lane: units of oil on the same boards at several distances. Between readings the
 * film is interpolated in straight lines both ways; beyond the outermost readings the nearest one holds.
 *
 * @param boards boards from the right-hand gutter, ascending, 1 to 39; at least {@link #MIN_BOARDS}
 * @param distancesM distances from the foul line (m), ascending, 0 to the head pin; at least {@link #MIN_DISTANCES}
 * @param units one row a distance, in it one reading a board, 0 to {@link #MAX_UNITS}
 * @param errorUnits error bar of every reading (units), 0 to 20
 */
public record TapeTable(List<Integer> boards, List<Double> distancesM, List<List<Double>> units, double errorUnits) {
    /** Fewest boards read at each distance. */
    public static final int MIN_BOARDS = 3;

    /** Fewest distances. */
    public static final int MIN_DISTANCES = 2;

    /** Largest reading (units): several times the thickest published heads of 120. */
    public static final double MAX_UNITS = 500;

    private static final LaneGrid COLUMNS = LaneGrid.DEFAULT;

    /** Rows into which a volume is cut: a third of a foot of a usual pattern. */
    private static final int ROWS = 120;

    /**
     * Copies the lists and checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range, a list is too short or not ascending, or a
     *     row has not one reading a board
     */
    public TapeTable {
        boards = List.copyOf(boards);
        distancesM = List.copyOf(distancesM);
        units = units.stream().map(List::copyOf).toList();
        requireAscending(boards.stream().map(Integer::doubleValue).toList(), "boards", MIN_BOARDS);
        requireAscending(distancesM, "distances", MIN_DISTANCES);
        Require.inRange(boards.get(0), "lowest board", 1, LaneGeometry.BOARDS);
        Require.inRange(boards.get(boards.size() - 1), "highest board", 1, LaneGeometry.BOARDS);
        Require.inRange(distancesM.get(0), "first distance (m)", 0, LaneGeometry.HEAD_PIN_M);
        Require.inRange(distancesM.get(distancesM.size() - 1), "last distance (m)", 0, LaneGeometry.HEAD_PIN_M);
        Require.inRange(errorUnits, "error bar (units)", 0, 20);
        requireRows(boards, distancesM, units);
    }

    private static void requireAscending(List<Double> values, String what, int fewest) {
        if (values.size() < fewest) {
            throw new IllegalArgumentException(
                    "there are " + values.size() + " " + what + "; tapes need at least " + fewest);
        }
        for (int i = 1; i < values.size(); i++) {
            if (!(values.get(i) > values.get(i - 1))) {
                throw new IllegalArgumentException(
                        what + " must ascend, but " + values.get(i) + " follows " + values.get(i - 1));
            }
        }
    }

    private static void requireRows(List<Integer> boards, List<Double> distancesM, List<List<Double>> units) {
        if (units.size() != distancesM.size()) {
            throw new IllegalArgumentException(
                    units.size() + " rows of readings for " + distancesM.size() + " distances; give one a distance");
        }
        for (List<Double> row : units) {
            if (row.size() != boards.size()) {
                throw new IllegalArgumentException(
                        row.size() + " readings in a row of " + boards.size() + " boards; give one a board");
            }
            row.forEach(reading -> Require.inRange(reading, "reading (units)", 0, MAX_UNITS));
        }
    }

    /**
     * The same readings over the whole lane. If no board lies beyond the middle, the left half is taken for the mirror
     * image of the right one; if none lies before it, the right half for that of the left.
     *
     * @return a table whose boards lie on both sides
     */
    public TapeTable acrossTheLane() {
        int middle = (int) LaneGeometry.CENTRE_BOARD;
        boolean rightOnly = boards.get(boards.size() - 1) <= middle;
        boolean leftOnly = boards.get(0) >= middle;
        if (!rightOnly && !leftOnly) {
            return this;
        }
        TapeTable near = rightOnly ? this : mirrored();
        return new TapeTable(
                withMirror(
                        near.boards,
                        near.boards.stream().map(board -> 40 - board).toList(),
                        near),
                distancesM,
                near.units.stream().map(row -> withMirror(row, row, near)).toList(),
                errorUnits);
    }

    /** A row of the near half, followed by the far half in reverse; a reading on the middle board stands once. */
    private static <T> List<T> withMirror(List<T> near, List<T> far, TapeTable table) {
        boolean onMiddle = table.boards.get(table.boards.size() - 1) == (int) LaneGeometry.CENTRE_BOARD;
        List<T> all = new ArrayList<>(near);
        for (int i = far.size() - (onMiddle ? 2 : 1); i >= 0; i--) {
            all.add(far.get(i));
        }
        return all;
    }

    /**
     * The lane as seen in a mirror.
     *
     * @return the table with boards counted from the other gutter
     */
    public TapeTable mirrored() {
        return new TapeTable(
                reversed(boards.stream().map(board -> 40 - board).toList()),
                distancesM,
                units.stream().map(TapeTable::reversed).toList(),
                errorUnits);
    }

    private static <T> List<T> reversed(List<T> values) {
        List<T> copy = new ArrayList<>(values);
        Collections.reverse(copy);
        return copy;
    }

    /**
     * The readings of one row, interpolated between the two distances around it.
     *
     * @param distanceM distance from the foul line (m)
     * @return units of oil, one a board
     */
    public double[] rowAt(double distanceM) {
        double place = place(distancesM, distanceM);
        int before = (int) place;
        int after = Math.min(before + 1, units.size() - 1);
        double[] row = new double[boards.size()];
        for (int i = 0; i < row.length; i++) {
            row[i] = between(units.get(before).get(i), units.get(after).get(i), place - before);
        }
        return row;
    }

    /**
     * Film on a board of such a row.
     *
     * @param row what {@link #rowAt} gave
     * @param board board from the right-hand gutter, fractions allowed
     * @return units of oil
     */
    public double across(double[] row, double board) {
        double place = place(boards, board);
        int before = (int) place;
        return between(row[before], row[Math.min(before + 1, row.length - 1)], place - before);
    }

    /**
     * Oil that these readings amount to.
     *
     * @param lengthM where the pattern ends (m)
     * @param offUnits how far every reading is taken to be off (units)
     * @return millilitres under the interpolated film plus {@code offUnits}, nowhere below nothing
     */
    public double volumeMl(double lengthM, double offUnits) {
        TapeTable lane = acrossTheLane();
        double sumUnits = 0;
        double stepM = lengthM / ROWS;
        for (int step = 0; step < ROWS; step++) {
            double[] row = lane.rowAt((step + 0.5) * stepM);
            for (int column = 0; column < COLUMNS.columns(); column++) {
                sumUnits += Math.max(0, lane.across(row, COLUMNS.boardOfColumn(column)) + offUnits);
            }
        }
        return sumUnits * OilFilm.UNIT_UM * COLUMNS.columnWidthM() * stepM;
    }

    /** Where a value stands among ascending ones: 1.5 is half-way from the second to the third; held at both ends. */
    private static double place(List<? extends Number> ascending, double value) {
        int last = ascending.size() - 1;
        if (value <= ascending.get(0).doubleValue()) {
            return 0;
        }
        for (int i = 1; i <= last; i++) {
            double high = ascending.get(i).doubleValue();
            if (value < high) {
                double low = ascending.get(i - 1).doubleValue();
                return Math.min(Math.nextDown((double) i), i - 1 + (value - low) / (high - low));
            }
        }
        return last;
    }

    private static double between(double low, double high, double share) {
        return low + (high - low) * share;
    }
}
