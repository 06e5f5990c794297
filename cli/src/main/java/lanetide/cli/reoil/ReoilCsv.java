package lanetide.cli.reoil;

import java.util.List;
import lanetide.cli.report.CsvColumns;
import lanetide.cli.report.Figures;
import lanetide.squads.recondition.CurvePoint;

/** The curve by games on one oiling as a table. */
public final class ReoilCsv {
    private ReoilCsv() {}

    /**
     * Writes the table.
     *
     * @param curve the curve
     * @return the table with its head
     */
    public static String write(List<CurvePoint> curve) {
        return new CsvColumns<CurvePoint>()
                .add("games", CurvePoint::games)
                .add("windowShiftBoards", point -> Figures.fixed(point.windowShiftBoards(), 3))
                .add("windowWidthBoards", point -> Figures.fixed(point.windowWidthBoards(), 3))
                .add("pocketShare", point -> Figures.fixed(point.pocketShare(), 4))
                .add("paceBoardsPerGame", point -> Figures.fixed(point.paceBoards(), 3))
                .add("spreadPins", point -> Figures.fixed(point.spreadPins(), 3))
                .add("levelPins", point -> Figures.fixed(point.levelPins(), 3))
                .add("costPerGame", point -> Figures.fixed(point.costPerGame(), 4))
                .table(curve);
    }
}
