package lanetide.oilflow.pocket;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.BallCore;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * What the pins do, given where, at which angle and how fast a ball of some mass meets them. It draws nothing itself:
 * callers hand in a uniform number, so that the luck of the pins has a stream of its own.
 *
 * <p>Constants whose names begin with FITTED are held to published aggregates: the best place is board 17.5 at 4 to 6
 * degrees (USBC research as reported by Ridenour; Hooper, Physics Today 78(10), 2025); professionals carried 74 % of
 * pocket hits (40 of 54, Thomas); the 3-10 split was made 17 times in 35, the 7-10 never in 53 (ESPN study of televised
 * finals, 2005-06 to 2009-10). Those that begin with GUESS are guesses: the fall of the chance away from that place,
 * what speed and deflection do, and the chance that one pin takes out another ({@link PinChain}); so are the leaves by
 * zone. How far a ball is deflected is mechanics ({@link Deflection}); that position at the back row and little
 * deflection widen the pocket, speed and angle less, is published (Hooper, International Journal of Sports Science and
 * Coaching, 2024). A ball of 15 lb at the speeds that professionals bring to the pins keeps the fitted chances.
 */
public final class PinCarry {
    /** Board at which the ball's centre meets the pins for the best hit. */
    public static final double POCKET_BOARD = 17.5;

    /** Half width of the pocket (boards): what counts as a pocket hit (assumption). */
    public static final double POCKET_HALF_WIDTH_BOARDS = 1.25;

    /** Chance of a strike for the best hit (fitted to what professionals carried). */
    public static final double FITTED_BEST_CHANCE = 0.88;
    /** How fast the chance falls away from the best place (boards, a guess). */
    public static final double GUESS_FALL_BOARDS = 1.5;
    /**
     * Speeds at the pins (m/s) within which speed does nothing: 13 to 20 mph. Balls thrown at 18 to 21 mph come in at
     * 16 to 18 (Bowling This Month and two coaching pages), so that the fitted chances hold for those they were fitted
     * to.
     */
    private static final double GUESS_SLOWEST_MPS = 13 * 0.44704;

    private static final double GUESS_FASTEST_MPS = 20 * 0.44704;
    /** Share of the strikes lost outside, for each metre a second squared: one in a hundred for a mile an hour. */
    private static final double GUESS_SPEED_LOSS = 0.05;
    /** Share of the strikes lost for each board that a ball is deflected further than one of 15 lb. */
    private static final double GUESS_DEFLECTION_LOSS = 0.04;
    /** Most boards of further and of less deflection that count. */
    private static final double GUESS_MAX_FURTHER_BOARDS = 4;

    private static final double GUESS_MAX_LESS_BOARDS = 1;
    private static final double FITTED_FLATTEST_DEG = 4;
    private static final double FITTED_STEEPEST_DEG = 6;
    private static final double GUESS_FLAT_LOSS_PER_DEG2 = 0.025;
    private static final double GUESS_STEEP_LOSS_PER_DEG2 = 0.02;
    /** Chance on the far side, where the ball comes with the wrong angle, relative to the pocket's. */
    private static final double GUESS_FAR_SIDE_SHARE = 0.3;

    private final double bestChance;
    private final double fallBoards;
    private final Leaves leaves;
    private final SpareTarget[] targets;

    /** Pins as usual; works out the best place to hit every set of them. */
    public PinCarry() {
        this(FITTED_BEST_CHANCE, GUESS_FALL_BOARDS, new Leaves(), bestTargets());
    }

    private PinCarry(double bestChance, double fallBoards, Leaves leaves, SpareTarget[] targets) {
        this.bestChance = Require.inRange(bestChance, "best chance of a strike", 0, 1);
        this.fallBoards = Require.positive(fallBoards, "fall of the chance of a strike (boards)");
        this.leaves = leaves;
        this.targets = targets;
    }

    /**
     * The same pins with other strikes.
     *
     * @param otherBestChance chance of a strike for the best hit, 0 to 1
     * @param otherFallBoards how fast the chance falls away from the best place (boards), above 0
     * @return the pins
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public PinCarry striking(double otherBestChance, double otherFallBoards) {
        return new PinCarry(otherBestChance, otherFallBoards, leaves, targets);
    }

    private static SpareTarget[] bestTargets() {
        SpareTarget[] targets = new SpareTarget[Rack.FULL + 1];
        for (int pins = 1; pins <= Rack.FULL; pins++) {
            targets[pins] = PinChain.bestTarget(pins);
        }
        return targets;
    }

    /**
     * Chance of a strike.
     *
     * @param arrivalBoard where the ball's centre meets the pins, from the gutter on the delivery side
     * @param entryRad entry angle (rad), positive away from the delivery side
     * @param speedMps speed at the pins (m/s)
     * @param massKg mass of the ball (kg)
     * @return probability, 0 to 1; 0 where the ball misses the head pin
     */
    public double strikeChance(double arrivalBoard, double entryRad, double speedMps, double massKg) {
        double chance = strikeChance(arrivalBoard, entryRad) * speedShare(speedMps);
        // Only on the pocket's side is a ball driven on by its angle; and only other masses are deflected otherwise.
        boolean usual = massKg == BallCore.DEFAULT.massKg() || arrivalBoard > LaneGeometry.CENTRE_BOARD || chance == 0;
        return usual ? chance : Math.min(1, chance * deflectionShare(arrivalBoard, entryRad, massKg));
    }

    /**
     * The most that any ball can have.
     *
     * @return probability, 0 to 1, that no chance of a strike exceeds
     */
    public double mostStrikeChance() {
        return Math.min(1, bestChance * (1 + GUESS_DEFLECTION_LOSS * GUESS_MAX_LESS_BOARDS));
    }

    /**
     * Chance of a strike for a ball of 15 lb at a professional's speed.
     *
     * @param arrivalBoard where the ball's centre meets the pins, from the gutter on the delivery side
     * @param entryRad entry angle (rad), positive away from the delivery side
     * @return probability, 0 to 1; 0 where the ball misses the head pin
     */
    public double strikeChance(double arrivalBoard, double entryRad) {
        double offCentre = arrivalBoard - LaneGeometry.CENTRE_BOARD;
        if (!(Math.abs(offCentre) < PinChain.REACH_BOARDS)) {
            return 0;
        }
        double nearSide = LaneGeometry.CENTRE_BOARD - Math.abs(offCentre);
        double miss = Math.abs(nearSide - POCKET_BOARD) / fallBoards;
        double place = StrictMath.exp(-miss * miss * Math.sqrt(miss));
        double side = offCentre <= 0 ? angleShare(entryRad) : GUESS_FAR_SIDE_SHARE;
        return bestChance * place * side;
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
     * What a ball of 15 lb at a professional's speed leaves of a full rack.
     *
     * @param arrivalBoard where the ball's centre meets the pins
     * @param entryRad entry angle (rad)
     * @param u uniform number in [0, 1)
     * @return pins left standing; 0 for a strike
     */
    public int leaveOfFirstBall(double arrivalBoard, double entryRad, double u) {
        return leaveOfFirstBall(arrivalBoard, entryRad, GUESS_SLOWEST_MPS, BallCore.DEFAULT.massKg(), u);
    }

    /**
     * What a ball at a full rack leaves.
     *
     * @param arrivalBoard where the ball's centre meets the pins
     * @param entryRad entry angle (rad)
     * @param speedMps speed at the pins (m/s)
     * @param massKg mass of the ball (kg)
     * @param u uniform number in [0, 1)
     * @return pins left standing; 0 for a strike
     */
    public int leaveOfFirstBall(double arrivalBoard, double entryRad, double speedMps, double massKg, double u) {
        double offCentre = arrivalBoard - LaneGeometry.CENTRE_BOARD;
        if (!(Math.abs(offCentre) < PinChain.REACH_BOARDS)) {
            return leaveOfSpareBall(Rack.FULL, arrivalBoard, entryRad, u);
        }
        double strike = strikeChance(arrivalBoard, entryRad, speedMps, massKg);
        if (u < strike) {
            return 0;
        }
        double rest = (u - strike) / (1 - strike);
        double nearSide = LaneGeometry.CENTRE_BOARD - Math.abs(offCentre);
        int leave = leaves.draw(Math.max(13.75, Math.min(nearSide, Math.nextDown(20.0))), rest);
        return offCentre <= 0 ? leave : Rack.mirrored(leave);
    }

    /**
     * What a ball leaves of the pins that stand. Pins whose centre the ball's path comes within reach of fall; each of
     * the others falls with a chance set by the nearest fallen pin in front of it.
     *
     * @param standing pins that stand, at least one
     * @param arrivalBoard where the ball's centre crosses the head pin's row
     * @param entryRad entry angle (rad)
     * @param u uniform number in [0, 1)
     * @return pins left standing
     */
    public int leaveOfSpareBall(int standing, double arrivalBoard, double entryRad, double u) {
        return PinChain.left(standing, arrivalBoard, StrictMath.tan(entryRad), u);
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
        double flat = Math.max(0, FITTED_FLATTEST_DEG - entryDeg);
        double steep = Math.max(0, entryDeg - FITTED_STEEPEST_DEG);
        return Math.max(0, 1 - GUESS_FLAT_LOSS_PER_DEG2 * flat * flat - GUESS_STEEP_LOSS_PER_DEG2 * steep * steep);
    }

    /** Share of the strikes that a speed at the pins leaves. */
    private static double speedShare(double speedMps) {
        double slow = Math.max(0, GUESS_SLOWEST_MPS - speedMps);
        double fast = Math.max(0, speedMps - GUESS_FASTEST_MPS);
        return Math.max(0, 1 - GUESS_SPEED_LOSS * (slow * slow + fast * fast));
    }

    /** The same for a mass, by how much further than the usual ball the pins turn it aside. */
    private static double deflectionShare(double arrivalBoard, double entryRad, double massKg) {
        double usual = new Deflection(BallCore.DEFAULT.massKg()).exitBoard(arrivalBoard, entryRad);
        double further = usual - new Deflection(massKg).exitBoard(arrivalBoard, entryRad);
        double counted = Math.max(-GUESS_MAX_LESS_BOARDS, Math.min(GUESS_MAX_FURTHER_BOARDS, further));
        return 1 - GUESS_DEFLECTION_LOSS * counted;
    }
}
