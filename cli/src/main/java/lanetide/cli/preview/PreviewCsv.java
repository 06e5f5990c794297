package lanetide.cli.preview;

import lanetide.cli.report.CsvColumns;
import lanetide.cli.report.CsvRows;

/** What {@code preview} answers, as a table: one row for each game. */
public final class PreviewCsv {
    private PreviewCsv() {}

    /**
     * Writes the table; a line that does not exist leaves its cells empty.
     *
     * @param preview what the bowler will meet
     * @return the table with its head
     */
    public static String write(Preview preview) {
        return new CsvColumns<GameForecast>()
                .add("game", GameForecast::game)
                .add("pair", game -> CsvRows.pair(game.pair()))
                .add("laydownBoard", GameForecast::laydownBoard, 2)
                .add("laydownLow", game -> game.laydownSpread().low(), 2)
                .add("laydownHigh", game -> game.laydownSpread().high(), 2)
                .add("arrowsBoard", GameForecast::arrowsBoard, 2)
                .add("exitBoard", GameForecast::exitBoard, 2)
                .add("exitLow", GameForecast::lowBoard, 2)
                .add("exitHigh", GameForecast::highBoard, 2)
                .add("pocketShare", GameForecast::pocketShare, 3)
                .add("moveBoards", GameForecast::moveBoards, 1)
                .add("cover", game -> preview.coverIn(game).id())
                .table(preview.games());
    }
}
