package lanetide.cli.preview;

import java.util.List;
import lanetide.cli.report.CsvRows;

/** What {@code preview} answers, as a table: one row for each game. */
public final class PreviewCsv {
    private static final List<String> HEAD = List.of(
            "game",
            "pair",
            "laydownBoard",
            "laydownLow",
            "laydownHigh",
            "arrowsBoard",
            "exitBoard",
            "exitLow",
            "exitHigh",
            "pocketShare",
            "moveBoards",
            "cover");

    private PreviewCsv() {}

    /**
     * Writes the table; a line that does not exist leaves its cells empty.
     *
     * @param preview what the bowler will meet
     * @return the table with its head
     */
    public static String write(Preview preview) {
        return CsvRows.table(HEAD, rows -> {
            for (GameForecast game : preview.games()) {
                rows.row(
                        game.game(),
                        CsvRows.pair(game.pair()),
                        CsvRows.number(game.laydownBoard(), 2),
                        CsvRows.number(game.laydownSpread().low(), 2),
                        CsvRows.number(game.laydownSpread().high(), 2),
                        CsvRows.number(game.arrowsBoard(), 2),
                        CsvRows.number(game.exitBoard(), 2),
                        CsvRows.number(game.lowBoard(), 2),
                        CsvRows.number(game.highBoard(), 2),
                        CsvRows.number(game.pocketShare(), 3),
                        CsvRows.number(game.moveBoards(), 1),
                        game.change()
                                .map(change -> change.cover().id())
                                .orElse(preview.kind().cover().id()));
            }
        });
    }
}
