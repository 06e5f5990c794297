package lanetide.oilflow.film;

import lanetide.oilflow.Require;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * Where a short pattern ends and a long one begins, and the same for volume and ratio. Publications differ, so every
 * limit can be set.
 *
 * @param shortToM longest short pattern (m)
 * @param longFromM shortest long pattern (m), above {@code shortToM}
 * @param lowBelowMl volumes below this are low (mL)
 * @param highAboveMl volumes above this are high (mL), at least {@code lowBelowMl}
 * @param sportTo largest ratio of a sport pattern
 * @param houseFrom smallest ratio of a house pattern, above {@code sportTo}
 */
public record PatternBands(
        double shortToM, double longFromM, double lowBelowMl, double highAboveMl, double sportTo, double houseFrom) {
    /** The published limits that hold unless others are asked for; see {@link #LENGTH_SOURCE} and its neighbours. */
    public static final PatternBands PUBLISHED =
            new PatternBands(35 * LaneGeometry.FOOT_M, 41 * LaneGeometry.FOOT_M, 21, 24, 4, 8);

    /** Where the published limits of length come from. */
    public static final String LENGTH_SOURCE =
            "a retail guide; others draw the lines at 37 and 43 ft, or at 35 and 42 ft";

    /** Where the published limits of volume come from. */
    public static final String VOLUME_SOURCE = "US Bowler, July 2011; its April 2011 issue: low to 19, high from 23 mL";

    /** Where the published tiers of ratio come from. */
    public static final String RATIO_SOURCE = "USBC tiers from 2017, as a web encyclopedia gives them";

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if a limit is not a finite number above 0, or an upper one is not above its
     *     lower one (volume: not at least it)
     */
    public PatternBands {
        requireOrder(shortToM, longFromM, shortToM < longFromM, "length (m)");
        requireOrder(lowBelowMl, highAboveMl, lowBelowMl <= highAboveMl, "volume (mL)");
        requireOrder(sportTo, houseFrom, sportTo < houseFrom, "ratio");
    }

    private static void requireOrder(double low, double high, boolean inOrder, String what) {
        Require.positive(low, "lower limit of " + what);
        Require.positive(high, "upper limit of " + what);
        if (!inOrder) {
            throw new IllegalArgumentException(
                    "the limits of " + what + " are " + low + " and " + high + "; put the lower one first");
        }
    }

    /** Bands of length. */
    public enum Length {
        SHORT,
        MEDIUM,
        LONG
    }

    /** Bands of volume. */
    public enum Volume {
        LOW,
        MEDIUM,
        HIGH
    }

    /**
     * Tiers of ratio, from the hardest; inverse is what holds more oil outside than inside, for which none is named.
     */
    public enum Tier {
        INVERSE,
        SPORT,
        CHALLENGE,
        HOUSE
    }

    /**
     * The band of a length.
     *
     * @param lengthM length (m)
     * @return its band
     */
    public Length lengthBand(double lengthM) {
        return lengthM <= shortToM ? Length.SHORT : lengthM >= longFromM ? Length.LONG : Length.MEDIUM;
    }

    /**
     * The band of a volume.
     *
     * @param volumeMl volume (mL)
     * @return its band
     */
    public Volume volumeBand(double volumeMl) {
        return volumeMl < lowBelowMl ? Volume.LOW : volumeMl > highAboveMl ? Volume.HIGH : Volume.MEDIUM;
    }

    /**
     * The tier of a ratio, of one half of a pattern.
     *
     * @param ratio inside over outside
     * @return its tier: {@code INVERSE} if {@code ratio < 1}
     */
    public Tier tier(double ratio) {
        return ratio < 1
                ? Tier.INVERSE
                : ratio <= sportTo ? Tier.SPORT : ratio >= houseFrom ? Tier.HOUSE : Tier.CHALLENGE;
    }
}
