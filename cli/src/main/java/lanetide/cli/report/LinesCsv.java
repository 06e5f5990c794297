package lanetide.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import lanetide.cli.lines.StartLine;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.PlayedLine;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** The lines as a table: one row for each surface, style, hand and basis. */
public final class LinesCsv {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setRecordSeparator("\n")
            .setHeader(
                    "surface",
                    "style",
                    "hand",
                    "cover",
                    "level",
                    "basis",
                    "laydownBoard",
                    "arrowsBoard",
                    "launchAngleDeg",
                    "exitBoard",
                    "exitWindowLow",
                    "exitWindowHigh",
                    "breakpointBoard",
                    "breakpointDistanceFt",
                    "entryAngleDeg",
                    "pocketShare",
                    "strikeShare",
                    "missRoomOutsideBoards",
                    "missRoomInsideBoards",
                    "ballChangeCover")
            .get();

    private LinesCsv() {}

    /**
     * Writes the table; a line that does not exist leaves its cells empty.
     *
     * @param lines the lines
     * @return the table with its head
     */
    public static String write(List<StartLine> lines) {
        StringBuilder text = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(text, FORMAT)) {
            for (StartLine line : lines) {
                write(printer, line);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("a table in memory cannot be written", e);
        }
        return text.toString();
    }

    private static void write(CSVPrinter printer, StartLine start) throws IOException {
        printer.print(start.surface().id());
        printer.print(start.kind().style().id());
        printer.print(start.kind().hand().name().toLowerCase(Locale.ROOT));
        printer.print(start.kind().cover().id());
        printer.print(start.kind().level().id());
        printer.print(start.basis().name().toLowerCase(Locale.ROOT));
        printer.print(cell(start, line -> line.line().laydownBoard(), 2));
        printer.print(cell(start, line -> line.line().arrowsBoard(), 2));
        printer.print(cell(start, line -> StrictMath.toDegrees(line.line().launchRad()), 3));
        printer.print(cell(start, line -> line.path().exitBoard(), 2));
        printer.print(cell(start, line -> line.window().lowBoard(), 2));
        printer.print(cell(start, line -> line.window().highBoard(), 2));
        printer.print(cell(start, line -> line.path().breakpointBoard(), 2));
        printer.print(cell(start, line -> line.path().breakpointM() / LaneGeometry.FOOT_M, 1));
        printer.print(cell(start, line -> StrictMath.toDegrees(line.path().entryAngleRad()), 2));
        printer.print(cell(start, line -> line.quality().pocketShare(), 4));
        printer.print(cell(start, line -> line.quality().strikeShare(), 4));
        printer.print(cell(start, line -> line.missRoom().outsideBoards(), 2));
        printer.print(cell(start, line -> line.missRoom().insideBoards(), 2));
        printer.print(start.change().map(change -> change.cover().id()).orElse(""));
        printer.println();
    }

    private static String cell(StartLine start, ToDoubleFunction<PlayedLine> of, int decimals) {
        return start.line()
                .map(line -> Figures.fixed(of.applyAsDouble(line), decimals))
                .orElse("");
    }
}
