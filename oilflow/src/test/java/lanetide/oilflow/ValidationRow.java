package lanetide.oilflow;

import java.util.Locale;

/**
 * A line of the validation table.
 *
 * @param check what is compared
 * @param source where the published value comes from
 * @param published the published value, as printed
 * @param ours what the model gives, as printed
 * @param met whether it lies within the stated limits
 * @param use whether the value steered the choice of a starting value
 */
record ValidationRow(String check, String source, String published, String ours, boolean met, Use use) {
    /** Part that a published value played. */
    enum Use {
        CHECK("check only"),
        CALIBRATION("calibration");

        private final String printed;

        Use(String printed) {
            this.printed = printed;
        }
    }

    String markdown() {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %s | %s | %s | %s |",
                check,
                source,
                published,
                ours,
                met ? "met" : "**OPEN**",
                use.printed);
    }

    /** Formats a value alike in every language. */
    static String format(String format, Object... values) {
        return String.format(Locale.ROOT, format, values);
    }
}
