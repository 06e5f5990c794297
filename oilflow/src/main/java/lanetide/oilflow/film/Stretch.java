package lanetide.oilflow.film;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * The three stretches of a lane of which bowlers speak. A row of the grid belongs to the one in which its middle lies.
 */
public enum Stretch {
    /** From the foul line to {@link LaneGeometry#HEADS_END_M}. */
    HEADS,
    /** From there to the end of the pattern. */
    MID_LANE,
    /** Past the end of the pattern, where oil can only have been carried. */
    PAST_END;

    private double fromM(double patternEndM) {
        return switch (this) {
            case HEADS -> 0;
            case MID_LANE -> LaneGeometry.HEADS_END_M;
            case PAST_END -> patternEndM;
        };
    }

    private double toM(double patternEndM) {
        return switch (this) {
            case HEADS -> LaneGeometry.HEADS_END_M;
            case MID_LANE -> patternEndM;
            case PAST_END -> LaneGeometry.HEAD_PIN_M;
        };
    }

    /**
     * A lane on which this stretch is as it was laid, and all else as it is.
     *
     * @param worn the lane as it is; it stays so
     * @param laid the same lane as it was laid, on the same grid
     * @param patternEndM where the pattern ends (m), above {@link LaneGeometry#HEADS_END_M}
     * @return a film of its own
     */
    public OilFilm madeFresh(OilFilm worn, OilFilm laid, double patternEndM) {
        OilFilm film = worn.copy();
        int rows = film.grid().rows();
        int first = rowAt(film, fromM(patternEndM));
        int count = rowAt(film, toM(patternEndM)) - first;
        for (int column = 0; column < film.grid().columns(); column++) {
            int from = column * rows + first;
            System.arraycopy(laid.cellsUm(), from, film.cellsUm(), from, count);
        }
        return film;
    }

    /** The first row whose middle lies past a distance. */
    private static int rowAt(OilFilm film, double distanceM) {
        return (int) Math.rint(distanceM / film.grid().rowLengthM());
    }
}
