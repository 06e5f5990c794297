package lanetide.cli.scenario.key;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * The limits of a quantity, in its base unit.
 *
 * @param low smallest value
 * @param lowAllowed whether {@code low} itself is allowed
 * @param high largest value, allowed
 */
public record Range(double low, boolean lowAllowed, double high) {
    private static final MathContext THREE_DIGITS_UP = new MathContext(3, RoundingMode.CEILING);
    private static final MathContext THREE_DIGITS_DOWN = new MathContext(3, RoundingMode.FLOOR);

    /** From {@code low} to {@code high}, both allowed. */
    public static Range between(double low, double high) {
        return new Range(low, true, high);
    }

    /** Above {@code low}, which is not allowed, to {@code high}, which is. */
    public static Range above(double low, double high) {
        return new Range(low, false, high);
    }

    /** Whether a value in the base unit lies within the limits. */
    public boolean contains(double value) {
        return (lowAllowed ? value >= low : value > low) && value <= high;
    }

    /** The limits in a unit, rounded inward so that a value at the printed limit is accepted. */
    public String inWords(Unit unit) {
        String most = unit.write(number(high / unit.toBase(), THREE_DIGITS_DOWN));
        String least = unit.write(number(low / unit.toBase(), THREE_DIGITS_UP));
        return lowAllowed ? "from " + least + " to " + most : "above " + least + " and at most " + most;
    }

    /** A number for a message, to four digits. */
    public static String round(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    private static String number(double value, MathContext digits) {
        // Twelve digits first: 0.1 / 0.01 must not be rounded up to 10.1.
        BigDecimal clean = new BigDecimal(value).round(new MathContext(12));
        boolean whole = clean.stripTrailingZeros().scale() <= 0;
        return (whole ? clean : clean.round(digits)).stripTrailingZeros().toPlainString();
    }
}
