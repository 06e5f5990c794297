package lanetide.cli.preview;

import java.util.List;
import java.util.Optional;
import lanetide.cli.lines.Kind;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.line.BallChange;

/**
 * What a bowler will meet, game by game.
 *
 * @param place where he sits
 * @param kind how he plays
 * @param bag the covers he may change to, his own among them; empty where nobody knows what he brings
 * @param fresh the same on the fresh pattern, as game 0
 * @param games his games, in order
 * @param signs what would tell in practice that the forecast is wrong
 * @param practice what to throw in practice; empty where there is no line to start with
 * @param replications playings it rests on
 * @param sets sets of values that they went through in turn; 1 if all values were as usual
 */
public record Preview(
        Place place,
        Kind kind,
        List<Coverstock> bag,
        GameForecast fresh,
        List<GameForecast> games,
        List<Sign> signs,
        Optional<Practice> practice,
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

    /** Whether he has a ball with less friction than the one he throws, or nobody knows. */
    boolean bringsSmoother() {
        return bag.isEmpty()
                || bag.stream()
                        .anyMatch(cover -> cover.frictionFactor() < kind.cover().frictionFactor());
    }

    /** Copies the lists. */
    public Preview {
        bag = List.copyOf(bag);
        games = List.copyOf(games);
        signs = List.copyOf(signs);
    }
}
