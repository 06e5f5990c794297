package lanetide.oilflow.film;

import lanetide.oilflow.lane.LaneGrid;

/**
 * Levels the rows of a film for one length of rest.
 *
 * <p>A row of N columns is a sum of cosines {@code c_q cos(q pi (i + 1/2) / N)}, whose slopes vanish at the gutters.
 * For a share {@code 1 - exp(-t/tau_q)} of each to vanish, the oil that crosses the edge before column j while the lane
 * rests must be the sum of {@code (1 - exp(-t/tau_q)) c_q sin(q pi j / N) / (2 sin(q pi / 2N))}; tau_q is taken at the
 * film about that edge. What crosses an edge leaves one column and enters the other, so no oil is lost.
 *
 * <p>Waves alike from both gutters and waves unlike are summed apart, so that a mirrored film levels to the mirror
 * image to the last bit.
 */
final class RowLevelling {
    /** Boards to either side of an edge that tell its film, with weights that fall off in a straight line. */
    private static final int BOARDS_ABOUT = 1;

    /** Most of its oil that a column can give, so that rounding leaves nothing below zero. */
    private static final double MAX_GIVEN = 1 - 1e-9;

    private static final int STEPS_PER_UNIT = 256;
    private static final int MAX_EXPONENT = 20;

    private final Levelling levelling;
    private final int columns;
    private final int rows;
    private final int reach;
    private final double dwellS;
    private final double[] sine;
    private final double[] drive;
    private final double[] levelled;

    private final double[] filmUm;
    private final double[] wave;
    private final double[] crossing;

    RowLevelling(Levelling levelling, LaneGrid grid, double dwellS) {
        this.levelling = levelling;
        this.columns = grid.columns();
        this.rows = grid.rows();
        this.reach = BOARDS_ABOUT * grid.columnsPerBoard();
        this.dwellS = dwellS;
        this.sine = quarterAlikeSines(columns);
        this.drive = new double[columns];
        for (int q = 1; q < columns; q++) {
            drive[q] = levelling.drive(q * StrictMath.PI / (columns * grid.columnWidthM()));
        }
        this.levelled = levelledShares();
        this.filmUm = new double[columns];
        this.wave = new double[columns];
        this.crossing = new double[columns + 1];
    }

    void relax(OilFilm film) {
        double[] cells = film.cellsUm();
        for (int row = 0; row < rows; row++) {
            double mostUm = 0;
            for (int i = 0; i < columns; i++) {
                filmUm[i] = cells[i * rows + row];
                mostUm = Math.max(mostUm, filmUm[i]);
            }
            if (levelling.mobility(mostUm) > 0) {
                relaxRow();
                for (int i = 0; i < columns; i++) {
                    cells[i * rows + row] = filmUm[i];
                }
            }
        }
    }

    private void relaxRow() {
        takeApart();
        for (int edge = 1; edge < columns; edge++) {
            crossing[edge] = crossingUm(edge);
        }
        holdBackWhatIsNotThere();
        for (int i = 0; i < columns; i++) {
            filmUm[i] += crossing[i] - crossing[i + 1];
        }
    }

    /** Heights of the waves of the row, each divided by twice the sine of half its phase from column to column. */
    private void takeApart() {
        for (int q = 1; q < columns; q++) {
            boolean alike = q % 2 == 0;
            double sum = alike && columns % 2 == 1 ? filmUm[columns / 2] * cosine(q * columns) : 0;
            for (int i = 0; i < columns / 2; i++) {
                double other = filmUm[columns - 1 - i];
                sum += (alike ? filmUm[i] + other : filmUm[i] - other) * cosine(q * (2 * i + 1));
            }
            wave[q] = sum / (columns * sine[q]);
        }
    }

    /** Oil that crosses an edge toward higher columns (um on a column). */
    private double crossingUm(int edge) {
        double exponentPerDrive = dwellS * levelling.mobility(filmAboutUm(edge));
        if (exponentPerDrive == 0) {
            return 0;
        }
        int nearer = Math.min(edge, columns - edge);
        double alike = 0;
        double unlike = 0;
        for (int q = 1; q < columns; q++) {
            double part = wave[q] * levelledShare(exponentPerDrive * drive[q]) * sine[2 * q * nearer % sine.length];
            if (q % 2 == 0) {
                alike += part;
            } else {
                unlike += part;
            }
        }
        return edge == nearer ? unlike + alike : unlike - alike;
    }

    /** Mean film about an edge (um); past the gutters the film is taken as its mirror image. */
    private double filmAboutUm(int edge) {
        double sum = 0;
        for (int d = 0; d < reach; d++) {
            sum += (reach - d) * (filmUm[inside(edge - 1 - d)] + filmUm[inside(edge + d)]);
        }
        return sum / (reach * (reach + 1));
    }

    private int inside(int column) {
        if (column < 0) {
            return -1 - column;
        }
        return column < columns ? column : 2 * columns - 1 - column;
    }

    private void holdBackWhatIsNotThere() {
        for (int i = 0; i < columns; i++) {
            double given = Math.max(0, -crossing[i]) + Math.max(0, crossing[i + 1]);
            if (given > MAX_GIVEN * filmUm[i]) {
                double share = MAX_GIVEN * filmUm[i] / given;
                crossing[i] = crossing[i] < 0 ? share * crossing[i] : crossing[i];
                crossing[i + 1] = crossing[i + 1] > 0 ? share * crossing[i + 1] : crossing[i + 1];
            }
        }
    }

    private double cosine(int halfSteps) {
        return sine[(halfSteps + columns) % sine.length];
    }

    private double levelledShare(double exponent) {
        double position = Math.min(exponent, MAX_EXPONENT) * STEPS_PER_UNIT;
        int i = (int) position;
        return levelled[i] + (position - i) * (levelled[i + 1] - levelled[i]);
    }

    private static double[] levelledShares() {
        double[] shares = new double[MAX_EXPONENT * STEPS_PER_UNIT + 2];
        for (int i = 0; i < shares.length; i++) {
            shares[i] = -StrictMath.expm1(-(double) i / STEPS_PER_UNIT);
        }
        return shares;
    }

    /** Sines of whole multiples of pi/2N round the circle; each quarter has the digits of the first. */
    private static double[] quarterAlikeSines(int columns) {
        double[] sines = new double[4 * columns];
        for (int m = 0; m <= columns; m++) {
            double value = StrictMath.sin(StrictMath.PI * m / (2 * columns));
            sines[m] = value;
            sines[(2 * columns - m)] = value;
            sines[(2 * columns + m)] = -value;
            sines[(4 * columns - m) % sines.length] = -value;
        }
        return sines;
    }
}
