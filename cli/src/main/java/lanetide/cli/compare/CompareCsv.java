package lanetide.cli.compare;

import java.util.List;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvColumns;
import lanetide.squads.fairness.Difference;

/** What differs as a table: one row for each thing compared. */
public final class CompareCsv {
    private CompareCsv() {}

    /**
     * Writes the table.
     *
     * @param differences what was compared
     * @return the table with its head
     */
    public static String write(List<Difference> differences) {
        return new CsvColumns<Difference>()
                .add("quantity", CompareWords::quantity)
                .add("unit", CompareWords::unit)
                .add("a", Difference::a, 4)
                .add("b", Difference::b, 4)
                .add("difference", Difference::difference, 4)
                .add("low", difference -> difference.ci95().low(), 4)
                .add("high", difference -> difference.ci95().high(), 4)
                .add("p", Difference::p, 6)
                .add("signShare", Difference::signShare, 3)
                .add("isReal", Difference::isReal)
                .add("known", difference -> ConstantName.of(difference.known()))
                .table(differences);
    }
}
