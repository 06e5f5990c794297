package lanetide.squads.study;

import java.util.OptionalDouble;

/**
 * How often an event is played: a fixed number of times, or until the mean score of every squad is known well enough.
 *
 * @param most greatest number of playings, at least 1
 * @param halfWidthPins half the width that the 95 % interval of every squad's mean score shall have (pins a game),
 *     above 0; empty for a fixed number
 */
public record Playings(int most, OptionalDouble halfWidthPins) {
    /**
     * Fewest playings after which one may stop; with fewer, an interval that is narrow by chance would stop too soon.
     */
    public static final int MIN_UNTIL = 10;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if {@code most < 1}, or if a half-width is given that is not above 0 and finite
     *     or {@code most < 10}
     */
    public Playings {
        if (most < 1) {
            throw new IllegalArgumentException("replications (" + most + ") must be at least 1");
        }
        double halfWidth = halfWidthPins.orElse(1);
        if (!(halfWidth > 0 && halfWidth < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("half-width is " + halfWidth + " pins, but must be finite and above 0");
        }
        if (halfWidthPins.isPresent() && most < MIN_UNTIL) {
            throw new IllegalArgumentException("a half-width needs at least " + MIN_UNTIL + " playings, not " + most);
        }
    }

    /**
     * A fixed number.
     *
     * @param number playings, at least 1
     * @return so many playings
     */
    public static Playings fixed(int number) {
        return new Playings(number, OptionalDouble.empty());
    }
}
