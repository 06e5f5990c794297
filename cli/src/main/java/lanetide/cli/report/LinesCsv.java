package lanetide.cli.report;

import java.io.IOException;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.cli.lines.StartLine;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.PlayedLine;
import org.apache.commons.csv.CSVPrinter;

/** The lines as a table: one row for each surface, style, hand and basis. */
public final class LinesCsv {
    private static final List<String> HEAD = List.of(
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
            "ballChangeCover");

    private LinesCsv() {}

    /**
     * Writes the table; a line that does not exist leaves its cells empty.
     *
     * @param lines the lines
     * @return the table with its head
     */
    public static String write(List<StartLine> lines) {
        return CsvAnswer.write(HEAD, printer -> {
            for (StartLine line : lines) {
                write(printer, line);
            }
        });
    }

    private static void write(CSVPrinter printer, StartLine start) throws IOException {
        printer.print(start.surface().id());
        printer.print(start.kind().style().id());
        printer.print(ConstantName.of(start.kind().hand()));
        printer.print(start.kind().cover().id());
        printer.print(start.kind().level().id());
        printer.print(ConstantName.of(start.basis()));
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
