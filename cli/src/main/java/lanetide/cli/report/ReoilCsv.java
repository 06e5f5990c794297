package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import lanetide.squads.recondition.CurvePoint;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The curve by games on one oiling as a table. */
public final class ReoilCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setHeader(
                    "games",
                    "windowShiftBoards",
                    "windowWidthBoards",
                    "pocketShare",
                    "paceBoardsPerGame",
                    "spreadPins",
                    "levelPins",
                    "costPerGame")
            .get();

    private ReoilCsv() {}

    /**
     * Writes the table.
     *
     * @param curve the curve
     * @return the table with its head
     */
    public static String write(List<CurvePoint> curve) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (CurvePoint point : curve) {
                printer.printRecord(
                        point.games(),
                        Figures.fixed(point.windowShiftBoards(), 3),
                        Figures.fixed(point.windowWidthBoards(), 3),
                        Figures.fixed(point.pocketShare(), 4),
                        Figures.fixed(point.paceBoards(), 3),
                        Figures.fixed(point.spreadPins(), 3),
                        Figures.fixed(point.levelPins(), 3),
                        Figures.fixed(point.costPerGame(), 4));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }
}
