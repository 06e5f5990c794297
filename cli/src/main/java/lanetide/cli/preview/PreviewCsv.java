package lanetide.cli.preview;

import lanetide.cli.report.CsvColumns;
import lanetide.cli.report.CsvRows;
import lanetide.cli.words.WearWords;

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
        CsvColumns<GameForecast> columns = new CsvColumns<GameForecast>()
                .add("game", GameForecast::game)
                .add("pair", game -> CsvRows.pair(game.pair()))
                .add("laydownBoard", GameForecast::start, GameForecast.Start::laydownBoard, 2)
                .add(
                        "laydownLow",
                        GameForecast::start,
                        start -> start.laydownSpread().low(),
                        2)
                .add(
                        "laydownHigh",
                        GameForecast::start,
                        start -> start.laydownSpread().high(),
                        2)
                .add("arrowsBoard", GameForecast::start, GameForecast.Start::arrowsBoard, 2)
                .add("exitBoard", GameForecast::start, GameForecast.Start::exitBoard, 2)
                .add("exitLow", GameForecast::start, GameForecast.Start::lowBoard, 2)
                .add("exitHigh", GameForecast::start, GameForecast.Start::highBoard, 2)
                .add("pocketShare", GameForecast::start, GameForecast.Start::pocketShare, 3)
                .add("moveBoards", game -> game.moveBoards().orElse(Double.NaN), 1)
                .add("cover", game -> preview.coverIn(game).id());
        WearWords.FIELDS.forEach((field, part) -> columns.add(field, GameForecast::why, part, 1));
        return columns.table(preview.games());
    }
}
