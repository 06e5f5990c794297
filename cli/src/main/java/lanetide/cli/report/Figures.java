package lanetide.cli.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.OptionalDouble;
import lanetide.des.stats.ConfidenceInterval;

/** Numbers as a report writes them. */
public final class Figures {
    private Figures() {}

    /** A number with so many decimals; {@code -} for NaN. */
    public static String fixed(double value, int decimals) {
        if (Double.isNaN(value)) {
            return "-";
        }
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    /** A number with so many decimals; {@code -} for none. */
    public static String fixed(OptionalDouble value, int decimals) {
        return fixed(value.orElse(Double.NaN), decimals);
    }

    /** A share in hundredths, without decimals; {@code -} for none. */
    public static String percent(OptionalDouble share) {
        return fixed(100 * share.orElse(Double.NaN), 0);
    }

    /** A number with so many decimals and its sign; what rounds to nought has none. */
    public static String signed(double value, int decimals) {
        String text = fixed(value, decimals);
        return value > 0 && !text.equals(fixed(0, decimals)) ? "+" + text : text;
    }

    /** The ends of an interval with so many decimals. */
    public static String interval(ConfidenceInterval interval, int decimals) {
        return fixed(interval.low(), decimals) + " to " + fixed(interval.high(), decimals);
    }

    /** The ends of an interval with so many decimals and their signs. */
    public static String signedInterval(ConfidenceInterval interval, int decimals) {
        return signed(interval.low(), decimals) + " to " + signed(interval.high(), decimals);
    }

    /** A number with at most so many decimals, without trailing zeros. */
    public static String plain(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
