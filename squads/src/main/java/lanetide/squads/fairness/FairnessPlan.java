package lanetide.squads.fairness;

import lanetide.oilflow.Require;

/**
 * How an event is studied.
 *
 * @param seed master seed of all chance
 * @param playings how often the event is played at most; whole rounds only
 * @param marginPins largest advantage that still counts as fair (pins a game), above 0 and at most 50
 * @param lanesChange false to play without practice on lanes that stay as they are laid, which shows what the study
 *     finds where there is nothing
 */
public record FairnessPlan(long seed, int playings, double marginPins, boolean lanesChange) {
    /**
     * The margin used where nobody sets another. Two pins a game move the chance of a bowler at the median to pass a
     * cut by at most five in a hundred: 2 / 16 of the spread of 14 to 18 pins between bowlers' means over twelve games
     * (five patterns of a world-level event, 229 bowlers, forum.bowlingchat.net), times the height 0.399 of the normal
     * density.
     */
    public static final double DEFAULT_MARGIN_PINS = 2;

    /** Largest margin. */
    public static final double MAX_MARGIN_PINS = 50;

    /**
     * The same plan for another number of playings, of which the first meet the same luck.
     *
     * @param others how often the event is played at most
     * @return the plan
     */
    public FairnessPlan playing(int others) {
        return new FairnessPlan(seed, others, marginPins, lanesChange);
    }

    /**
     * Checks the margin.
     *
     * @throws IllegalArgumentException if not {@code 0 < marginPins <= 50}
     */
    public FairnessPlan {
        if (marginPins <= 0) {
            throw new IllegalArgumentException("margin is " + marginPins + " pins a game, but must be above 0");
        }
        Require.inRange(marginPins, "margin (pins a game)", 0, MAX_MARGIN_PINS);
    }
}
