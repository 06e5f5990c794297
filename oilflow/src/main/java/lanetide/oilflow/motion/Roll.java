package lanetide.oilflow.motion;

import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.RowSlopes;

/**
 * One ball on its way, row after row of the film's grid. It is used again for the next ball, and allocates nothing per
 * shot.
 *
 * <p>With u the slip and w the velocity at which the ball will roll, v = w + kappa/(1+kappa) u. On a level lane w stays
 * as it is and u keeps its direction. On another, gravity pulls the ball's centre down the slope by b and does not
 * touch its spin, so that dw/dt = b/(1+kappa) always, and du/dt = b - mu g (1+1/kappa) u/|u| while the ball slides: a
 * uniform sphere feels all of the pull while it slides and 5/7 of it once it rolls. Textbook mechanics of a sphere on
 * an incline; the pressure on the lane is taken as on a level one, which the rules' slopes change by a
 * hundred-thousandth.
 */
final class Roll {
    private static final double GRAVITY_MPS2 = 9.80665;

    /** Where the ball was at each row's start (m from the lane edge on the delivery side). */
    final double[] atM;

    int rowsRun;
    double timeS;
    double slipMps;
    double vxMps;
    double vyMps;
    /** Where and when slipping ended; of no meaning while there is slip. */
    double rollDistanceM;

    double rollTimeS;

    private final int rows;
    private final double rowM;
    private final ContactStrip strip;
    private final BallTrack track;

    private FrictionLaw friction;
    private FilmSplit split;
    private RowSlopes slopes;
    private boolean level;
    private boolean wearing;
    private boolean fromLeft;
    private double xM;
    private double slope;
    private double nextRatio;
    private double gainedUm;
    /** Velocity at which the ball will roll (m/s). */
    private double rollXMps;

    private double rollYMps;
    /** Direction of the slip. */
    private double dirX;

    private double dirY;
    /** What a metre per second of slip adds to the velocity. */
    private double addX;

    private double addY;
    /** Share of the slip in the velocity, kappa/(1+kappa). */
    private double share;
    /** What friction of one takes off the slip (m/s^2). */
    private double brakingMps2;

    Roll(LaneGrid grid) {
        rows = grid.rows();
        rowM = grid.rowLengthM();
        atM = new double[rows + 1];
        strip = new ContactStrip(grid);
        track = new BallTrack(rows, rowM);
    }

    /** Puts a ball on the foul line. */
    void begin(Delivery delivery, Hand hand, Contact contact, OilFilm film, double oilOnBallMl, boolean wears) {
        friction = contact.friction();
        split = contact.split();
        slopes = film.slopes();
        level = film.topography().isFlat();
        fromLeft = hand == Hand.LEFT;
        wearing = wears;
        launch(delivery, contact.ball().inertiaRatio());
        strip.begin(film, hand, xM + 0.5 * slope * rowM);
        track.begin(contact.ball(), oilOnBallMl);
        gainedUm = 0;
        timeS = 0;
        rollDistanceM = 0;
        rollTimeS = 0;
        rowsRun = 0;
        atM[0] = xM;
    }

    private void launch(Delivery delivery, double kappa) {
        share = kappa / (1 + kappa);
        brakingMps2 = GRAVITY_MPS2 * (1 + 1 / kappa);
        double uxMps = delivery.vxMps() - delivery.sxMps();
        double uyMps = delivery.vyMps() - delivery.syMps();
        rollXMps = delivery.vxMps() - share * uxMps;
        rollYMps = rollSpeed(delivery.vyMps() - share * uyMps);
        slipMps = Math.sqrt(uxMps * uxMps + uyMps * uyMps);
        slipAlong(slipMps > 0 ? uxMps / slipMps : 0, slipMps > 0 ? uyMps / slipMps : 0);
        xM = delivery.xM();
        vxMps = delivery.vxMps();
        vyMps = delivery.vyMps();
        slope = vxMps / vyMps;
        nextRatio = speedRatio(vxMps, vyMps, slipMps * dirX, slipMps * dirY);
    }

    /** Speed toward the pins once the ball rolls, which must bring it there. */
    private static double rollSpeed(double rollYMps) {
        if (!(rollYMps > 0)) {
            throw new IllegalArgumentException("speed of the ball once it rolls is " + rollYMps
                    + " m/s; it must be above 0, or the ball never reaches the pins");
        }
        return rollYMps;
    }

    private void slipAlong(double directionX, double directionY) {
        dirX = directionX;
        dirY = directionY;
        addX = share * directionX;
        addY = share * directionY;
    }

    /** Speed of the ball's surface, v - u, over speed of the ball. */
    private static double speedRatio(double vxMps, double vyMps, double uxMps, double uyMps) {
        double sxMps = vxMps - uxMps;
        double syMps = vyMps - uyMps;
        return Math.sqrt((sxMps * sxMps + syMps * syMps) / (vxMps * vxMps + vyMps * vyMps));
    }

    /** Rolls on to the pins or a gutter. */
    void run() {
        while (isUnderWay()) {
            step();
        }
    }

    /** Whether there is a row to roll over. */
    boolean isUnderWay() {
        return rowsRun < rows && isOnLane();
    }

    boolean isOnLane() {
        return xM >= 0 && xM <= LaneGeometry.WIDTH_M;
    }

    double speedMps() {
        return Math.sqrt(vxMps * vxMps + vyMps * vyMps);
    }

    /** Oil that the ball gained (mL); below 0 if it laid down more than it took. */
    double gainMl() {
        return gainedUm * BallSpec.CONTACT_M * rowM;
    }

    /** Rolls over the next row. */
    void step() {
        double inverseVySPerM = 1 / vyMps;
        double decelerationMps2 = brakingMps2 * friction.coefficient(contactUm(inverseVySPerM));
        if (!level) {
            slideOnSlope(decelerationMps2, inverseVySPerM);
        } else if (slipMps > 0) {
            slide(decelerationMps2, inverseVySPerM);
        } else {
            double rowS = rowM * inverseVySPerM;
            xM += rollXMps * rowS;
            timeS += rowS;
        }
        rowsRun++;
        atM[rowsRun] = xM;
    }

    /** Oil in the contact in this row (um), of which some changes sides. */
    private double contactUm(double inverseVySPerM) {
        // Two things are fetched ahead, so that a row need not wait for them: the film of the next row, where the path
        // extrapolated to second order crosses its middle; and the ratio of speeds, taken a row late (under 1 % off).
        double before = slope;
        slope = vxMps * inverseVySPerM;
        strip.advance(xM + (1.5 * slope + 1.125 * (slope - before)) * rowM, rowsRun + 1);
        double ratio = nextRatio;
        nextRatio = speedRatio(vxMps, vyMps, slipMps * dirX, slipMps * dirY);

        double laneUm = strip.meanUm();
        double broughtUm = track.broughtUm(rowsRun, ratio);
        double liftedUm = laneUm - split.laneLeftUm(laneUm, broughtUm, ratio);
        track.carriedAway(rowsRun, broughtUm + liftedUm, ratio);
        gainedUm += liftedUm;
        if (wearing) {
            strip.wear(laneUm, liftedUm);
        }
        return laneUm + broughtUm;
    }

    /** A level row: only the size of the slip changes. */
    private void slide(double decelerationMps2, double inverseVySPerM) {
        double rowS = rowS(addY * decelerationMps2, inverseVySPerM);
        double slipAfterMps = slipMps - decelerationMps2 * rowS;
        if (slipAfterMps > 0) {
            double vxAfterMps = rollXMps + addX * slipAfterMps;
            xM += 0.5 * (vxMps + vxAfterMps) * rowS;
            vxMps = vxAfterMps;
            vyMps = rollYMps + addY * slipAfterMps;
            slipMps = slipAfterMps;
        } else {
            double untilRollS = slipMps / decelerationMps2;
            double coveredM = 0.5 * (vyMps + rollYMps) * untilRollS;
            rowS = untilRollS + (rowM - coveredM) / rollYMps;
            xM += 0.5 * (vxMps + rollXMps) * untilRollS + rollXMps * (rowS - untilRollS);
            beginRolling(coveredM, untilRollS);
        }
        timeS += rowS;
    }

    /** Time over a row at a steady slowing (m/s^2), to third order. */
    private double rowS(double slowingMps2, double inverseVySPerM) {
        double change = slowingMps2 * rowM * inverseVySPerM * inverseVySPerM;
        return rowM * inverseVySPerM * (1 + 0.5 * change * (1 + change));
    }

    private void beginRolling(double coveredM, double untilRollS) {
        rollDistanceM = rowsRun * rowM + coveredM;
        rollTimeS = timeS + untilRollS;
        vxMps = rollXMps;
        vyMps = rollYMps;
        slipMps = 0;
    }

    /** A row that rises: the pull is that of its middle. */
    private void slideOnSlope(double decelerationMps2, double inverseVySPerM) {
        double middleXM = xM + 0.5 * slope * rowM;
        double fromRightM = fromLeft ? LaneGeometry.WIDTH_M - middleXM : middleXM;
        double riseAcross = slopes.across(rowsRun, fromRightM);
        double pullXMps2 = GRAVITY_MPS2 * (fromLeft ? riseAcross : -riseAcross);
        double pullYMps2 = -GRAVITY_MPS2 * slopes.along(rowsRun, fromRightM);
        if (slipMps == 0) {
            rollOverSlope(pullXMps2, pullYMps2, inverseVySPerM);
            return;
        }
        double slowingMps2 = decelerationMps2 - pullXMps2 * dirX - pullYMps2 * dirY;
        double slideS = rowS(addY * decelerationMps2 - pullYMps2, inverseVySPerM);
        if (slipMps > slideS * slowingMps2) {
            // What pulls across the slip makes it longer by less than a billionth.
            double halfMps = slipMps - 0.5 * slideS * slowingMps2;
            xM += slipOnSlope(decelerationMps2, decelerationMps2 / halfMps, pullXMps2, pullYMps2, slideS);
            timeS += slideS;
        } else {
            rollOnSlope(pullXMps2, pullYMps2, slipMps / slowingMps2);
        }
    }

    /** A row that rises under a ball that rolls. */
    private void rollOverSlope(double pullXMps2, double pullYMps2, double inverseVySPerM) {
        double rowS = rowS((share - 1) * pullYMps2, inverseVySPerM);
        double rollXBeforeMps = rollXMps;
        pullRoll(pullXMps2, pullYMps2, rowS);
        xM += 0.5 * (rollXBeforeMps + rollXMps) * rowS;
        vxMps = rollXMps;
        vyMps = rollYMps;
        timeS += rowS;
    }

    /**
     * Slides for a time and returns the way across (m). The slip turns by what it is pulled at the middle of that time.
     */
    private double slipOnSlope(
            double decelerationMps2, double brakingPerS, double pullXMps2, double pullYMps2, double slideS) {
        double halfXMps = slipMps * dirX + 0.5 * slideS * (pullXMps2 - decelerationMps2 * dirX);
        double halfYMps = slipMps * dirY + 0.5 * slideS * (pullYMps2 - decelerationMps2 * dirY);
        double uxMps = slipMps * dirX + slideS * (pullXMps2 - brakingPerS * halfXMps);
        double uyMps = slipMps * dirY + slideS * (pullYMps2 - brakingPerS * halfYMps);
        double vxBeforeMps = vxMps;
        pullRoll(pullXMps2, pullYMps2, slideS);
        slipMps = Math.sqrt(uxMps * uxMps + uyMps * uyMps);
        double inverseSPerM = 1 / slipMps;
        slipAlong(uxMps * inverseSPerM, uyMps * inverseSPerM);
        vxMps = rollXMps + share * uxMps;
        vyMps = rollYMps + share * uyMps;
        return 0.5 * (vxBeforeMps + vxMps) * slideS;
    }

    /** Slides for the rest of the slip, then rolls to the row's end. */
    private void rollOnSlope(double pullXMps2, double pullYMps2, double untilRollS) {
        double vxBeforeMps = vxMps;
        double vyBeforeMps = vyMps;
        pullRoll(pullXMps2, pullYMps2, untilRollS);
        double coveredM = 0.5 * (vyBeforeMps + rollYMps) * untilRollS;
        xM += 0.5 * (vxBeforeMps + rollXMps) * untilRollS;
        beginRolling(coveredM, untilRollS);
        double leftM = rowM - coveredM;
        double change = (share - 1) * pullYMps2 * leftM / (rollYMps * rollYMps);
        double restS = leftM / rollYMps * (1 + 0.5 * change * (1 + change));
        double rollXBeforeMps = rollXMps;
        pullRoll(pullXMps2, pullYMps2, restS);
        xM += 0.5 * (rollXBeforeMps + rollXMps) * restS;
        vxMps = rollXMps;
        vyMps = rollYMps;
        timeS += untilRollS + restS;
    }

    private void pullRoll(double pullXMps2, double pullYMps2, double forS) {
        rollXMps += (1 - share) * pullXMps2 * forS;
        rollYMps += (1 - share) * pullYMps2 * forS;
    }
}
