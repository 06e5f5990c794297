package lanetide.oilflow.film;

import lanetide.oilflow.lane.LaneGrid;

/**
 * Levels the rows of films of one grid for one length of rest.
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

    private final Levelling levelling;
    private final int columns;
    private final int rows;
    private final int reach;
    private final double dwellS;
    private final RowWaves waves;
    private final double[] sine;
    private final double[] drive;

    private final double[] filmUm;
    /** Heights of the waves of the row, by q; one more place, so that waves can be taken by twos. */
    private final double[] height;
    /** The same less what is left of them after the longest rest. */
    private final double[] mostGone;

    private final double[] crossing;

    RowLevelling(Levelling levelling, LaneGrid grid, double dwellS) {
        this.levelling = levelling;
        this.columns = grid.columns();
        this.rows = grid.rows();
        this.reach = BOARDS_ABOUT * grid.columnsPerBoard();
        this.dwellS = dwellS;
        this.waves = new RowWaves(columns);
        this.sine = waves.sines();
        this.drive = new double[columns + 1];
        for (int q = 1; q < columns; q++) {
            drive[q] = levelling.drive(q * StrictMath.PI / (columns * grid.columnWidthM()));
        }
        this.filmUm = new double[columns];
        this.height = new double[columns + 1];
        this.mostGone = new double[columns + 1];
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
        waves.takeApart(filmUm, height);
        for (int q = 1; q < columns; q++) {
            mostGone[q] = height[q] * LevelledShare.MOST;
        }
        for (int edge = 1; edge <= columns - edge; edge++) {
            int mirror = columns - edge;
            double steps = stepsPerDrive(edge);
            double mirrorSteps = stepsPerDrive(mirror);
            crossing[mirror] = 0;
            crossing[edge] = 0;
            if (steps > 0 || mirrorSteps > 0) {
                cross(edge, steps, mirrorSteps);
            }
        }
        holdBackWhatIsNotThere();
        for (int i = 0; i < columns; i++) {
            filmUm[i] += crossing[i] - crossing[i + 1];
        }
    }

    /**
     * Works out the oil that crosses an edge of the lower half, and its mirror image, toward higher columns (um on a
     * column). Waves are taken by twos, one unlike from both gutters and one alike. They grow shorter, so that from
     * some wave on all are gone at both edges.
     */
    private void cross(int edge, double steps, double mirrorSteps) {
        double leastSteps = Math.min(steps, mirrorSteps);
        double alike = 0;
        double unlike = 0;
        double mirrorAlike = 0;
        double mirrorUnlike = 0;
        int angle = 2 * edge;
        int q = 1;
        for (; q < columns && leastSteps * drive[q] < LevelledShare.MOST_STEPS; q += 2) {
            double unlikeSine = sine[angle];
            angle = onward(angle, edge);
            double alikeSine = sine[angle];
            angle = onward(angle, edge);
            unlike += height[q] * LevelledShare.of(steps * drive[q]) * unlikeSine;
            alike += height[q + 1] * LevelledShare.of(steps * drive[q + 1]) * alikeSine;
            mirrorUnlike += height[q] * LevelledShare.of(mirrorSteps * drive[q]) * unlikeSine;
            mirrorAlike += height[q + 1] * LevelledShare.of(mirrorSteps * drive[q + 1]) * alikeSine;
        }
        for (; q < columns; q += 2) {
            double unlikePart = mostGone[q] * sine[angle];
            angle = onward(angle, edge);
            double alikePart = mostGone[q + 1] * sine[angle];
            angle = onward(angle, edge);
            unlike += unlikePart;
            alike += alikePart;
            mirrorUnlike += unlikePart;
            mirrorAlike += alikePart;
        }
        crossing[columns - edge] = mirrorSteps == 0 ? 0 : mirrorUnlike - mirrorAlike;
        crossing[edge] = steps == 0 ? 0 : unlike + alike;
    }

    /** The angle of the next wave at an edge, in whole multiples of pi/2N, within the circle. */
    private int onward(int angle, int edge) {
        int next = angle + 2 * edge;
        return next < sine.length ? next : next - sine.length;
    }

    /** Steps of the table of shares for each unit of drive, at the film about an edge. */
    private double stepsPerDrive(int edge) {
        return LevelledShare.STEPS_PER_TAU * (dwellS * levelling.mobility(filmAboutUm(edge)));
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
}
