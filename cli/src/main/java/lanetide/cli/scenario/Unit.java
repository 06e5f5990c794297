package lanetide.cli.scenario;

import java.util.List;

/**
 * A unit a quantity may be written in.
 *
 * @param symbol how reports write it; empty for a plain number
 * @param toBase base units in one of it
 * @param spellings every way a file may write it
 */
record Unit(String symbol, double toBase, List<String> spellings) {
    static Unit of(String symbol, double toBase, String... otherSpellings) {
        List<String> spellings = new java.util.ArrayList<>(List.of(otherSpellings));
        spellings.add(symbol);
        return new Unit(symbol, toBase, List.copyOf(spellings));
    }

    /** A number with this unit, as a file would write it. */
    String write(String number) {
        boolean close = symbol.isEmpty() || symbol.startsWith(":");
        return number + (close ? "" : " ") + symbol;
    }
}
