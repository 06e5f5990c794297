package lanetide.oilflow.motion;

import lanetide.oilflow.ball.BallSpec;

/**
 * Oil on the strip of a ball that runs over the lane during one shot.
 *
 * <p>The track is a thread unrolled row by row. A point of it meets the lane again one turn later; by then the flare
 * has moved it aside, so that only the overlapping share of what it carries is met. The rest of the contact is surface
 * that has not touched the lane in this shot and carries the oil left from earlier ones, as far as that reaches.
 */
final class BallTrack {
    private final double rowM;
    private final double rowsPerM;
    /** Length of track that has run over the lane at each row's start (m). */
    private final double[] lengthM;
    /** Oil on that length (um m). */
    private final double[] oil;
    /** Film laid on the track in each row (um). */
    private final double[] filmUm;

    private double oneTurnM;
    private double overlap;
    private double oldFilmUm;
    private double oldTrackM;
    private double metOil;
    private int metRow;

    BallTrack(int rows, double rowM) {
        this.rowM = rowM;
        this.rowsPerM = 1 / rowM;
        this.lengthM = new double[rows + 2];
        this.oil = new double[rows + 2];
        this.filmUm = new double[rows + 2];
    }

    /** Starts a shot with what the ball carries from earlier ones (mL), spread over the strips it has run on. */
    void begin(BallSpec ball, double oilMl) {
        oneTurnM = ball.turnM();
        overlap = ball.cover().flareOverlap();
        oldFilmUm = oilMl / ball.tracksM2();
        oldTrackM = BallSpec.MAX_REVOLUTIONS * oneTurnM;
        lengthM[0] = 0;
        oil[0] = 0;
        metOil = -oneTurnM * oldFilmUm;
        metRow = 0;
    }

    /**
     * Oil that the ball brings to a row, for each length of lane (um), when its surface runs at a ratio of its speed.
     */
    double broughtUm(int row, double ratio) {
        double endM = lengthM[row] + ratio * rowM;
        lengthM[row + 1] = endM;
        double metM = endM - oneTurnM;
        while (lengthM[metRow + 1] <= metM && metRow + 1 < row) {
            metRow++;
        }
        double metOilNow = metM <= 0 ? metM * oldFilmUm : oil[metRow] + filmUm[metRow] * (metM - lengthM[metRow]);
        double old = endM <= oldTrackM ? (1 - overlap) * oldFilmUm * ratio : 0;
        double brought = overlap * (metOilNow - metOil) * rowsPerM + old;
        metOil = metOilNow;
        return brought;
    }

    /** Books what the ball carries away from a row, for each length of lane (um). */
    void carriedAway(int row, double carriedUm, double ratio) {
        oil[row + 1] = oil[row] + carriedUm * rowM;
        filmUm[row] = ratio > 0 ? carriedUm / ratio : 0;
    }
}
