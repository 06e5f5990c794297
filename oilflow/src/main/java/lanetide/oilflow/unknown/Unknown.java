package lanetide.oilflow.unknown;

import lanetide.oilflow.Require;

/**
 * A value that is not known well.
 *
 * @param id its name
 * @param usual the value used where sets are not asked for, within the range
 * @param low smallest that is thought possible
 * @param high largest that is thought possible, above {@code low}
 * @param logarithmic whether equal ratios are as likely as each other, rather than equal differences; then {@code low}
 *     is above 0
 * @param source where the range comes from, or {@code assumption}
 */
public record Unknown(String id, double usual, double low, double high, boolean logarithmic, String source) {
    /**
     * Checks the texts and the range.
     *
     * @throws IllegalArgumentException if a text is blank, not {@code low < high}, the usual value lies outside the
     *     range, or {@code low <= 0} on a logarithmic scale
     */
    public Unknown {
        Require.named(id, "unknown");
        Require.named(source, "source of " + id);
        Require.inRange(usual, "usual value of " + id, low, high);
        if (!(low < high) || (logarithmic && low <= 0)) {
            throw new IllegalArgumentException("range of " + id + " is " + low + " to " + high);
        }
    }

    /**
     * The value at a share of the way through the range.
     *
     * @param share 0 for the lowest to 1 for the highest, each equally likely
     * @return the value
     */
    public double at(double share) {
        return logarithmic ? low * StrictMath.pow(high / low, share) : low + share * (high - low);
    }

    /**
     * The way through the range at which a value lies.
     *
     * @param value the value
     * @return the share, 0 to 1 within the range
     */
    public double shareOf(double value) {
        return logarithmic ? StrictMath.log(value / low) / StrictMath.log(high / low) : (value - low) / (high - low);
    }
}
