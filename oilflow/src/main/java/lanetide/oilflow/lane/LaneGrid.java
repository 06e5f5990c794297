package lanetide.oilflow.lane;

/**
 * The grid on which a film is kept: columns across the lane, rows from the foul line to the head pin.
 *
 * <p>A ball's contact is 3 to 4 mm wide and a board 27 mm, so a column must be a fraction of a board for a track to
 * look like a track. Eight columns a board are 3.4 mm each, which is the contact itself.
 *
 * @param columnsPerBoard columns in a board, 1 to 64
 * @param rowsPerFoot rows in a foot, 1 to 8
 */
public record LaneGrid(int columnsPerBoard, int rowsPerFoot) {
    /** The grid used unless a caller studies its fineness. */
    public static final LaneGrid DEFAULT = new LaneGrid(8, 1);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public LaneGrid {
        if (columnsPerBoard < 1 || columnsPerBoard > 64 || rowsPerFoot < 1 || rowsPerFoot > 8) {
            throw new IllegalArgumentException("grid of " + columnsPerBoard + " columns a board and " + rowsPerFoot
                    + " rows a foot; columns must be 1 to 64, rows 1 to 8");
        }
    }

    /**
     * Columns across the lane.
     *
     * @return number of columns
     */
    public int columns() {
        return LaneGeometry.BOARDS * columnsPerBoard;
    }

    /**
     * Rows along the lane.
     *
     * @return number of rows
     */
    public int rows() {
        return 60 * rowsPerFoot;
    }

    /**
     * Number of cells.
     *
     * @return columns times rows
     */
    public int cells() {
        return columns() * rows();
    }

    /**
     * Width of a column.
     *
     * @return metres
     */
    public double columnWidthM() {
        return LaneGeometry.BOARD_M / columnsPerBoard;
    }

    /**
     * Length of a row.
     *
     * @return metres
     */
    public double rowLengthM() {
        return LaneGeometry.FOOT_M / rowsPerFoot;
    }

    /**
     * Oil in a cell under a film of one micrometre.
     *
     * @return millilitres; a micrometre on a square metre is one millilitre
     */
    public double mlPerUm() {
        return columnWidthM() * rowLengthM();
    }

    /**
     * Board at the middle of a column.
     *
     * @param column column from 0 at the right-hand gutter
     * @return board counted from the right-hand gutter
     */
    public double boardOfColumn(int column) {
        return LaneGeometry.metresToBoard((column + 0.5) * columnWidthM());
    }
}
