package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import lanetide.squads.fairness.Difference;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What differs as a table: one row for each thing compared. */
public final class CompareCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setHeader("quantity", "unit", "a", "b", "difference", "low", "high", "p", "isReal")
            .get();

    private CompareCsv() {}

    /**
     * Writes the table.
     *
     * @param differences what was compared
     * @return the table with its head
     */
    public static String write(List<Difference> differences) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (Difference difference : differences) {
                printer.printRecord(
                        difference.quantity(),
                        difference.unit(),
                        Figures.fixed(difference.a(), 4),
                        Figures.fixed(difference.b(), 4),
                        Figures.fixed(difference.difference(), 4),
                        Figures.fixed(difference.ci95().low(), 4),
                        Figures.fixed(difference.ci95().high(), 4),
                        Figures.fixed(difference.p(), 6),
                        difference.isReal());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }
}
