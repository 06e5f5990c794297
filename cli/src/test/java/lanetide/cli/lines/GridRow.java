package lanetide.cli.lines;

import java.util.Locale;

/**
 * A row of the table of counts.
 *
 * @param answer what is counted
 * @param number how often it was told
 * @param of how often it was asked, at least once
 * @param aim how often it may be, or ought to be
 */
record GridRow(String answer, int number, int of, Aim aim) {
    /** How often an answer may be told. */
    enum Aim {
        NONE("none", 0, true),
        HALF_A_PERCENT("at most 0.5 %", 0.005, true),
        ONE_PERCENT("at most 1 %", 0.01, true),
        TWO_PERCENT("at most 2 %", 0.02, true),
        MOST("at least 97 %", 0.97, false),
        NEARLY_ALL("at least 99 %", 0.99, false),
        NO_AIM("not stated", 1, true);

        private final String words;
        private final double share;
        private final boolean isMost;

        Aim(String words, double share, boolean isMost) {
            this.words = words;
            this.share = share;
            this.isMost = isMost;
        }

        private boolean allows(double share) {
            return isMost ? share <= this.share : share >= this.share;
        }
    }

    String now() {
        String count = number + " of " + of;
        return number == 0 || number == of
                ? count
                : count + String.format(Locale.ROOT, " (%.1f %%)", 100.0 * number / of);
    }

    String aimed() {
        return aim.words;
    }

    /** The row of the README, with what the model gave before. */
    String markdown(String before) {
        return String.join(" | ", "| " + answer, before, now(), aimed(), standing())
                        .stripTrailing() + " |\n";
    }

    String standing() {
        if (aim == Aim.NO_AIM) {
            return "";
        }
        return aim.allows((double) number / of) ? "met" : "**OPEN**";
    }
}
