package lanetide.squads.rotation.check;

import java.math.BigDecimal;
import java.util.Locale;

/** Counts and clauses as sentences of this package have them. */
final class Words {

    private Words() {}

    static String count(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }

    /** How many more there are, as a sentence of its own; nothing for none. */
    static String more(int rest, String what) {
        return rest == 0 ? "" : " And " + rest + " more such " + what + (rest == 1 ? "." : "s.");
    }

    static String pairs(double number) {
        String written = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        return written + (number == 1 ? " pair" : " pairs");
    }

    static String lowerFirst(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }
}
