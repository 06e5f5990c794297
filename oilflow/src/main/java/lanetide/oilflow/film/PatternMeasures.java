package lanetide.oilflow.film;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * What an inspector would measure on a freshly oiled lane.
 *
 * @param lengthM end of the last row of the grid that holds oil (m from the foul line): the length, rounded up to a row
 * @param volumeMl oil on the lane (mL)
 * @param ratio mean film of the middle five boards over that of boards 3 to 7 on both sides (USBC, sport bowling rule
 *     as published in 2005); infinite where the outside is dry
 * @param ratioRight the same over the right side's boards 3 to 7 alone
 * @param ratioLeft the same over the left side's
 * @param insideOutsideRatio mean film from second arrow to second arrow (boards 10 to 30) over that between there and
 *     the gutters (USBC, Lane conditioning, about 2007)
 * @param meanUnits mean film over the oiled length and the whole width (units of oil)
 */
public record PatternMeasures(
        double lengthM,
        double volumeMl,
        double ratio,
        double ratioRight,
        double ratioLeft,
        double insideOutsideRatio,
        double meanUnits) {
    /** Less oil than this nobody could find (units). */
    private static final double MIN_UNITS = 0.01;

    /**
     * Measures a lane.
     *
     * @param film a film with oil on it
     * @return the measures
     * @throws IllegalArgumentException if the lane is bare
     */
    public static PatternMeasures of(OilFilm film) {
        double lengthM = lengthM(film);
        double right = mean(film, 3, 7, lengthM);
        double left = mean(film, 33, 37, lengthM);
        double middle = mean(film, 18, 22, lengthM);
        double outside = (mean(film, 1, 9, lengthM) + mean(film, 31, 39, lengthM)) / 2;
        return new PatternMeasures(
                lengthM,
                film.volumeMl(),
                middle / ((right + left) / 2),
                middle / right,
                middle / left,
                mean(film, 10, 30, lengthM) / outside,
                mean(film, 1, LaneGeometry.BOARDS, lengthM) / OilFilm.UNIT_UM);
    }

    private static double lengthM(OilFilm film) {
        double rowM = film.grid().rowLengthM();
        for (int row = film.grid().rows() - 1; row >= 0; row--) {
            for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
                if (film.meanOnBoardUm(board, row * rowM, (row + 1) * rowM) >= MIN_UNITS * OilFilm.UNIT_UM) {
                    return (row + 1) * rowM;
                }
            }
        }
        throw new IllegalArgumentException("the lane is bare; lay a pattern before measuring it");
    }

    private static double mean(OilFilm film, int fromBoard, int toBoard, double lengthM) {
        double sumUm = 0;
        for (int board = fromBoard; board <= toBoard; board++) {
            sumUm += film.meanOnBoardUm(board, 0, lengthM);
        }
        return sumUm / (toBoard - fromBoard + 1);
    }
}
