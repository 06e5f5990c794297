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
        /** Looked at while values of the model were chosen. */
        FITTED("fitted"),
        /** Not looked at while values were chosen. */
        HELD_OUT("held out"),
        /** Holds whatever the values: decides nothing. */
        IDLE("idle"),
        /** Written in by a rule of the model. */
        BY_CONSTRUCTION("by construction"),
        /** A demand of our own on the arithmetic, or a property. */
        CHECK("own check");

        private final String printed;

        Use(String printed) {
            this.printed = printed;
        }

        String printed() {
            return printed;
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
