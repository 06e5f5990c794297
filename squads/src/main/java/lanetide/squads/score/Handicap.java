package lanetide.squads.score;

/**
 * Pins added to a bowler's game: a share of what the average lacks of a base. Fractions of a pin are dropped, and an
 * average above the base gets nothing (common practice, no source).
 *
 * @param basePins average that gets no handicap, 1 to 300
 * @param share share of the difference, above 0 to 1
 */
public record Handicap(int basePins, double share) {
    /** Guards the dropping of fractions against the last digit of a share such as 0.9. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if not {@code 1 <= basePins <= 300} or not {@code 0 < share <= 1}
     */
    public Handicap {
        if (basePins < 1 || basePins > ScoreCard.PERFECT) {
            throw new IllegalArgumentException("base of handicap is " + basePins + " pins, but must be 1 to 300");
        }
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share of handicap is " + share + ", but must be above 0 and at most 1");
        }
    }

    /**
     * The pins an average gets.
     *
     * @param averagePins a bowler's average, 0 to 300
     * @return pins a game, at least 0
     */
    public int pins(int averagePins) {
        return Math.max(0, (int) Math.floor(share * (basePins - averagePins) + ROUNDING));
    }
}
