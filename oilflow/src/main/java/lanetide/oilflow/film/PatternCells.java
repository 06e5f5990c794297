package lanetide.oilflow.film;

import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGrid;

/** A pattern cut into the cells of a grid. */
final class PatternCells {
    private PatternCells() {}

    /**
     * The share of oil in each cell, relative to the pattern's own scale: that at the middle of its row; the row in
     * which the pattern ends counts by the share of it that is oiled.
     *
     * @return by {@code column * rows + row}, as a film has its cells
     */
    static double[] shares(OilPattern pattern, LaneGrid grid) {
        double[] shares = new double[grid.cells()];
        for (int row = 0; row < grid.rows(); row++) {
            double startM = row * grid.rowLengthM();
            double oiledM = Math.min(grid.rowLengthM(), pattern.lengthM() - startM);
            if (oiledM > 0) {
                addRow(pattern.at(startM + oiledM / 2), row, oiledM / grid.rowLengthM(), grid, shares);
            }
        }
        return shares;
    }

    private static void addRow(AcrossFilm film, int row, double oiledShare, LaneGrid grid, double[] shares) {
        int last = grid.columns() - 1;
        for (int column = 0; column <= last; column++) {
            // From the nearer gutter, so that both halves are alike to the last bit.
            int fromGutter = Math.min(column, last - column);
            Hand gutter = column == fromGutter ? Hand.RIGHT : Hand.LEFT;
            shares[column * grid.rows() + row] = film.share(gutter, grid.boardOfColumn(fromGutter)) * oiledShare;
        }
    }
}
