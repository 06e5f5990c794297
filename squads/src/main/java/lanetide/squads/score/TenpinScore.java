package lanetide.squads.score;

/**
 * A game scored in the traditional way.
 *
 * <p>An open frame counts its pins, a spare 10 and the next ball, a strike 10 and the next two balls; the tenth frame
 * has up to three balls. Said once for all frames: a frame that clears the rack counts three balls, any other frame
 * two. Source: International Bowling Federation, Universal Playing Rules, chapter 2, 2.1; USBC Playing Rules, chapter
 * 2, rule 2.
 */
public final class TenpinScore extends ScoreCard {
    /** A card before the first ball. */
    public TenpinScore() {}

    @Override
    boolean hasEnded(int first, int bowled, boolean cleared, boolean last) {
        return last ? bowled == ballsThatCount(first) : bowled == 2 || cleared;
    }

    @Override
    boolean isDecided(int first) {
        return first + ballsThatCount(first) <= ballCount();
    }

    @Override
    int scoreSoFar(int first) {
        int end = Math.min(first + ballsThatCount(first), ballCount());
        int sum = 0;
        for (int ball = first; ball < end; ball++) {
            sum += pins(ball);
        }
        return sum;
    }

    /** Balls not yet bowled read as zero, so a frame is taken for open until it has cleared the rack. */
    private int ballsThatCount(int first) {
        boolean cleared = pins(first) == PINS || pins(first) + pins(first + 1) == PINS;
        return cleared ? 3 : 2;
    }
}
