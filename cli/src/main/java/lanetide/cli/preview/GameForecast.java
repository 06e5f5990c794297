package lanetide.cli.preview;

import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineQuality;
import lanetide.squads.model.LanePair;

/**
 * What a bowler will meet in one game: medians over the playings and both lanes.
 *
 * @param game game, from 1
 * @param pair where
 * @param start the line he starts with; empty where none meets the pocket on most lanes
 * @param foundShare share of lanes and playings on which a line meets the pocket, 0 to 1
 * @param moveBoards boards to move the feet since the game before, or since the fresh pattern in the first; positive
 *     away from his gutter, in half boards; empty without a line to move from or to
 * @param change another ball that would help more than a move; empty if none does on most lanes
 * @param why by how much, and through what, a shot on his line of the fresh pattern meets the pins elsewhere than
 *     there: means, to tenths of a board; empty where that is not asked for or there is no such line
 */
public record GameForecast(
        int game,
        LanePair pair,
        Optional<Start> start,
        double foundShare,
        OptionalDouble moveBoards,
        Optional<BallChange> change,
        Optional<ByStretch> why) {
    /**
     * The line he starts with; boards are counted from his own gutter.
     *
     * @param lowBoard outermost board of the exit window
     * @param highBoard innermost board of it
     * @param exitBoard where his ball leaves the pattern
     * @param laydownBoard where he lays the ball down
     * @param laydownSpread boards between which he starts in four playings out of five
     * @param arrowsBoard where he crosses the arrows
     * @param quality how good that line is over the scatter of his release; empty where that is not asked for
     */
    public record Start(
            double lowBoard,
            double highBoard,
            double exitBoard,
            double laydownBoard,
            Spread laydownSpread,
            double arrowsBoard,
            Optional<LineQuality> quality) {
        /** Share of pocket hits, where that is asked for, 0 to 1. */
        double pocketShare() {
            return quality.orElseThrow().pocketShare();
        }

        /** Share of strikes, where that is asked for, 0 to 1. */
        double strikeShare() {
            return quality.orElseThrow().strikeShare();
        }
    }

    /**
     * The middle four fifths of some values.
     *
     * @param low a tenth lies below
     * @param high a tenth lies above
     */
    public record Spread(double low, double high) {}
}
