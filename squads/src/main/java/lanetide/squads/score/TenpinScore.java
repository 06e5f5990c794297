package lanetide.squads.score;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One bowler's game, scored ball by ball in the traditional way.
 *
 * <p>An open frame counts its pins, a spare 10 and the next ball, a strike 10 and the next two balls; the tenth frame
 * has up to three balls. Said once for all frames: a frame that clears the rack counts three balls, any other frame
 * two. Source: International Bowling Federation, Universal Playing Rules, chapter 2, 2.1; USBC Playing Rules, chapter
 * 2, rule 2.
 *
 * <p>A card is changed by {@link #roll} and {@link #foul} and belongs to one thread.
 */
public final class TenpinScore {

    /** Frames in a game. */
    public static final int FRAMES = 10;

    /** Pins in a full rack. */
    public static final int PINS = 10;

    /** The score of twelve strikes. */
    public static final int PERFECT = 300;

    private static final int MOST_BALLS = 21;

    private final int[] balls = new int[MOST_BALLS];
    private final int[] firstBallOfFrame = new int[FRAMES + 1];
    private int ballCount;
    private int completeFrames;
    private int standing = PINS;

    /** A card before the first ball. */
    public TenpinScore() {}

    /**
     * Counts the next ball.
     *
     * @param pins pins knocked down, 0 to {@link #pinsStanding()}
     * @throws IllegalArgumentException if {@code pins < 0} or {@code pins > pinsStanding()}
     * @throws IllegalStateException if the game is complete
     */
    public void roll(int pins) {
        requireBallDue();
        requirePossible(pins);
        balls[ballCount++] = pins;
        standing -= pins;
        if (currentFrameHasEnded()) {
            completeFrames++;
            firstBallOfFrame[completeFrames] = ballCount;
            standing = PINS;
        } else if (standing == 0) {
            standing = PINS;
        }
    }

    /**
     * Counts the next ball as a foul: the ball is used and scores nothing, whatever fell. Setting the pins again for a
     * second ball is the caller's business; {@link #pinsStanding()} already reckons with it.
     *
     * @throws IllegalStateException if the game is complete
     */
    public void foul() {
        roll(0);
    }

    /**
     * The frame the next ball belongs to.
     *
     * @return 1 to 10; still 10 once the game is complete
     */
    public int frame() {
        return Math.min(completeFrames + 1, FRAMES);
    }

    /**
     * Which ball of its frame the next ball is.
     *
     * @return 1 or 2, in the tenth frame also 3
     * @throws IllegalStateException if the game is complete
     */
    public int ballInFrame() {
        requireBallDue();
        return ballCount - firstBallOfFrame[completeFrames] + 1;
    }

    /**
     * The pins the next ball faces.
     *
     * @return 1 to 10; 10 with a fresh rack
     * @throws IllegalStateException if the game is complete
     */
    public int pinsStanding() {
        requireBallDue();
        return standing;
    }

    /**
     * Whether all balls of a frame have been bowled; its score may still wait for the balls that follow.
     *
     * @param frame 1 to 10
     * @return true once no further ball belongs to the frame
     * @throws IllegalArgumentException if {@code frame < 1} or {@code frame > 10}
     */
    public boolean frameComplete(int frame) {
        if (frame < 1 || frame > FRAMES) {
            throw new IllegalArgumentException(
                    "The frame (%d) must be 1 to %d. Count frames from one.".formatted(frame, FRAMES));
        }
        return frame <= completeFrames;
    }

    /**
     * Whether the last ball has been bowled.
     *
     * @return true once all ten frames are complete
     */
    public boolean isComplete() {
        return completeFrames == FRAMES;
    }

    /**
     * The score so far: each frame with the balls that have counted for it up to now. Equals the final score once the
     * game is complete.
     *
     * @return 0 to 300
     */
    public int total() {
        return IntStream.range(0, frame()).map(this::scoreSoFar).sum();
    }

    /**
     * Running totals after each frame whose score can no longer change.
     *
     * @return up to ten totals, first frame first; unmodifiable
     */
    public List<Integer> frameTotals() {
        List<Integer> totals = new ArrayList<>();
        int total = 0;
        for (int frame = 0; frame < completeFrames && isDecided(frame); frame++) {
            total += scoreSoFar(frame);
            totals.add(total);
        }
        return List.copyOf(totals);
    }

    private boolean currentFrameHasEnded() {
        int first = firstBallOfFrame[completeFrames];
        int bowled = ballCount - first;
        if (completeFrames == FRAMES - 1) {
            return bowled == ballsThatCount(first);
        }
        return bowled == 2 || standing == 0;
    }

    private boolean isDecided(int frame) {
        int first = firstBallOfFrame[frame];
        return first + ballsThatCount(first) <= ballCount;
    }

    private int scoreSoFar(int frame) {
        int first = firstBallOfFrame[frame];
        int end = Math.min(first + ballsThatCount(first), ballCount);
        return IntStream.range(first, end).map(ball -> balls[ball]).sum();
    }

    /** Balls not yet bowled read as zero, so a frame is taken for open until it has cleared the rack. */
    private int ballsThatCount(int first) {
        boolean cleared = balls[first] == PINS || balls[first] + balls[first + 1] == PINS;
        return cleared ? 3 : 2;
    }

    private void requireBallDue() {
        if (isComplete()) {
            throw new IllegalStateException(
                    "The game is complete after %d balls with a score of %d: no ball is due. Start a new card."
                            .formatted(ballCount, total()));
        }
    }

    private void requirePossible(int pins) {
        if (pins < 0 || pins > standing) {
            throw new IllegalArgumentException(
                    "Frame %d, ball %d: the pin count (%d) must be 0 to %d, the pins standing. Check this ball and the one before it."
                            .formatted(frame(), ballInFrame(), pins, standing));
        }
    }
}
