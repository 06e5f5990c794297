package lanetide.squads.fairness;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** Numbers and lists in sentences. */
final class Words {
    private Words() {}

    /** With its sign and at most one decimal. */
    static String signed(double value) {
        String text = plain(value, 1);
        return value > 0 && !text.equals("0") ? "+" + text : text;
    }

    /** With at most so many decimals. */
    static String plain(double value, int decimals) {
        return BigDecimal.valueOf(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    /** With two decimals. */
    static String fixed(double value) {
        return BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** A, B and C. */
    static String joined(List<String> parts) {
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
