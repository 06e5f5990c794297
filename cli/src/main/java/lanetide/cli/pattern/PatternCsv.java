package lanetide.cli.pattern;

import java.util.List;
import lanetide.cli.report.CsvRows;
import lanetide.cli.report.Figures;
import lanetide.oilflow.film.TapeReading;
import lanetide.oilflow.lane.LaneGeometry;

/** What {@code pattern} answers, for spreadsheets: what tapes would read, in the form a scenario reads tapes. */
public final class PatternCsv {
    private static final List<String> HEAD = List.of("distanceFt", "board", "units");

    private PatternCsv() {}

    /**
     * Writes the table.
     *
     * @param facts the pattern
     * @return one row a reading
     */
    public static String write(PatternFacts facts) {
        return CsvRows.table(HEAD, rows -> {
            for (TapeReading tape : facts.tapes()) {
                rows.row(
                        Figures.plain(tape.distanceM() / LaneGeometry.FOOT_M, 2),
                        tape.board(),
                        Figures.fixed(tape.units(), 2));
            }
        });
    }
}
