package lanetide.oilflow.motion;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGrid;

/**
 * The strip of film under a ball, row by row. It covers its first column in part, its last in part, and those between.
 *
 * <p>The strip of the next row is placed while the ball is still in this one, so that its film is at hand when needed.
 */
final class ContactStrip {
    private final LaneGrid grid;
    private final int columns;
    private final double columnShare;
    private final double halfColumns;
    private final double columnsPerM;
    private final double mostStart;
    /** Share of the strip's columns that the contact touches: below 1 where columns are wider than the contact. */
    private final double touchedShare;

    private double[] cells = {};
    private int origin;
    private int stride;
    private int cell;
    private double inLast;
    private int nextCell;
    private double nextInLast;

    ContactStrip(LaneGrid grid) {
        this.grid = grid;
        this.columns = (int) Math.ceil(BallSpec.CONTACT_M / grid.columnWidthM() - 1e-9);
        this.columnShare = 1.0 / columns;
        this.halfColumns = 0.5 * columns;
        this.columnsPerM = 1 / grid.columnWidthM();
        this.mostStart = (grid.columns() - columns) * (1 - 1e-12);
        this.touchedShare = BallSpec.CONTACT_M / (columns * grid.columnWidthM());
    }

    /** Lays the strip on a film, in the axes of a hand. */
    void begin(OilFilm film, Hand hand, double firstCentreM) {
        cells = film.cellsUm();
        origin = hand == Hand.RIGHT ? 0 : (grid.columns() - 1) * grid.rows();
        stride = hand == Hand.RIGHT ? grid.rows() : -grid.rows();
        place(firstCentreM, 0);
    }

    /** Moves on to the row placed last, and places the one after it. */
    void advance(double nextCentreM, int nextRow) {
        cell = nextCell;
        inLast = nextInLast;
        place(nextCentreM, nextRow);
    }

    private void place(double centreM, int row) {
        double wanted = centreM * columnsPerM - halfColumns;
        // Plain comparisons: Math.min and Math.max guard against NaN and cost a tenth of the whole march.
        double start = wanted < 0 ? 0 : wanted > mostStart ? mostStart : wanted;
        int column = (int) start;
        nextCell = origin + column * stride + row;
        nextInLast = start - column;
    }

    /** Mean film under the strip (um). */
    double meanUm() {
        double sumUm = (1 - inLast) * cells[cell] + inLast * cells[cell + columns * stride];
        for (int k = 1; k < columns; k++) {
            sumUm += cells[cell + k * stride];
        }
        return sumUm * columnShare;
    }

    /** Takes oil off the columns in proportion to what they hold, or lays it down evenly. */
    void wear(double laneUm, double liftedUm) {
        double lifted = touchedShare * liftedUm;
        double keep = lifted > 0 ? -lifted / laneUm : 0;
        double lay = lifted > 0 ? 0 : -lifted;
        cells[cell] += (1 - inLast) * (cells[cell] * keep + lay);
        int lastCell = cell + columns * stride;
        cells[lastCell] += inLast * (cells[lastCell] * keep + lay);
        for (int k = 1; k < columns; k++) {
            int between = cell + k * stride;
            cells[between] += cells[between] * keep + lay;
        }
    }
}
