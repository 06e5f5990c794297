package lanetide.cli.preview;

import java.util.List;
import lanetide.cli.lines.Kind;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.line.BallChange;

/**
 * What a bowler will meet, game by game.
 *
 * @param place where he sits
 * @param kind how he plays
 * @param fresh the same on the fresh pattern, as game 0
 * @param games his games, in order
 * @param signs what would tell in practice that the forecast is wrong
 * @param replications playings it rests on
 * @param sets sets of values that they went through in turn; 1 if all values were as usual
 */
public record Preview(
        Place place,
        Kind kind,
        GameForecast fresh,
        List<GameForecast> games,
        List<Sign> signs,
        int replications,
        int sets) {
    /**
     * What a good shot on the line of the first game would do on other lanes than the forecast ones.
     *
     * @param asGame the lanes are already as forecast before this game, from 2; 0: they are still as freshly oiled
     * @param boardsHigh how far past the best hit it then meets the pins (boards), negative toward his own gutter
     */
    public record Sign(int asGame, double boardsHigh) {}

    /**
     * The ball to throw in a game.
     *
     * @param game one of his games
     * @return another one where that helps more than a move, else his own
     */
    public Coverstock coverIn(GameForecast game) {
        return game.change().map(BallChange::cover).orElse(kind.cover());
    }

    /** Copies the lists. */
    public Preview {
        games = List.copyOf(games);
        signs = List.copyOf(signs);
    }
}
