package lanetide.cli.lines;

import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.cli.report.ConstantName;
import lanetide.cli.report.CsvColumns;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.PlayedLine;

/** The lines as a table: one row for each surface, style, hand and basis. */
public final class LinesCsv {
    private LinesCsv() {}

    /**
     * Writes the table; a line that does not exist leaves its cells empty.
     *
     * @param lines the lines
     * @return the table with its head
     */
    public static String write(List<StartLine> lines) {
        return new CsvColumns<StartLine>()
                .add("surface", start -> start.surface().id())
                .add("style", start -> start.kind().style().id())
                .add("hand", start -> ConstantName.of(start.kind().hand()))
                .add("cover", start -> start.kind().cover().id())
                .add("level", start -> start.kind().level().id())
                .add("basis", StartLine::basisName)
                .add("laydownBoard", of(line -> line.line().laydownBoard()), 2)
                .add("arrowsBoard", of(line -> line.line().arrowsBoard()), 2)
                .add(
                        "launchAngleDeg",
                        of(line -> StrictMath.toDegrees(line.line().launchRad())),
                        3)
                .add("exitBoard", of(line -> line.path().exitBoard()), 2)
                .add("exitWindowLow", of(line -> line.window().lowBoard()), 2)
                .add("exitWindowHigh", of(line -> line.window().highBoard()), 2)
                .add("breakpointBoard", of(line -> line.path().breakpointBoard()), 2)
                .add("breakpointDistanceFt", of(line -> line.path().breakpointM() / LaneGeometry.FOOT_M), 1)
                .add(
                        "entryAngleDeg",
                        of(line -> StrictMath.toDegrees(line.path().entryAngleRad())),
                        2)
                .add("pocketShare", of(line -> line.quality().pocketShare()), 4)
                .add("strikeShare", of(line -> line.quality().strikeShare()), 4)
                .add("missRoomOutsideBoards", of(line -> line.missRoom().outsideBoards()), 2)
                .add("missRoomInsideBoards", of(line -> line.missRoom().insideBoards()), 2)
                .add(
                        "ballChangeCover",
                        start -> start.change()
                                .map(change -> change.cover().id())
                                .orElse(""))
                .table(lines);
    }

    private static ToDoubleFunction<StartLine> of(ToDoubleFunction<PlayedLine> value) {
        return start -> start.line().map(value::applyAsDouble).orElse(Double.NaN);
    }
}
