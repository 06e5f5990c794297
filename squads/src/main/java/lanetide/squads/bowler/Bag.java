package lanetide.squads.bowler;

import java.util.List;

/**
 * A bowler's balls for full racks, and his reasons to change from one to the other: the ball in hand misses the pocket
 * by clearly more than it does on the lanes he knows; it comes in flat, because he had to move deep and send it far
 * out, and the other one hooks less; or the lane leaves no room to move, deeper with a ball that hooks less still to
 * take, or further out with one that hooks more (common practice, no source). If the other ball then misses by clearly
 * more than the one before did, he goes back, and after that changes only for want of room.
 */
final class Bag {
    /**
     * How much flatter than usual his balls must come in before he changes (rad; three quarters of a degree,
     * assumption).
     */
    private static final double FLAT_RAD = StrictMath.toRadians(0.75);

    /** Flattest angle that carries as well as any (rad; four degrees: USBC research as reported by Ridenour). */
    private static final double CARRIES_RAD = StrictMath.toRadians(4);

    /** Balls after a change that only serve to find the line (assumption). */
    private static final int SETTLING_BALLS = 6;

    /** Balls over which he judges (assumption). */
    private static final int WATCHED_BALLS = 18;

    /** Ratio of mean squared misses that is clear (assumption; it varies by a third either way over so many balls). */
    private static final double CLEARLY = 1.5;

    private final List<KnownBall> balls;
    private final double seesVariance;
    private int index;
    private int changes;
    private int watched;
    private double entersRad;
    private double missSquared;
    private double missSquaredBefore = Double.POSITIVE_INFINITY;
    private boolean tooDeep;
    private boolean tooFarOut;
    private boolean disappointed;

    /** A bag of one or two balls, of someone who sees with some error (boards) where they meet the pins. */
    Bag(List<KnownBall> balls, double seesBoards) {
        this.balls = List.copyOf(balls);
        this.seesVariance = seesBoards * seesBoards;
    }

    KnownBall inHand() {
        return balls.get(index);
    }

    int index() {
        return index;
    }

    int changes() {
        return changes;
    }

    /** Sees by how much a ball missed the pocket, and at which angle it came in. */
    void watch(double missBoards, double entryRad) {
        watched++;
        if (watched > SETTLING_BALLS) {
            double rate = 1.0 / Math.min(watched - SETTLING_BALLS, WATCHED_BALLS);
            entersRad += rate * (entryRad - entersRad);
            missSquared += rate * (missBoards * missBoards - missSquared);
        }
    }

    /** A move deeper, or further out, that the lane leaves no room for. */
    void outOfRoom(boolean deeper) {
        tooDeep |= deeper;
        tooFarOut |= !deeper;
    }

    boolean shouldChange() {
        if (balls.size() < 2 || watched < SETTLING_BALLS + WATCHED_BALLS) {
            return false;
        }
        boolean otherHooksLess = balls.get(1 - index).friction() < inHand().friction();
        boolean noRoom = otherHooksLess ? tooDeep : tooFarOut;
        return noRoom || isWorse() || (!disappointed && (missesTooMuch() || (otherHooksLess && isFlat())));
    }

    private boolean missesTooMuch() {
        double scatter = inHand().feel().scatterBoards();
        return missSquared > CLEARLY * (scatter * scatter + seesVariance);
    }

    private boolean isFlat() {
        return entersRad < Math.min(CARRIES_RAD, inHand().feel().usualEntryRad() - FLAT_RAD);
    }

    private boolean isWorse() {
        return missSquared > CLEARLY * missSquaredBefore;
    }

    void change() {
        boolean back = isWorse();
        disappointed |= back;
        missSquaredBefore = back ? Double.POSITIVE_INFINITY : missSquared;
        index = 1 - index;
        changes++;
        watched = 0;
        entersRad = 0;
        missSquared = 0;
        tooDeep = false;
        tooFarOut = false;
    }
}
