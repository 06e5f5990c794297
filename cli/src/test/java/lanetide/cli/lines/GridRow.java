package lanetide.cli.lines;

import java.util.List;
import java.util.Locale;

/**
 * A row of the table of counts.
 *
 * @param answer what is counted
 * @param told where it was told; of two conditions the first
 * @param others where it was asked and not told
 * @param aim how often it may be, or ought to be
 */
record GridRow(String answer, List<GridPoint> told, List<GridPoint> others, Aim aim) {
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

    /** Where it is not as it ought to be. */
    List<GridPoint> offending() {
        return aim.isMost ? told : others;
    }

    private int of() {
        return told.size() + others.size();
    }

    String now() {
        int number = told.size();
        int of = of();
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

    boolean isOpen() {
        return !aim.allows((double) told.size() / of());
    }

    String standing() {
        if (aim == Aim.NO_AIM) {
            return "";
        }
        return isOpen() ? "**OPEN**" : "met";
    }
}
