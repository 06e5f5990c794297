package lanetide.des.stats;

/**
 * An interval that covers the true value with the given probability.
 *
 * @param low lower end, in the unit of the observations
 * @param high upper end, in the unit of the observations
 * @param level probability of covering, between 0 and 1, such as 0.95
 */
public record ConfidenceInterval(double low, double high, double level) {

    /**
     * @throws IllegalArgumentException if {@code low} or {@code high} is not finite, if {@code low > high}, or unless
     *     {@code 0 < level < 1}
     */
    public ConfidenceInterval {
        Checks.finite(low, "low");
        Checks.finite(high, "high");
        Checks.level(level);
        if (low > high) {
            throw new IllegalArgumentException("low is " + low + ", but must not exceed high, which is " + high);
        }
    }

    /**
     * The part of it that is possible where no value lies beyond some limits.
     *
     * @param least smallest value there is
     * @param most largest value there is, at least {@code least}
     * @return the interval, with ends that lie beyond a limit at that limit
     */
    public ConfidenceInterval within(double least, double most) {
        return new ConfidenceInterval(
                Math.min(most, Math.max(least, low)), Math.max(least, Math.min(most, high)), level);
    }

    /** Half the distance from the lower to the upper end. */
    public double halfWidth() {
        return (high - low) / 2;
    }
}
