package lanetide.squads.fairness;

/**
 * One round: the same luck, met in several seatings, in the draw as it is, and on lanes that do not change. Scores are
 * means (pins a game), by bowler.
 *
 * @param seats the seats, and who came
 * @param bowlerAtSeat who sits in each seat, by seating
 * @param scores by seating, then by bowler
 * @param asDrawn with everybody in the seat he is drawn into
 * @param unchanging in the first seating, on lanes that stay as they are laid
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Round(Seats seats, int[][] bowlerAtSeat, double[][] scores, double[] asDrawn, double[] unchanging) {
    int seatings() {
        return bowlerAtSeat.length;
    }

    /**
     * How far a bowler's score in one seating lies above his mean over all of them. Differences are taken first, so
     * that equal scores give zero and not a rounding error.
     */
    double aboveOwnMean(int bowler, int seating) {
        return above(scores[seating][bowler], bowler);
    }

    /** How far a score of a bowler lies above his mean over the seatings. */
    double above(double score, int bowler) {
        double sum = 0;
        for (double[] other : scores) {
            sum += score - other[bowler];
        }
        return sum / seatings();
    }
}
