package lanetide.oilflow.motion;

import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;

/**
 * Rolls a ball down a lane, row by row of the film's grid, and wears the film under it.
 *
 * <p>A sliding sphere under Coulomb friction: the slip {@code u = v - S} keeps its direction and only its size U falls,
 * {@code dU/dt = -mu g (1 + 1/kappa)}, and {@code v = v_roll + kappa/(1 + kappa) u}; so inside a row only U and x change.
 * With U at 0 the ball rolls straight on. Source: textbook mechanics of a sphere that slides, then rolls; Frohlich, What
 * makes bowling balls hook?, American Journal of Physics 72 (2004). The final direction does not depend on the oil; where
 * the ball turns does.
 *
 * <p>In every row the contact strip meets the film of the columns under it and the ball's own film one revolution old, and
 * {@link FilmSplit} parts the sum. Each revolution the track steps aside by the flare, so that only the overlapping share of
 * what was taken up one turn ago is met again.
 *
 * <p>One object serves one thread, shot after shot, and allocates nothing per shot. The results of the last shot are read
 * from its getters or taken away by {@link #path}.
 */
public final class RowMarch {
    private static final double GRAVITY_MPS2 = 9.80665;
    /** Width of the contact (m), an eighth of a board or 3.4 mm; estimates from contact mechanics are 2.6 to 4.2 mm. */
    private static final double CONTACT_M = LaneGeometry.BOARD_M / 8;
    /** Revolutions after which the track has run over the whole band of strips that old oil lies on. */
    private static final int MOST_REVOLUTIONS = 24;

    private final LaneGrid grid;
    private final double[] xM;
    /** Length of ball track that has run over the lane at each row's start (m). */
    private final double[] trackM;
    /** Oil on that length (um m). */
    private final double[] trackOil;
    /** Film laid on the track in each row (um). */
    private final double[] trackFilmUm;

    private final int stripColumns;
    private final double stripShare;
    /** Share of the strip of whole columns that the contact touches; 1 on the usual grid. */
    private final double touchedShare;

    private final double columnsPerM;
    private final double mostStart;

    private double timeS;
    private double slipMps;
    private double vxMps;
    private double vyMps;
    private double rollDistanceM;
    private double rollTimeS;
    private double gainMl;
    private int rowsRun;

    /**
     * A march over films of one grid.
     *
     * @param grid the grid
     */
    public RowMarch(LaneGrid grid) {
        this.grid = grid;
        this.xM = new double[grid.rows() + 1];
        this.trackM = new double[grid.rows() + 2];
        this.trackOil = new double[grid.rows() + 2];
        this.trackFilmUm = new double[grid.rows() + 2];
        this.stripColumns = (int) Math.ceil(CONTACT_M / grid.columnWidthM() - 1e-9);
        this.stripShare = 1.0 / stripColumns;
        this.touchedShare = CONTACT_M / (stripColumns * grid.columnWidthM());
        this.columnsPerM = 1 / grid.columnWidthM();
        this.mostStart = (grid.columns() - stripColumns) * (1 - 1e-12);
    }

    /**
     * Rolls a ball and leaves the film as it is.
     *
     * @param delivery the ball at the foul line
     * @param hand delivery side
     * @param contact the ball on this lane
     * @param film the lane's film
     */
    public void read(Delivery delivery, Hand hand, Contact contact, OilFilm film) {
        roll(delivery, hand, contact, film, 0, false);
    }

    /**
     * Rolls a ball and wears the film: this is where oil is taken off a lane and laid down again.
     *
     * @param delivery the ball at the foul line
     * @param hand delivery side
     * @param contact the ball on this lane
     * @param film the lane's film, changed by the shot
     * @param oil the oil on the ball, changed by the shot
     */
    public void wear(Delivery delivery, Hand hand, Contact contact, OilFilm film, BallOil oil) {
        roll(delivery, hand, contact, film, oil.onBallMl(), true);
        oil.add(gainMl);
    }

    /**
     * Where the ball was at a distance.
     *
     * @param distanceM distance from the foul line (m), 0 to 18.288
     * @return distance from the lane edge on the delivery side (m); where it fell into a gutter, the place it fell
     */
    public double positionM(double distanceM) {
        if (rowsRun == 0) {
            return xM[0];
        }
        double rowsAlong = Math.min(distanceM / grid.rowLengthM(), rowsRun);
        int row = Math.min((int) rowsAlong, rowsRun - 1);
        return xM[row] + (rowsAlong - row) * (xM[row + 1] - xM[row]);
    }

    /**
     * Where the ball met the pins.
     *
     * @return board from the gutter on the delivery side; below 0.5 or above 39.5 for a gutter ball
     */
    public double arrivalBoard() {
        return LaneGeometry.metresToBoard(xM[rowsRun]);
    }

    /**
     * Whether the ball stayed on the lane.
     *
     * @return false for a gutter ball
     */
    public boolean reachedPins() {
        return rowsRun == grid.rows() && xM[rowsRun] >= 0 && xM[rowsRun] <= LaneGeometry.WIDTH_M;
    }

    /**
     * Angle at which the ball met the pins.
     *
     * @return angle to the lane's axis (rad), positive away from the delivery side
     */
    public double entryAngleRad() {
        return StrictMath.atan2(vxMps, vyMps);
    }

    /**
     * Speed at the pins.
     *
     * @return speed (m/s)
     */
    public double speedMps() {
        return Math.sqrt(vxMps * vxMps + vyMps * vyMps);
    }

    /**
     * Slip at the pins.
     *
     * @return speed of the contact point over the lane (m/s); 0 once the ball rolls
     */
    public double slipMps() {
        return slipMps;
    }

    /**
     * Time from the foul line to the pins.
     *
     * @return seconds
     */
    public double timeS() {
        return timeS;
    }

    /**
     * Where slipping ended.
     *
     * @return distance from the foul line (m); NaN if the ball still slipped at the pins
     */
    public double rollDistanceM() {
        return rollDistanceM;
    }

    /**
     * When slipping ended.
     *
     * @return time from the foul line (s); NaN if the ball still slipped at the pins
     */
    public double rollTimeS() {
        return rollTimeS;
    }

    /**
     * Takes away what a player wants to know of the last shot.
     *
     * @param patternEndM where the pattern ends (m from the foul line)
     * @return the path
     */
    public BallPath path(double patternEndM) {
        int outermost = 0;
        for (int row = 1; row <= rowsRun; row++) {
            if (xM[row] < xM[outermost]) {
                outermost = row;
            }
        }
        return new BallPath(
                LaneGeometry.metresToBoard(xM[0]),
                LaneGeometry.metresToBoard(positionM(LaneGeometry.ARROWS_M)),
                LaneGeometry.metresToBoard(positionM(patternEndM)),
                LaneGeometry.metresToBoard(xM[outermost]),
                outermost * grid.rowLengthM(),
                arrivalBoard(),
                entryAngleRad(),
                speedMps(),
                timeS,
                reachedPins());
    }

    private void roll(
            Delivery delivery, Hand hand, Contact contact, OilFilm film, double oilOnBallMl, boolean wearing) {
        double kappa = contact.ball().inertiaRatio();
        double share = kappa / (1 + kappa);
        double ux = delivery.vxMps() - delivery.sxMps();
        double uy = delivery.vyMps() - delivery.syMps();
        double slip = Math.sqrt(ux * ux + uy * uy);
        double dirX = slip > 0 ? ux / slip : 0;
        double dirY = slip > 0 ? uy / slip : 0;
        double rollX = delivery.vxMps() - share * ux;
        double rollY = delivery.vyMps() - share * uy;
        if (!(rollY > 0)) {
            throw new IllegalArgumentException("speed of the ball once it rolls is " + rollY
                    + " m/s; it must be above 0, or the ball never reaches the pins");
        }
        double braking = GRAVITY_MPS2 * (1 + 1 / kappa);
        FrictionLaw friction = contact.friction();
        FilmSplit split = contact.split();

        double[] cells = film.cellsUm();
        int rows = grid.rows();
        int lastColumn = grid.columns() - 1;
        int origin = hand == Hand.RIGHT ? 0 : lastColumn * rows;
        int stride = hand == Hand.RIGHT ? rows : -rows;
        double rowM = grid.rowLengthM();
        double rowsPerM = 1 / rowM;

        double overlap = contact.ball().cover().flareOverlap();
        double oneTurnM = 2 * Math.PI * contact.ball().radiusM();
        double restUm = oilOnBallMl / bandM2(oneTurnM, overlap);
        double bandTrackM = MOST_REVOLUTIONS * oneTurnM;
        int turn = 0;
        trackM[0] = 0;
        trackOil[0] = 0;
        double metOil = -oneTurnM * restUm;

        double x = delivery.xM();
        double vx = delivery.vxMps();
        double vy = delivery.vyMps();
        double slope = vx / vy;
        // The ratio used in a row is that at the start of the row before (under 1 % off), again to keep the row's chain
        // short.
        double firstStart = stripStart(x + 0.5 * slope * rowM);
        int firstColumn = (int) firstStart;
        int nextCell = origin + firstColumn * stride;
        double nextInLast = firstStart - firstColumn;
        double nextRatio = speedRatio(vx, vy, ux, uy);
        double time = 0;
        double gainedUm = 0;
        rollDistanceM = slip > 0 ? Double.NaN : 0;
        rollTimeS = slip > 0 ? Double.NaN : 0;
        xM[0] = x;
        int row = 0;
        while (row < rows && x >= 0 && x <= LaneGeometry.WIDTH_M) {
            // Fetch the film of the next row now, where the path extrapolated to second order will cross its middle, to
            // have it at hand when the speed of that row has been worked out.
            int cell = nextCell;
            double inLast = nextInLast;
            double laneUm = stripMeanUm(cells, cell, stride, inLast);
            double inverseVy = 1 / vy;
            double bend = vx * inverseVy - slope;
            slope = vx * inverseVy;
            double start = stripStart(x + (1.5 * slope + 1.125 * bend) * rowM);
            int column = (int) start;
            nextCell = origin + column * stride + row + 1;
            nextInLast = start - column;

            // Oil that the ball brings: what it took up one turn ago, where the track overlaps, and old oil where it is
            // new.
            double ratio = nextRatio;
            nextRatio = speedRatio(vx, vy, slip * dirX, slip * dirY);
            double arcM = ratio * rowM;
            double trackEndM = trackM[row] + arcM;
            double metM = trackEndM - oneTurnM;
            while (trackM[turn + 1] <= metM && turn + 1 < row) {
                turn++;
            }
            double metOilNow = metM <= 0 ? metM * restUm : trackOil[turn] + trackFilmUm[turn] * (metM - trackM[turn]);
            double oldUm = trackEndM <= bandTrackM ? (1 - overlap) * restUm * ratio : 0;
            double broughtUm = overlap * (metOilNow - metOil) * rowsPerM + oldUm;
            metOil = metOilNow;

            double leftUm = split.laneLeftUm(laneUm, broughtUm, ratio);
            double liftedUm = laneUm - leftUm;
            gainedUm += liftedUm;
            trackM[row + 1] = trackEndM;
            trackOil[row + 1] = trackOil[row] + (broughtUm + liftedUm) * rowM;
            trackFilmUm[row] = ratio > 0 ? (broughtUm + liftedUm) / ratio : 0;
            if (wearing) {
                wearStrip(cells, cell, stride, inLast, laneUm, touchedShare * liftedUm);
            }

            double deceleration = braking * friction.coefficient(laneUm + broughtUm);
            double change = share * dirY * deceleration * rowM * inverseVy * inverseVy;
            double rowS = rowM * inverseVy * (1 + 0.5 * change * (1 + change));
            double slipAfter = slip - deceleration * rowS;
            if (slipAfter > 0) {
                double vxAfter = rollX + share * dirX * slipAfter;
                x += 0.5 * (vx + vxAfter) * rowS;
                vx = vxAfter;
                vy = rollY + share * dirY * slipAfter;
                slip = slipAfter;
            } else if (slip > 0) {
                double untilRollS = slip / deceleration;
                double coveredM = 0.5 * (vy + rollY) * untilRollS;
                rowS = untilRollS + (rowM - coveredM) / rollY;
                x += 0.5 * (vx + rollX) * untilRollS + rollX * (rowS - untilRollS);
                rollDistanceM = row * rowM + coveredM;
                rollTimeS = time + untilRollS;
                vx = rollX;
                vy = rollY;
                slip = 0;
            } else {
                rowS = rowM * inverseVy;
                x += rollX * rowS;
            }
            time += rowS;
            row++;
            xM[row] = x;
        }
        rowsRun = row;
        timeS = time;
        slipMps = slip;
        vxMps = vx;
        vyMps = vy;
        gainMl = gainedUm * touchedShare * stripColumns * grid.mlPerUm();
    }

    /** Column in which a strip starts that is centred at a position, with its fraction; strips stay on the lane. */
    private double stripStart(double centreM) {
        double start = centreM * columnsPerM - 0.5 * stripColumns;
        return Math.max(0, Math.min(mostStart, start));
    }

    /** Mean film under a strip that covers its first column in part, its last by {@code inLast}, and those between. */
    private double stripMeanUm(double[] cells, int firstCell, int stride, double inLast) {
        double sumUm = (1 - inLast) * cells[firstCell] + inLast * cells[firstCell + stripColumns * stride];
        for (int k = 1; k < stripColumns; k++) {
            sumUm += cells[firstCell + k * stride];
        }
        return sumUm * stripShare;
    }

    /** Speed of the ball's surface, v - u, over speed of the ball. */
    private static double speedRatio(double vx, double vy, double ux, double uy) {
        double sx = vx - ux;
        double sy = vy - uy;
        return Math.sqrt((sx * sx + sy * sy) / (vx * vx + vy * vy));
    }

    /** Area of all the strips that the track can run over: old oil lies spread on it. */
    private static double bandM2(double oneTurnM, double overlap) {
        return oneTurnM * CONTACT_M * (1 + (1 - overlap) * (MOST_REVOLUTIONS - 1));
    }

    /** Takes the oil off the columns under the strip in proportion to what they hold, or lays it down evenly. */
    private void wearStrip(double[] cells, int firstCell, int stride, double inLast, double laneUm, double liftedUm) {
        double keep = liftedUm > 0 ? -liftedUm / laneUm : 0;
        double lay = liftedUm > 0 ? 0 : -liftedUm;
        cells[firstCell] += (1 - inLast) * (cells[firstCell] * keep + lay);
        int lastCell = firstCell + stripColumns * stride;
        cells[lastCell] += inLast * (cells[lastCell] * keep + lay);
        for (int k = 1; k < stripColumns; k++) {
            int cell = firstCell + k * stride;
            cells[cell] += cells[cell] * keep + lay;
        }
    }
}
