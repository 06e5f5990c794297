package lanetide.cli.compare;

import java.util.List;
import lanetide.cli.report.CsvRows;
import lanetide.cli.report.Figures;
import lanetide.squads.fairness.Difference;

/** What differs as a table: one row for each thing compared. */
public final class CompareCsv {
    private static final List<String> HEAD =
            List.of("quantity", "unit", "a", "b", "difference", "low", "high", "p", "isReal");

    private CompareCsv() {}

    /**
     * Writes the table.
     *
     * @param differences what was compared
     * @return the table with its head
     */
    public static String write(List<Difference> differences) {
        return CsvRows.table(HEAD, rows -> {
            for (Difference difference : differences) {
                rows.row(
                        CompareWords.quantity(difference),
                        CompareWords.unit(difference),
                        Figures.fixed(difference.a(), 4),
                        Figures.fixed(difference.b(), 4),
                        Figures.fixed(difference.difference(), 4),
                        Figures.fixed(difference.ci95().low(), 4),
                        Figures.fixed(difference.ci95().high(), 4),
                        Figures.fixed(difference.p(), 6),
                        difference.isReal());
            }
        });
    }
}
