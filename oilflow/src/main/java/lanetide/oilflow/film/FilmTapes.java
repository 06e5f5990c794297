package lanetide.oilflow.film;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * What tapes would read on a film: the mean over a board's width, between the middles of the two rows of the grid
 * around it.
 */
public final class FilmTapes {
    private static final double FOOT_M = LaneGeometry.FOOT_M;

    private FilmTapes() {}

    /**
     * Where inspectors take tapes: 8 ft, 22 ft and 2 ft before the end (standard positions, from memory); 15 ft, 25 to
     * 30 ft, here its middle, and 2 ft past the end (an association's inspector, May 2004).
     *
     * @param lengthM the pattern's length (m)
     * @return distances from the foul line (m), ascending, each once
     */
    public static List<Double> positionsM(double lengthM) {
        TreeSet<Double> positions = new TreeSet<>(List.of(8 * FOOT_M, 15 * FOOT_M, 22 * FOOT_M, 27.5 * FOOT_M));
        positions.add(lengthM - 2 * FOOT_M);
        positions.add(lengthM + 2 * FOOT_M);
        positions.removeIf(positionM -> positionM > LaneGeometry.HEAD_PIN_M);
        return new ArrayList<>(positions);
    }

    /**
     * Reads one board.
     *
     * @param film the lane
     * @param board whole board from the right-hand gutter, 1 to 39
     * @param distanceM distance from the foul line (m), 0 to the head pin
     * @return units of oil
     */
    public static double units(OilFilm film, int board, double distanceM) {
        return film.onBoardUm(board, distanceM) / OilFilm.UNIT_UM;
    }

    /**
     * Reads every board at some distances.
     *
     * @param film the lane
     * @param distancesM distances from the foul line (m), 0 to the head pin
     * @return the readings by distance, then board
     */
    public static List<TapeReading> read(OilFilm film, List<Double> distancesM) {
        List<TapeReading> readings = new ArrayList<>();
        for (double distanceM : distancesM) {
            for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
                readings.add(new TapeReading(distanceM, board, units(film, board, distanceM)));
            }
        }
        return readings;
    }
}
