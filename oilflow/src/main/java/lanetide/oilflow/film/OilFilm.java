package lanetide.oilflow.film;

import java.util.Arrays;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.RowSlopes;
import lanetide.oilflow.lane.Topography;

/**
 * The oil on one lane: a film thickness in every cell of a grid. It changes as balls run over it, so it is the one
 * mutable value of this module; it belongs to one lane and is not safe for use by several threads.
 *
 * <p>Cells of a column lie side by side in memory, because a ball runs along a column much more than across. Column 0
 * is at the right-hand gutter, row 0 at the foul line.
 */
public final class OilFilm {
    /** Thickness of one unit of oil (um): 0.0167 mL on a square foot (trade definition, from memory). */
    public static final double UNIT_UM = 0.0167 / (LaneGeometry.FOOT_M * LaneGeometry.FOOT_M);

    private final LaneGrid grid;
    private final Topography topography;
    private final RowSlopes slopes;
    private final double[] thicknessUm;

    private OilFilm(LaneGrid grid, Topography topography, RowSlopes slopes, double[] thicknessUm) {
        this.grid = grid;
        this.topography = topography;
        this.slopes = slopes;
        this.thicknessUm = thicknessUm;
    }

    /**
     * A level lane without oil.
     *
     * @param grid its grid
     * @return the bare film
     */
    public static OilFilm bare(LaneGrid grid) {
        return bare(grid, Topography.FLAT);
    }

    /**
     * A lane of some shape without oil.
     *
     * @param grid its grid
     * @param topography how far the lane is from level; balls feel it, the oil stays where it is
     * @return the bare film
     */
    public static OilFilm bare(LaneGrid grid, Topography topography) {
        return new OilFilm(grid, topography, new RowSlopes(topography, grid), new double[grid.cells()]);
    }

    /**
     * A lane with a pattern freshly laid.
     *
     * @param pattern the pattern
     * @param grid the grid
     * @return the film
     */
    public static OilFilm fresh(OilPattern pattern, LaneGrid grid) {
        OilFilm film = bare(grid);
        film.lay(pattern);
        return film;
    }

    /**
     * A lane with a pattern freshly laid, thinner or thicker than the pattern says.
     *
     * @param volumeMl oil on the lane (mL), above 0
     * @param pattern the pattern, whose own volume does not matter
     * @param grid the grid
     * @return the film
     */
    public static OilFilm holding(double volumeMl, OilPattern pattern, LaneGrid grid) {
        OilFilm film = bare(grid);
        film.lay(volumeMl, pattern);
        return film;
    }

    /**
     * A copy that changes on its own.
     *
     * @return the copy
     */
    public OilFilm copy() {
        return new OilFilm(grid, topography, slopes, thicknessUm.clone());
    }

    /**
     * The same oil on a lane of another shape.
     *
     * @param shape how far that lane is from level
     * @return a film that changes on its own
     */
    public OilFilm on(Topography shape) {
        return new OilFilm(grid, shape, new RowSlopes(shape, grid), thicknessUm.clone());
    }

    /**
     * The lane beneath.
     *
     * @return how far it is from level
     */
    public Topography topography() {
        return topography;
    }

    /**
     * How the lane beneath rises, row by row of the grid.
     *
     * @return its slopes
     */
    public RowSlopes slopes() {
        return slopes;
    }

    /**
     * The grid of this film.
     *
     * @return the grid
     */
    public LaneGrid grid() {
        return grid;
    }

    /**
     * The cells themselves, for the kernels that read and wear the film.
     *
     * @return live array of thickness (um), index {@code column * rows + row}
     */
    public double[] cellsUm() {
        return thicknessUm;
    }

    /**
     * Film in a cell.
     *
     * @param column column from 0 at the right-hand gutter
     * @param row row from 0 at the foul line
     * @return thickness (um)
     */
    public double thicknessUm(int column, int row) {
        return thicknessUm[column * grid.rows() + row];
    }

    /**
     * Lays a pattern over what is there.
     *
     * @param pattern the pattern
     * @return oil laid (mL): the pattern's stated volume
     */
    public double lay(OilPattern pattern) {
        lay(pattern.volumeMl(), pattern);
        return pattern.volumeMl();
    }

    /**
     * Lays the oil of another film of this grid over what is there.
     *
     * @param oil the other film, such as a pattern freshly laid
     * @param ratio how much of it
     */
    public void lay(OilFilm oil, LaidRatio ratio) {
        if (ratio.isEven()) {
            double share = ratio.at(0, 1);
            for (int cell = 0; cell < thicknessUm.length; cell++) {
                thicknessUm[cell] += share * oil.thicknessUm[cell];
            }
            return;
        }
        double[] shares = ratio.onCells(grid);
        for (int cell = 0; cell < thicknessUm.length; cell++) {
            thicknessUm[cell] += shares[cell] * oil.thicknessUm[cell];
        }
    }

    /**
     * Takes the lane to hold, at each place, so much of what it was thought to hold.
     *
     * @param ratio how much of it
     * @return oil that it holds more now (mL); below 0 if it is less
     */
    public double correct(LaidRatio ratio) {
        double beforeMl = volumeMl();
        double[] shares = ratio.onCells(grid);
        for (int cell = 0; cell < thicknessUm.length; cell++) {
            thicknessUm[cell] *= shares[cell];
        }
        return volumeMl() - beforeMl;
    }

    private void lay(double volumeMl, OilPattern pattern) {
        double[] shares = PatternCells.shares(pattern, grid);
        double scaleUm = volumeMl / (Arrays.stream(shares).sum() * grid.mlPerUm());
        for (int cell = 0; cell < shares.length; cell++) {
            thicknessUm[cell] += scaleUm * shares[cell];
        }
    }

    /**
     * Cleans the lane.
     *
     * @return oil taken off (mL)
     */
    public double strip() {
        double takenMl = volumeMl();
        Arrays.fill(thicknessUm, 0);
        return takenMl;
    }

    /**
     * Cleans the lane past a distance.
     *
     * @param distanceM distance from the foul line (m); of a row the share of its film is taken that lies past
     * @return oil taken off (mL)
     */
    public double stripPast(double distanceM) {
        double takenMl = volumePastMl(distanceM);
        double rowsBefore = distanceM / grid.rowLengthM();
        int first = (int) rowsBefore;
        if (first < grid.rows()) {
            for (int start = 0; start < thicknessUm.length; start += grid.rows()) {
                thicknessUm[start + first] *= rowsBefore - first;
                Arrays.fill(thicknessUm, start + first + 1, start + grid.rows(), 0);
            }
        }
        return takenMl;
    }

    /**
     * Oil on the lane.
     *
     * @return millilitres
     */
    public double volumeMl() {
        double sumUm = 0;
        for (double um : thicknessUm) {
            sumUm += um;
        }
        return sumUm * grid.mlPerUm();
    }

    /**
     * Oil past a distance.
     *
     * @param distanceM distance from the foul line (m); a row counts by the share of it that lies past
     * @return millilitres
     */
    public double volumePastMl(double distanceM) {
        double rowsBefore = distanceM / grid.rowLengthM();
        int first = (int) rowsBefore;
        if (first >= grid.rows()) {
            return 0;
        }
        double shareOfFirst = first + 1 - rowsBefore;
        double sumUm = 0;
        for (int start = 0; start < thicknessUm.length; start += grid.rows()) {
            sumUm += thicknessUm[start + first] * shareOfFirst;
            for (int cell = start + first + 1; cell < start + grid.rows(); cell++) {
                sumUm += thicknessUm[cell];
            }
        }
        return sumUm * grid.mlPerUm();
    }

    /**
     * Mean film on one board over a stretch.
     *
     * @param board whole board from the right-hand gutter, 1 to 39
     * @param fromM start (m from the foul line), at a row's edge
     * @param toM end (m), at a row's edge
     * @return thickness (um)
     */
    public double meanOnBoardUm(int board, double fromM, double toM) {
        int firstRow = (int) Math.round(fromM / grid.rowLengthM());
        int endRow = (int) Math.round(toM / grid.rowLengthM());
        double sumUm = 0;
        for (int i = 0; i < grid.columnsPerBoard(); i++) {
            for (int row = firstRow; row < endRow; row++) {
                sumUm += thicknessUm((board - 1) * grid.columnsPerBoard() + i, row);
            }
        }
        return sumUm / (grid.columnsPerBoard() * (endRow - firstRow));
    }

    /** Film on a board at a distance, between the middles of the two rows around it. */
    double onBoardUm(int board, double distanceM) {
        double place = Math.max(0, Math.min(grid.rows() - 1, distanceM / grid.rowLengthM() - 0.5));
        int before = (int) place;
        int after = Math.min(before + 1, grid.rows() - 1);
        double rowM = grid.rowLengthM();
        double beforeUm = meanOnBoardUm(board, before * rowM, (before + 1) * rowM);
        double afterUm = meanOnBoardUm(board, after * rowM, (after + 1) * rowM);
        return beforeUm + (afterUm - beforeUm) * (place - before);
    }
}
