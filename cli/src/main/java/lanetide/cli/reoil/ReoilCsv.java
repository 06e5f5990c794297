package lanetide.cli.reoil;

import java.util.List;
import lanetide.cli.report.CsvRows;
import lanetide.cli.report.Figures;
import lanetide.squads.recondition.CurvePoint;

/** The curve by games on one oiling as a table. */
public final class ReoilCsv {
    private static final List<String> HEAD = List.of(
            "games",
            "windowShiftBoards",
            "windowWidthBoards",
            "pocketShare",
            "paceBoardsPerGame",
            "spreadPins",
            "levelPins",
            "costPerGame");

    private ReoilCsv() {}

    /**
     * Writes the table.
     *
     * @param curve the curve
     * @return the table with its head
     */
    public static String write(List<CurvePoint> curve) {
        return CsvRows.table(HEAD, rows -> {
            for (CurvePoint point : curve) {
                rows.row(
                        point.games(),
                        Figures.fixed(point.windowShiftBoards(), 3),
                        Figures.fixed(point.windowWidthBoards(), 3),
                        Figures.fixed(point.pocketShare(), 4),
                        Figures.fixed(point.paceBoards(), 3),
                        Figures.fixed(point.spreadPins(), 3),
                        Figures.fixed(point.levelPins(), 3),
                        Figures.fixed(point.costPerGame(), 4));
            }
        });
    }
}
