package lanetide.cli.preview;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.oilflow.line.Line;

/**
 * What to throw in practice, and what it shows of the lanes: two lines whose shots part where the lanes are other than
 * forecast.
 *
 * @param lines the line of the first game, and another
 * @param lanes how the lanes may be found, as forecast first
 */
public record Practice(List<Throw> lines, List<Found> lanes) {
    /** In place of a game: the line of the first one with the feet moved in by two boards and the target by one. */
    static final int DEEPER = 0;

    /** How far the feet are then moved (boards). */
    static final double DEEPER_BOARDS = 2;

    /**
     * A line to throw at.
     *
     * @param game the game that is started with it, from 1; 0 if none is
     * @param laydownBoard where to lay the ball down
     * @param arrowsBoard where to cross the arrows
     * @param balls how many shots, half of them on each lane
     */
    public record Throw(int game, double laydownBoard, double arrowsBoard, int balls) {}

    /**
     * How the lanes may be found.
     *
     * @param asGame as forecast before this game, from 1; 0: still as freshly oiled
     * @param boardsHigh how far past the best hit a good shot on each line then meets the pins (boards), negative
     *     toward the own gutter
     */
    public record Found(int asGame, List<Double> boardsHigh) {
        /** Copies the list. */
        public Found {
            boardsHigh = List.copyOf(boardsHigh);
        }

        /** Whether some line shows that the lanes are not those others, by at least so many boards. */
        boolean partsFrom(Found other, double boards) {
            return IntStream.range(0, boardsHigh.size())
                    .anyMatch(line -> Math.abs(boardsHigh.get(line) - other.boardsHigh.get(line)) >= boards);
        }
    }

    /** Copies the lists. */
    public Practice {
        lines = List.copyOf(lines);
        lanes = List.copyOf(lanes);
    }

    static Line deeper(Line line) {
        return line.moved(DEEPER_BOARDS);
    }
}
