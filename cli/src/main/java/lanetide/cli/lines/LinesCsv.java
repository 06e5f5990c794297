package lanetide.cli.lines;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvRows;
import lanetide.cli.report.Figures;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.PlayedLine;

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
        return CsvRows.table(HEAD, rows -> {
            for (StartLine line : lines) {
                write(rows, line);
            }
        });
    }

    private static void write(CsvRows rows, StartLine start) {
        rows.row(
                start.surface().id(),
                start.kind().style().id(),
                ConstantName.of(start.kind().hand()),
                start.kind().cover().id(),
                start.kind().level().id(),
                ConstantName.of(start.basis()),
                cell(start, line -> line.line().laydownBoard(), 2),
                cell(start, line -> line.line().arrowsBoard(), 2),
                cell(start, line -> StrictMath.toDegrees(line.line().launchRad()), 3),
                cell(start, line -> line.path().exitBoard(), 2),
                cell(start, line -> line.window().lowBoard(), 2),
                cell(start, line -> line.window().highBoard(), 2),
                cell(start, line -> line.path().breakpointBoard(), 2),
                cell(start, line -> line.path().breakpointM() / LaneGeometry.FOOT_M, 1),
                cell(start, line -> StrictMath.toDegrees(line.path().entryAngleRad()), 2),
                cell(start, line -> line.quality().pocketShare(), 4),
                cell(start, line -> line.quality().strikeShare(), 4),
                cell(start, line -> line.missRoom().outsideBoards(), 2),
                cell(start, line -> line.missRoom().insideBoards(), 2),
                start.change().map(change -> change.cover().id()).orElse(""));
    }

    private static String cell(StartLine start, ToDoubleFunction<PlayedLine> of, int decimals) {
        return start.line()
                .map(line -> Figures.fixed(of.applyAsDouble(line), decimals))
                .orElse("");
    }
}
