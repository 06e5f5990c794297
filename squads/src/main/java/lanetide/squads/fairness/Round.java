package lanetide.squads.fairness;

/** One round: the same luck, met in several seatings, in the draw as it is, and on lanes that do not change. */
final class Round {
    private final int[][] bowlerAtSeat;
    private final double[][] scores;
    private final double[] asDrawn;
    private final double[] unchanging;

    /**
     * A round. Scores are means (pins a game), by bowler.
     *
     * @param bowlerAtSeat who sits in each seat, by seating
     * @param scores by seating, then by bowler
     * @param asDrawn with everybody in the seat he is drawn into
     * @param unchanging in the first seating, on lanes that stay as they are laid
     */
    Round(int[][] bowlerAtSeat, double[][] scores, double[] asDrawn, double[] unchanging) {
        this.bowlerAtSeat = bowlerAtSeat;
        this.scores = scores;
        this.asDrawn = asDrawn;
        this.unchanging = unchanging;
    }

    int[][] bowlerAtSeat() {
        return bowlerAtSeat;
    }

    double[] asDrawn() {
        return asDrawn;
    }

    double[] unchanging() {
        return unchanging;
    }

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
