package lanetide.squads.model;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import lanetide.oilflow.Require;

/**
 * Who goes on from qualifying: those with the highest totals over all squads.
 *
 * @param number how many go on, at least 1; empty if it is a share
 * @param share which share of those who are entered goes on, above 0 and below 1; empty if it is a number
 * @param ties who goes first of those with the same total
 * @param withHandicap whether the handicap counts in every game
 * @param counting which games count for a person who is entered in several squads
 * @param finals what those who go on bowl; empty if it ends with the cut
 */
public record Cut(
        OptionalInt number,
        OptionalDouble share,
        TieRule ties,
        boolean withHandicap,
        Counting counting,
        Optional<Finals> finals) {
    /** Guards the rounding up of places against the last digit of a share such as 0.1. */
    private static final double ROUNDING = 1e-9;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if not exactly one of {@code number} and {@code share} is given, {@code number <
     *     1}, or not {@code 0 < share < 1}
     */
    public Cut {
        if (number.isPresent() == share.isPresent()) {
            throw new IllegalArgumentException("a cut needs a number of places or a share, and not both");
        }
        Require.inRange(number.orElse(1), "places at the cut", 1, Integer.MAX_VALUE);
        double part = share.orElse(0.5);
        if (!(part > 0 && part < 1)) {
            throw new IllegalArgumentException(
                    "share that makes the cut is " + part + ", but must be above 0 and" + " below 1");
        }
    }

    /**
     * A cut without finals.
     *
     * @param number how many go on, at least 1; empty if it is a share
     * @param share which share of those who are entered goes on, above 0 and below 1; empty if it is a number
     * @param ties who goes first of those with the same total
     * @param withHandicap whether the handicap counts in every game
     * @param counting which games count for a person who is entered in several squads
     * @throws IllegalArgumentException as above
     */
    public Cut(OptionalInt number, OptionalDouble share, TieRule ties, boolean withHandicap, Counting counting) {
        this(number, share, ties, withHandicap, counting, Optional.empty());
    }

    /**
     * The same cut with other finals.
     *
     * @param others what those who go on bowl; empty if it ends with the cut
     * @return the cut
     */
    public Cut with(Optional<Finals> others) {
        return new Cut(number, share, ties, withHandicap, counting, others);
    }

    /**
     * How many go on.
     *
     * @param entered people who are entered
     * @return the number; of a share every started place counts (common practice, no source)
     */
    public int places(int entered) {
        return number.isPresent() ? number.getAsInt() : (int) StrictMath.ceil(share.getAsDouble() * entered - ROUNDING);
    }
}
