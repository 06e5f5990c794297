package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.function.Consumer;
import lanetide.squads.model.LanePair;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * A table that programs and spreadsheets read: RFC 4180, UTF-8, every text safe from being taken for a formula or a
 * date.
 */
public final class CsvRows {
    private final CSVPrinter printer;

    /**
     * Writes the head of a table.
     *
     * @param out where rows go
     * @param head names of the columns
     * @throws UncheckedIOException if it cannot be written
     */
    public CsvRows(Appendable out, List<String> head) {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader(head.toArray(String[]::new))
                .get();
        try {
            this.printer = new CSVPrinter(out, format);
        } catch (IOException e) {
            throw new UncheckedIOException("the head of a table cannot be written", e);
        }
    }

    /**
     * The text of a whole table.
     *
     * @param head names of the columns
     * @param rows writes the rows
     * @return the table
     */
    public static String table(List<String> head, Consumer<CsvRows> rows) {
        StringBuilder text = new StringBuilder();
        rows.accept(new CsvRows(text, head));
        return text.toString();
    }

    /**
     * Writes a row.
     *
     * @param cells numbers as they are or written by {@link #number}, and texts, one for each column
     * @throws UncheckedIOException if it cannot be written
     */
    public void row(Object... cells) {
        row(Arrays.asList(cells));
    }

    /**
     * Writes a row.
     *
     * @param cells the same as a list
     * @throws UncheckedIOException if it cannot be written
     */
    public void row(List<?> cells) {
        try {
            printer.printRecord(cells.stream()
                    .map(cell -> cell instanceof String text ? SafeCell.of(text) : cell)
                    .toList());
        } catch (IOException e) {
            throw new UncheckedIOException("a row of a table cannot be written", e);
        }
    }

    /** A number with so many decimals; an empty cell for NaN. */
    public static String number(double value, int decimals) {
        return Double.isNaN(value) ? "" : Figures.fixed(value, decimals);
    }

    /** A pair of lanes in a form that no spreadsheet takes for a date. */
    public static String pair(LanePair pair) {
        return pair.left() + " and " + pair.right();
    }
}
