package lanetide.oilflow.pocket;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * Which pins a ball takes out on its way, and which pins those take out. Constants whose names begin with FITTED are
 * held to published aggregates, those that begin with GUESS are guesses: see {@link PinCarry}.
 */
final class PinChain {
    private static final double BALL_RADIUS_M = 0.1085;

    /** How far a ball's centre may pass from a pin's and still touch it (boards). */
    static final double REACH_BOARDS = (BALL_RADIUS_M + Rack.PIN_RADIUS_M) / LaneGeometry.BOARD_M;

    /** Chance that a struck pin takes out a neighbour 12 in away behind it. */
    private static final double GUESS_NEIGHBOUR_CHANCE = 0.8;
    /** The same for the next but one, as in the 3-10: published 17 of 35. */
    private static final double FITTED_GAP_CHANCE = 0.5;
    /** The same for pins further apart or side by side: published 0 of 53 for the 7-10. */
    private static final double FITTED_WIDE_CHANCE = 0.02;

    /** Chance by the struck pin, then by the one that it may take out; pins count from 1. */
    private static final double[][] CHANCE = new double[11][11];

    static {
        for (int front = 1; front <= 10; front++) {
            for (int pin = 1; pin <= 10; pin++) {
                CHANCE[front][pin] = chance(front, pin);
            }
        }
    }

    private PinChain() {}

    /** Pins left standing of a set by a ball that comes in on a slope (across over along), given a uniform number. */
    static int left(int standing, double arrivalBoard, double slope, double u) {
        int struck = struck(standing, arrivalBoard, slope);
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
                best = Math.max(best, CHANCE[front][pin]);
            }
        }
        return best;
    }

    private static double chance(int front, int pin) {
        double apart = Rack.distanceM(front, pin) / 0.3048;
        boolean behind = Rack.depthM(pin) > Rack.depthM(front);
        if (!behind || apart > 2.1) {
            return FITTED_WIDE_CHANCE;
        }
        return apart < 1.1 ? GUESS_NEIGHBOUR_CHANCE : FITTED_GAP_CHANCE;
    }

    /** The middle of the widest place that strikes the most pins of a set, the front one among them. */
    static SpareTarget bestTarget(int pins) {
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
