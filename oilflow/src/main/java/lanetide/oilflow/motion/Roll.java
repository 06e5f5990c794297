package lanetide.oilflow.motion;

import lanetide.oilflow.film.FilmSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.friction.FrictionLaw;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.lane.Topography;

/**
 * One ball on its way, row after row of the film's grid. It is used again for the next ball, and allocates nothing per shot.
 *
 * <p>With u the slip and w the velocity at which the ball will roll, v = w + kappa/(1+kappa) u. On a level lane w stays as it is
 * and u keeps its direction. On another, gravity pulls the ball's centre down the slope by b and does not touch its spin, so that
 * dw/dt = b/(1+kappa) always, and du/dt = b - mu g (1+1/kappa) u/|u| while the ball slides: a uniform sphere feels all of the
 * pull while it slides and 5/7 of it once it rolls. Textbook mechanics of a sphere on an incline; the pressure on the lane is
 * taken as on a level one, which the rules' slopes change by a hundred-thousandth.
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
    double rollDistanceM;
    double rollTimeS;

    private final int rows;
    private final double rowM;
    private final ContactStrip strip;
    private final BallTrack track;

    private FrictionLaw friction;
    private FilmSplit split;
    private Topography topography;
    private boolean level;
    private boolean wearing;
    private boolean fromLeft;
    private double x;
    private double slope;
    private double nextRatio;
    private double gainedUm;
    /** Velocity at which the ball will roll. */
    private double rollX;

    private double rollY;
    /** Direction of the slip. */
    private double dirX;

    private double dirY;
    /** What a metre per second of slip adds to the velocity. */
    private double addX;

    private double addY;
    private double share;
    /** What friction of one takes off the slip (m/s^2). */
    private double braking;

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
        topography = film.topography();
        level = topography.isFlat();
        fromLeft = hand == Hand.LEFT;
        wearing = wears;
        launch(delivery, contact.ball().inertiaRatio());
        strip.begin(film, hand, x + 0.5 * slope * rowM);
        track.begin(contact.ball(), oilOnBallMl, ContactStrip.WIDTH_M);
        gainedUm = 0;
        timeS = 0;
        rollDistanceM = slipMps > 0 ? Double.NaN : 0;
        rollTimeS = rollDistanceM;
        rowsRun = 0;
        atM[0] = x;
    }

    private void launch(Delivery delivery, double kappa) {
        share = kappa / (1 + kappa);
        braking = GRAVITY_MPS2 * (1 + 1 / kappa);
        double ux = delivery.vxMps() - delivery.sxMps();
        double uy = delivery.vyMps() - delivery.syMps();
        rollX = delivery.vxMps() - share * ux;
        rollY = rollSpeed(delivery.vyMps() - share * uy);
        slipMps = Math.sqrt(ux * ux + uy * uy);
        slipAlong(slipMps > 0 ? ux / slipMps : 0, slipMps > 0 ? uy / slipMps : 0);
        x = delivery.xM();
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
    private static double speedRatio(double vx, double vy, double ux, double uy) {
        double sx = vx - ux;
        double sy = vy - uy;
        return Math.sqrt((sx * sx + sy * sy) / (vx * vx + vy * vy));
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
        return x >= 0 && x <= LaneGeometry.WIDTH_M;
    }

    double speedMps() {
        return Math.sqrt(vxMps * vxMps + vyMps * vyMps);
    }

    /** Oil that the ball gained (mL); below 0 if it laid down more than it took. */
    double gainMl() {
        return gainedUm * ContactStrip.WIDTH_M * rowM;
    }

    /** Rolls over the next row. */
    void step() {
        double inverseVy = 1 / vyMps;
        double deceleration = braking * friction.coefficient(contactUm(inverseVy));
        if (!level) {
            slideOnSlope(deceleration, inverseVy);
        } else if (slipMps > 0) {
            slide(deceleration, inverseVy);
        } else {
            double rowS = rowM * inverseVy;
            x += rollX * rowS;
            timeS += rowS;
        }
        rowsRun++;
        atM[rowsRun] = x;
    }

    /** Oil in the contact in this row (um), of which some changes sides. */
    private double contactUm(double inverseVy) {
        // Two things are fetched ahead, so that a row need not wait for them: the film of the next row, where the path
        // extrapolated to second order crosses its middle; and the ratio of speeds, taken a row late (under 1 % off).
        double before = slope;
        slope = vxMps * inverseVy;
        strip.advance(x + (1.5 * slope + 1.125 * (slope - before)) * rowM, rowsRun + 1);
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
    private void slide(double deceleration, double inverseVy) {
        double rowS = rowS(addY * deceleration, inverseVy);
        double slipAfter = slipMps - deceleration * rowS;
        if (slipAfter > 0) {
            double vxAfter = rollX + addX * slipAfter;
            x += 0.5 * (vxMps + vxAfter) * rowS;
            vxMps = vxAfter;
            vyMps = rollY + addY * slipAfter;
            slipMps = slipAfter;
        } else {
            double untilRollS = slipMps / deceleration;
            double coveredM = 0.5 * (vyMps + rollY) * untilRollS;
            rowS = untilRollS + (rowM - coveredM) / rollY;
            x += 0.5 * (vxMps + rollX) * untilRollS + rollX * (rowS - untilRollS);
            beginRolling(coveredM, untilRollS);
        }
        timeS += rowS;
    }

    /** Time over a row at a steady slowing (m/s^2), to third order. */
    private double rowS(double slowing, double inverseVy) {
        double change = slowing * rowM * inverseVy * inverseVy;
        return rowM * inverseVy * (1 + 0.5 * change * (1 + change));
    }

    private void beginRolling(double coveredM, double untilRollS) {
        rollDistanceM = rowsRun * rowM + coveredM;
        rollTimeS = timeS + untilRollS;
        vxMps = rollX;
        vyMps = rollY;
        slipMps = 0;
    }

    /** A row that rises: the pull is that of its middle. */
    private void slideOnSlope(double deceleration, double inverseVy) {
        double middleX = x + 0.5 * slope * rowM;
        double alongM = (rowsRun + 0.5) * rowM;
        double fromRightM = fromLeft ? LaneGeometry.WIDTH_M - middleX : middleX;
        double riseAcross = topography.riseAcross(fromRightM, alongM);
        double pullX = GRAVITY_MPS2 * (fromLeft ? riseAcross : -riseAcross);
        double pullY = -GRAVITY_MPS2 * topography.riseAlong(fromRightM, alongM);
        double untilRollS = slipMps > 0 ? slipMps / (deceleration - pullX * dirX - pullY * dirY) : 0;
        double slideS = rowS(addY * deceleration - pullY, inverseVy);
        if (slipMps > 0 && !(untilRollS <= slideS && untilRollS > 0)) {
            x += slipOnSlope(deceleration, pullX, pullY, slideS);
            timeS += slideS;
        } else {
            rollOnSlope(pullX, pullY, untilRollS);
        }
    }

    /** Slides for a time; answers the way across. The slip turns by what it is pulled at the middle of that time. */
    private double slipOnSlope(double deceleration, double pullX, double pullY, double slideS) {
        double halfX = slipMps * dirX + 0.5 * slideS * (pullX - deceleration * dirX);
        double halfY = slipMps * dirY + 0.5 * slideS * (pullY - deceleration * dirY);
        double half = Math.sqrt(halfX * halfX + halfY * halfY);
        double ux = slipMps * dirX + slideS * (pullX - deceleration * halfX / half);
        double uy = slipMps * dirY + slideS * (pullY - deceleration * halfY / half);
        double vxBefore = vxMps;
        pullRoll(pullX, pullY, slideS);
        slipMps = Math.sqrt(ux * ux + uy * uy);
        slipAlong(ux / slipMps, uy / slipMps);
        vxMps = rollX + share * ux;
        vyMps = rollY + share * uy;
        return 0.5 * (vxBefore + vxMps) * slideS;
    }

    /** Slides for the rest of the slip, then rolls to the row's end. */
    private void rollOnSlope(double pullX, double pullY, double untilRollS) {
        double vxBefore = vxMps;
        double vyBefore = vyMps;
        pullRoll(pullX, pullY, untilRollS);
        double coveredM = 0.5 * (vyBefore + rollY) * untilRollS;
        x += 0.5 * (vxBefore + rollX) * untilRollS;
        if (untilRollS > 0) {
            beginRolling(coveredM, untilRollS);
        }
        double leftM = rowM - coveredM;
        double change = (share - 1) * pullY * leftM / (rollY * rollY);
        double restS = leftM / rollY * (1 + 0.5 * change * (1 + change));
        double rollXBefore = rollX;
        pullRoll(pullX, pullY, restS);
        x += 0.5 * (rollXBefore + rollX) * restS;
        vxMps = rollX;
        vyMps = rollY;
        timeS += untilRollS + restS;
    }

    private void pullRoll(double pullX, double pullY, double forS) {
        rollX += (1 - share) * pullX * forS;
        rollY += (1 - share) * pullY * forS;
    }
}
