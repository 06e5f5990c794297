package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import lanetide.oilflow.film.TapeReading;
import lanetide.oilflow.lane.LaneGeometry;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** What {@code pattern} answers, for spreadsheets: its virtual tapes, in the form a scenario reads tapes. */
public final class PatternCsv {
    private static final CSVFormat FORM = CSVFormat.RFC4180
            .builder()
            .setHeader("distanceFt", "board", "units")
            .setRecordSeparator('\n')
            .get();

    private PatternCsv() {}

    /**
     * Writes the table.
     *
     * @param facts the pattern
     * @return one row a reading
     */
    public static String write(PatternFacts facts) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORM)) {
            for (TapeReading tape : facts.tapes()) {
                printer.printRecord(
                        Figures.plain(tape.distanceM() / LaneGeometry.FOOT_M, 2),
                        tape.board(),
                        Figures.fixed(tape.units(), 2));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
