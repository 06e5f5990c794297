package lanetide.cli.report;

import java.util.List;
import lanetide.cli.preview.GameForecast;
import lanetide.cli.preview.Preview;

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
        return CsvAnswer.write(HEAD, printer -> {
            for (GameForecast game : preview.games()) {
                printer.printRecord(
                        game.game(),
                        game.pair().id(),
                        cell(game.laydownBoard(), 2),
                        cell(game.laydownSpread().low(), 2),
                        cell(game.laydownSpread().high(), 2),
                        cell(game.arrowsBoard(), 2),
                        cell(game.exitBoard(), 2),
                        cell(game.lowBoard(), 2),
                        cell(game.highBoard(), 2),
                        cell(game.pocketShare(), 3),
                        cell(game.moveBoards(), 1),
                        game.change()
                                .map(change -> change.cover().id())
                                .orElse(preview.kind().cover().id()));
            }
        });
    }

    private static String cell(double value, int decimals) {
        return Double.isNaN(value) ? "" : Figures.fixed(value, decimals);
    }
}
