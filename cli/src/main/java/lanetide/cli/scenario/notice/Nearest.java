package lanetide.cli.scenario.notice;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one was probably meant to be. */
public final class Nearest {
    private Nearest() {}

    /**
     * The nearest name.
     *
     * @param typed what was typed
     * @param known the names there are
     * @return the nearest of them, if it is near enough to be worth offering: at most half of its letters changed
     */
    public static Optional<String> to(String typed, Collection<String> known) {
        return known.stream()
                .filter(name -> distance(typed, name) <= name.length() / 2)
                .min(Comparator.comparingInt(name -> distance(typed, name)));
    }

    /**
     * Asks whether the nearest name was meant.
     *
     * @param typed what was typed
     * @param known the names there are
     * @return a sentence to follow another one; empty if none is near enough
     */
    public static String question(String typed, Collection<String> known) {
        return to(typed, known).map(name -> " Did you mean `" + name + "`?").orElse("");
    }

    /** Levenshtein distance, capitals alike (V. Levenshtein, Soviet Physics Doklady 10, 1966). */
    public static int distance(String first, String second) {
        String a = first.toLowerCase(Locale.ROOT);
        String b = second.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[b.length()];
    }
}
