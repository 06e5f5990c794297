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
    public static Unit of(String symbol, double toBase, String... otherSpellings) {
        List<String> spellings = new java.util.ArrayList<>(List.of(otherSpellings));
        spellings.add(symbol);
        return new Unit(symbol, toBase, List.copyOf(spellings));
    }

    /** A number with this unit, as a file would write it. */
    public String write(String number) {
        boolean close = symbol.isEmpty() || symbol.startsWith(":");
        return number + (close ? "" : " ") + symbol;
    }
}
