package lanetide.cli.words;

import java.util.List;
import java.util.Locale;

/** Counts and lists as sentences have them. */
public final class English {
    private English() {}

    /**
     * A number of things.
     *
     * @param number how many
     * @param what one of them
     * @return such as {@code 1 game} or {@code 2 games}
     */
    public static String count(int number, String what) {
        return count(String.valueOf(number), what);
    }

    /**
     * A number of things that need not be whole.
     *
     * @param number how many, as it is written
     * @param what one of them
     * @return such as {@code 1 board} or {@code 1.5 boards}
     */
    public static String count(String number, String what) {
        return number + " " + what + (number.equals("1") ? "" : "s");
    }

    /**
     * How many more there are.
     *
     * @param rest how many, at least 0
     * @param what one of them
     * @return a sentence with a blank before it; nothing for none
     */
    public static String more(int rest, String what) {
        return rest == 0 ? "" : " And " + rest + " more such " + what + (rest == 1 ? "." : "s.");
    }

    /**
     * A list.
     *
     * @param parts what stands in it, at least one
     * @return such as {@code A, B and C}
     */
    public static String joined(List<String> parts) {
        int last = parts.size() - 1;
        return last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
    }

    /**
     * A sentence for its beginning.
     *
     * @param words not empty
     * @return the same with a capital
     */
    public static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
