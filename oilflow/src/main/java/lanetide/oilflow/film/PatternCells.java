package lanetide.oilflow.film;

import java.util.function.IntFunction;
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
        IntFunction<double[]> acrossOfRow = pattern instanceof SheetPattern sheet
                ? ofSheet(sheet, grid)
                : row -> acrossLane(((TapePattern) pattern).at(middleM(pattern, row, grid)), grid);
        double[] shares = new double[grid.cells()];
        for (int row = 0; row < grid.rows(); row++) {
            double oiledM = oiledM(pattern, row, grid);
            if (oiledM > 0) {
                double[] across = acrossOfRow.apply(row);
                for (int column = 0; column < across.length; column++) {
                    shares[column * grid.rows() + row] = across[column] * (oiledM / grid.rowLengthM());
                }
            }
        }
        return shares;
    }

    /** A sheet has one shape across the lane, which is worked out once. */
    private static IntFunction<double[]> ofSheet(SheetPattern sheet, LaneGrid grid) {
        double[] shape = acrossLane(sheet.across(), grid);
        return row -> {
            double share = sheet.along().share(middleM(sheet, row, grid), sheet.lengthM());
            double[] across = shape.clone();
            for (int column = 0; column < across.length; column++) {
                across[column] *= share;
            }
            return across;
        };
    }

    private static double[] acrossLane(AcrossFilm film, LaneGrid grid) {
        double[] across = new double[grid.columns()];
        int last = grid.columns() - 1;
        for (int column = 0; column <= last; column++) {
            // From the nearer gutter, so that both halves are alike to the last bit.
            int fromGutter = Math.min(column, last - column);
            Hand gutter = column == fromGutter ? Hand.RIGHT : Hand.LEFT;
            across[column] = film.share(gutter, grid.boardOfColumn(fromGutter));
        }
        return across;
    }

    /** How much of a row is oiled (m along the lane); not above 0 past the end. */
    private static double oiledM(OilPattern pattern, int row, LaneGrid grid) {
        return Math.min(grid.rowLengthM(), pattern.lengthM() - row * grid.rowLengthM());
    }

    /** The middle of what is oiled of a row (m from the foul line). */
    private static double middleM(OilPattern pattern, int row, LaneGrid grid) {
        return row * grid.rowLengthM() + oiledM(pattern, row, grid) / 2;
    }
}
