package lanetide.oilflow;

import java.util.Locale;

/** Checks of numbers that came from outside; each returns its argument so that construction reads as one line. */
public final class Require {
    private Require() {}

    /**
     * Refuses a number outside a closed range.
     *
     * @param value the number
     * @param name what the number is, with its unit, as the message shall call it
     * @param low smallest allowed value
     * @param high largest allowed value
     * @return {@code value}
     * @throws IllegalArgumentException if not {@code low <= value <= high} (NaN included)
     */
    public static double inRange(double value, String name, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s; it must lie between %s and %s", name, value, low, high));
        }
        return value;
    }

    /**
     * Refuses what is not a finite number above zero.
     *
     * @param value the number
     * @param name what the number is, with its unit
     * @return {@code value}
     * @throws IllegalArgumentException if not {@code 0 < value < infinity} (NaN included)
     */
    public static double positive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "%s is %s; it must be a finite number above 0", name, value));
        }
        return value;
    }

    /**
     * Refuses a blank name.
     *
     * @param value the text
     * @param name what the text is
     * @return {@code value}
     * @throws IllegalArgumentException if {@code value} is blank
     */
    public static String named(String value, String name) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " is blank; give it a name");
        }
        return value;
    }
}
