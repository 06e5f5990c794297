package lanetide.squads.score;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/**
 * One bowler's game, scored ball by ball: ten frames, each over when the rack is cleared or two balls have been bowled.
 * The ways of scoring differ in the tenth frame and in what a frame counts.
 *
 * <p>A card is changed by {@link #roll}, {@link #foul} and {@link #markSplit} and belongs to one thread.
 */
public abstract sealed class ScoreCard permits TenpinScore, CurrentFrameScore {
    /** Frames in a game. */
    public static final int FRAMES = 10;

    /** Pins in a full rack. */
    public static final int PINS = 10;

    /** The highest score of a game. */
    public static final int PERFECT = 300;

    private static final int MAX_BALLS = 21;

    /** Letters from here stand for the pins of a ball that left a split. */
    private static final char SPLIT = 'a';

    private final int[] balls = new int[MAX_BALLS];
    private final char[] marks = new char[MAX_BALLS];
    private final int[] firstBallOfFrame = new int[FRAMES + 1];
    private int ballCount;
    private int completeFrames;
    private int standing = PINS;

    /** A card before the first ball. */
    ScoreCard() {}

    /**
     * Counts the next ball.
     *
     * @param pins pins knocked down, 0 to {@link #pinsStanding()}
     * @throws IllegalArgumentException if {@code pins < 0} or {@code pins > pinsStanding()}
     * @throws IllegalStateException if the game is complete
     */
    public final void roll(int pins) {
        requireBallDue();
        requirePossible(pins);
        boolean fresh = standing == PINS;
        standing -= pins;
        marks[ballCount] = sign(pins, fresh);
        balls[ballCount++] = pins;
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
    public final void foul() {
        roll(0);
        marks[ballCount - 1] = 'F';
    }

    /**
     * Marks that the last ball left a split.
     *
     * @throws IllegalStateException if there was no ball, or the last one knocked down no pins or all of them
     */
    public final void markSplit() {
        if (ballCount == 0 || !Character.isDigit(marks[ballCount - 1])) {
            throw new IllegalStateException("only a ball that knocked down some pins can leave a split");
        }
        marks[ballCount - 1] = (char) (marks[ballCount - 1] - '0' + SPLIT);
    }

    /**
     * The frame the next ball belongs to.
     *
     * @return 1 to 10; still 10 once the game is complete
     */
    public final int frame() {
        return Math.min(completeFrames + 1, FRAMES);
    }

    /**
     * Which ball of its frame the next ball is.
     *
     * @return 1 or 2, in the tenth frame of traditional scoring also 3
     * @throws IllegalStateException if the game is complete
     */
    public final int ballInFrame() {
        requireBallDue();
        return ballCount - firstBallOfFrame[completeFrames] + 1;
    }

    /**
     * The pins the next ball faces.
     *
     * @return 1 to 10; 10 with a fresh rack
     * @throws IllegalStateException if the game is complete
     */
    public final int pinsStanding() {
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
    public final boolean frameComplete(int frame) {
        if (frame < 1 || frame > FRAMES) {
            throw new IllegalArgumentException(
                    "The frame (" + frame + ") must be 1 to " + FRAMES + ". Count frames from one.");
        }
        return frame <= completeFrames;
    }

    /**
     * Whether the last ball has been bowled.
     *
     * @return true once all ten frames are complete
     */
    public final boolean isComplete() {
        return completeFrames == FRAMES;
    }

    /**
     * The score so far: each frame with the balls that have counted for it up to now. Equals the final score once the
     * game is complete.
     *
     * @return 0 to 300
     */
    public final int total() {
        int total = 0;
        for (int frame = 0; frame < frame(); frame++) {
            total += scoreSoFar(firstBallOfFrame[frame]);
        }
        return total;
    }

    /**
     * Running totals after each frame whose score can no longer change.
     *
     * @return up to ten totals, first frame first; unmodifiable
     */
    public final List<Integer> frameTotals() {
        List<Integer> totals = new ArrayList<>();
        int total = 0;
        for (int frame = 0; frame < completeFrames && isDecided(firstBallOfFrame[frame]); frame++) {
            total += scoreSoFar(firstBallOfFrame[frame]);
            totals.add(total);
        }
        return List.copyOf(totals);
    }

    /**
     * The balls as a score sheet shows them: X a strike, / a spare, - a ball without pins, F a foul, S before the pins
     * of a ball that left a split; a blank between frames.
     *
     * @return such as {@code X X X 72 S8/ F9 X 7/ 9- XX8}
     */
    public final String sheet() {
        StringJoiner frames = new StringJoiner(" ");
        for (int frame = 0; frame <= Math.min(completeFrames, FRAMES - 1); frame++) {
            int end = frame < completeFrames ? firstBallOfFrame[frame + 1] : ballCount;
            StringBuilder signs = new StringBuilder();
            for (int ball = firstBallOfFrame[frame]; ball < end; ball++) {
                boolean split = marks[ball] >= SPLIT && marks[ball] < SPLIT + PINS;
                signs.append(split ? "S" + (marks[ball] - SPLIT) : String.valueOf(marks[ball]));
            }
            if (!signs.isEmpty()) {
                frames.add(signs);
            }
        }
        return frames.toString();
    }

    /** Whether the frame that began with a ball has ended, in the last frame of a game or before. */
    abstract boolean hasEnded(int first, int bowled, boolean cleared, boolean last);

    /** Whether the score of the frame that began with a ball can no longer change. */
    abstract boolean isDecided(int first);

    /** What the frame that began with a ball counts up to now. */
    abstract int scoreSoFar(int first);

    /** Pins of a ball; none for one that has not been bowled. */
    final int pins(int ball) {
        return balls[ball];
    }

    final int ballCount() {
        return ballCount;
    }

    private char sign(int pins, boolean fresh) {
        if (standing == 0) {
            return fresh && isFirstOfRack() ? 'X' : '/';
        }
        return pins == 0 ? '-' : (char) ('0' + pins);
    }

    /** Ten pins after a foul or a miss are a spare: the rack is not a new one. */
    private boolean isFirstOfRack() {
        int first = firstBallOfFrame[completeFrames];
        return ballCount == first || marks[ballCount - 1] == 'X' || marks[ballCount - 1] == '/';
    }

    private boolean currentFrameHasEnded() {
        int first = firstBallOfFrame[completeFrames];
        return hasEnded(first, ballCount - first, standing == 0, completeFrames == FRAMES - 1);
    }

    private void requireBallDue() {
        if (isComplete()) {
            throw new IllegalStateException("The game is complete after " + ballCount + " balls with a score of "
                    + total() + ": no ball is due. Start a new card.");
        }
    }

    private void requirePossible(int pins) {
        if (pins < 0 || pins > standing) {
            throw new IllegalArgumentException(
                    "Frame " + frame() + ", ball " + ballInFrame() + ": the pin count (" + pins + ") must be 0 to "
                            + standing + ", the pins standing. Check this ball and the one before it.");
        }
    }
}
