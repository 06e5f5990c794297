package lanetide.cli.scenario.key;

import java.util.List;

/**
 * A unit a quantity may be written in.
 *
 * @param symbol how reports write it; empty for a plain number
 * @param toBase base units in one of it
 * @param spellings every way a file may write it
 */
public record Unit(String symbol, double toBase, List<String> spellings) {
    /** A unit with its symbol, which is a spelling too, and other spellings. */
    public static Unit of(String symbol, double toBase, String... otherSpellings) {
        List<String> spellings = new java.util.ArrayList<>(List.of(otherSpellings));
        spellings.add(symbol);
        return new Unit(symbol, toBase, List.copyOf(spellings));
    }

    /**
     * A number with this unit, as a file would write it.
     *
     * @param number the number
     * @return for example {@code 39 ft}, {@code 4:1} or {@code 1 pair}
     */
    public String write(String number) {
        boolean close = symbol.isEmpty() || symbol.startsWith(":");
        String singular = symbol.endsWith("s") ? symbol.substring(0, symbol.length() - 1) : symbol;
        String unit = number.equals("1") && spellings.contains(singular) ? singular : symbol;
        return number + (close ? "" : " ") + unit;
    }
}
