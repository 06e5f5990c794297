package lanetide.oilflow.pocket;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * What the pins do, given where and at which angle a ball meets them. It draws nothing itself: callers hand in a uniform
 * number, so that the luck of the pins has a stream of its own.
 *
 * <p><b>Held to published aggregates:</b> the best place is board 17.5 at 4 to 6 degrees (USBC research as reported by
 * Ridenour; Hooper, Physics Today 78(10), 2025); professionals carried 74 % of pocket hits (40 of 54, Thomas); the 3-10 split
 * was made 17 times in 35, the 7-10 never in 53 (ESPN study of televised finals, 2005-06 to 2009-10). <b>Guesses:</b> the
 * fall of the chance away from that place, the leaves by zone, and the chance that one pin takes out another.
 */
public final class PinCarry {
    /** Board at which the ball's centre meets the pins for the best hit. */
    public static final double POCKET_BOARD = 17.5;

    /** Half width of the pocket (boards): what counts as a pocket hit (assumption). */
    public static final double POCKET_HALF_WIDTH_BOARDS = 1.25;

    private static final double BALL_RADIUS_M = 0.1085;
    private static final double REACH_BOARDS = (BALL_RADIUS_M + Rack.PIN_RADIUS_M) / LaneGeometry.BOARD_M;
    private static final double BEST_STRIKE_CHANCE = 0.88;
    private static final double FALL_BOARDS = 2.0;
    private static final double FALL_POWER = 2.5;
    private static final double FLATTEST_BEST_DEG = 4;
    private static final double STEEPEST_BEST_DEG = 6;
    private static final double FLAT_LOSS_PER_DEG2 = 0.025;
    private static final double STEEP_LOSS_PER_DEG2 = 0.02;
    /** Chance on the far side, where the ball comes with the wrong angle, relative to the pocket's. */
    private static final double FAR_SIDE_SHARE = 0.5;
    /** Chance that a struck pin takes out a neighbour 12 in away behind it. */
    private static final double NEIGHBOUR_CHANCE = 0.8;
    /** The same for the next but one, as in the 3-10: published 17 of 35. */
    private static final double GAP_CHANCE = 0.5;
    /** The same for pins further apart or side by side: published 0 of 53 for the 7-10. */
    private static final double WIDE_CHANCE = 0.02;

    private final Leaves leaves = new Leaves();
    private final SpareTarget[] targets = new SpareTarget[Rack.FULL + 1];

    /** Works out the best place to hit every set of pins. */
    public PinCarry() {
        for (int pins = 1; pins <= Rack.FULL; pins++) {
            targets[pins] = bestTarget(pins);
        }
    }

    /**
     * Chance of a strike.
     *
     * @param arrivalBoard where the ball's centre meets the pins, from the gutter on the delivery side
     * @param entryRad entry angle (rad), positive away from the delivery side
     * @return probability, 0 to 1; 0 where the ball misses the head pin
     */
    public double strikeChance(double arrivalBoard, double entryRad) {
        double offCentre = arrivalBoard - LaneGeometry.CENTRE_BOARD;
        if (!(Math.abs(offCentre) < REACH_BOARDS)) {
            return 0;
        }
        double nearSide = LaneGeometry.CENTRE_BOARD - Math.abs(offCentre);
        double miss = Math.abs(nearSide - POCKET_BOARD) / FALL_BOARDS;
        double place = StrictMath.exp(-StrictMath.pow(miss, FALL_POWER));
        double side = offCentre <= 0 ? angleShare(entryRad) : FAR_SIDE_SHARE;
        return BEST_STRIKE_CHANCE * place * side;
    }

    /**
     * Whether a ball is a pocket hit.
     *
     * @param arrivalBoard where the ball's centre meets the pins
     * @return whether it is within the pocket's half width of board 17.5
     */
    public static boolean isPocket(double arrivalBoard) {
        return Math.abs(arrivalBoard - POCKET_BOARD) <= POCKET_HALF_WIDTH_BOARDS;
    }

    /**
     * What a ball at a full rack leaves.
     *
     * @param arrivalBoard where the ball's centre meets the pins
     * @param entryRad entry angle (rad)
     * @param u uniform number in [0, 1)
     * @return pins left standing; 0 for a strike
     */
    public int leaveOfFirstBall(double arrivalBoard, double entryRad, double u) {
        double offCentre = arrivalBoard - LaneGeometry.CENTRE_BOARD;
        if (!(Math.abs(offCentre) < REACH_BOARDS)) {
            return leaveOfSpareBall(Rack.FULL, arrivalBoard, entryRad, u);
        }
        double strike = strikeChance(arrivalBoard, entryRad);
        if (u < strike) {
            return 0;
        }
        double rest = (u - strike) / (1 - strike);
        double nearSide = LaneGeometry.CENTRE_BOARD - Math.abs(offCentre);
        int leave = leaves.draw(Math.max(13.75, Math.min(nearSide, Math.nextDown(20.0))), rest);
        return offCentre <= 0 ? leave : Rack.mirrored(leave);
    }

    /**
     * What a ball leaves of the pins that stand. Pins whose centre the ball's path comes within reach of fall; each of the
     * others falls with a chance set by the nearest fallen pin in front of it.
     *
     * @param standing pins that stand, at least one
     * @param arrivalBoard where the ball's centre crosses the head pin's row
     * @param entryRad entry angle (rad)
     * @param u uniform number in [0, 1)
     * @return pins left standing
     */
    public int leaveOfSpareBall(int standing, double arrivalBoard, double entryRad, double u) {
        int struck = struck(standing, arrivalBoard, StrictMath.tan(entryRad));
        int left = standing & ~struck;
        double luck = u;
        for (int pin = 1; pin <= 10; pin++) {
            if (Rack.has(left, pin)) {
                double chance = chainChance(struck, pin);
                if (luck < chance) {
                    left &= ~Rack.bit(pin);
                    luck = luck / chance;
                } else {
                    luck = (luck - chance) / (1 - chance);
                }
            }
        }
        return left;
    }

    /**
     * Where to aim at a set of pins.
     *
     * @param standing pins that stand, at least one
     * @return the middle of the widest place that strikes the most pins, the front one among them
     */
    public SpareTarget target(int standing) {
        return targets[standing];
    }

    /** Share of the best strike chance that an entry angle gives. */
    private static double angleShare(double entryRad) {
        double entryDeg = StrictMath.toDegrees(entryRad);
        double flat = Math.max(0, FLATTEST_BEST_DEG - entryDeg);
        double steep = Math.max(0, entryDeg - STEEPEST_BEST_DEG);
        return Math.max(0, 1 - FLAT_LOSS_PER_DEG2 * flat * flat - STEEP_LOSS_PER_DEG2 * steep * steep);
    }

    private static int struck(int standing, double arrivalBoard, double slope) {
        int struck = 0;
        for (int pin = 1; pin <= 10; pin++) {
            double atPin = arrivalBoard + slope * Rack.depthM(pin) / LaneGeometry.BOARD_M;
            boolean onLane = atPin >= 0.5 && atPin <= LaneGeometry.BOARDS + 0.5;
            if (Rack.has(standing, pin) && onLane && Math.abs(atPin - Rack.board(pin)) < REACH_BOARDS) {
                struck |= Rack.bit(pin);
            }
        }
        return struck;
    }

    private static double chainChance(int struck, int pin) {
        double best = 0;
        for (int front = 1; front <= 10; front++) {
            if (Rack.has(struck, front)) {
                double apart = Rack.distanceM(front, pin) / 0.3048;
                boolean behind = Rack.depthM(pin) > Rack.depthM(front);
                double chance = !behind || apart > 2.1 ? WIDE_CHANCE : apart < 1.1 ? NEIGHBOUR_CHANCE : GAP_CHANCE;
                best = Math.max(best, chance);
            }
        }
        return best;
    }

    private static SpareTarget bestTarget(int pins) {
        int front = Integer.numberOfTrailingZeros(pins) + 1;
        int most = 0;
        double from = 0;
        double to = 0;
        for (double board = 1; board <= LaneGeometry.BOARDS; board += 0.25) {
            int struck = struck(pins, board, 0);
            int count = Rack.has(struck, front) ? Integer.bitCount(struck) : 0;
            if (count > most) {
                most = count;
                from = board;
                to = board;
            } else if (count == most && board <= to + 0.25) {
                to = board;
            }
        }
        return new SpareTarget((from + to) / 2, Rack.depthM(front));
    }
}
