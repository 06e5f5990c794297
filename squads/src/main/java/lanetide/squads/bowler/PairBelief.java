package lanetide.squads.bowler;

/**
 * What a bowler believes of the two lanes of his pair: by how many boards his line misses on each, by how many boards
 * the misses drift from one of his rounds (a ball on either lane) to the next, and by how many boards the others on the
 * pair need to move further than he.
 *
 * <p>A Kalman filter (R. E. Kalman, Journal of Basic Engineering 82, 1960): four jointly normal unknowns, of which the
 * drift is common to both lanes, because the same balls run over both, and the others' difference too. A ball on one
 * lane teaches about the other by their covariance. Who never watches others keeps what he assumed of their difference,
 * and the other three are as if it were not there.
 */
final class PairBelief {
    /** Standard deviation of the miss of a line on a lane that is new to him (boards; assumption). */
    private static final double NEW_LANE_BOARDS = 0.5;

    /** Correlation of the misses on the two lanes of a new pair (assumption). */
    private static final double LANES_ALIKE = 0.7;

    /** The same two for a ball that he takes out of his bag on worn lanes (assumptions). */
    private static final double NEW_BALL_BOARDS = 3;

    private static final double NEW_BALL_ALIKE = 0.9;

    /** The same for what others' balls have done to both lanes (assumption). */
    private static final double WEAR_ALIKE = 0.9;

    /** Change of a lane beside the drift, in a round (boards; assumption). */
    private static final double UNSTEADY_BOARDS = 0.1;

    /** How much the drift itself changes in a round (boards a round; assumption). */
    private static final double DRIFT_CHANGE_BOARDS = 0.01;

    /** Rounds in a game: eleven or twelve balls at full racks on two lanes. */
    private static final double ROUNDS_PER_GAME = 6;

    /** Standard deviation of the difference of the others' moves before he has seen any (boards; assumption). */
    private static final double OTHERS_DIFFER_BOARDS = 1;

    /** How much that difference changes in a round (boards; assumption). */
    private static final double OTHERS_CHANGE_BOARDS = 0.15;

    private static final int DRIFT = 2;
    private static final int OTHERS = 3;
    private static final int UNKNOWNS = 4;

    private final double[] mean = new double[UNKNOWNS];
    private final double[][] covariance = new double[UNKNOWNS][UNKNOWNS];

    /** Expects a drift of so many boards a game, and may be wrong by so many (standard deviation). */
    PairBelief(double driftBoardsPerGame, double deeperBoardsPerGame) {
        double perRound = driftBoardsPerGame / ROUNDS_PER_GAME;
        mean[DRIFT] = deeperBoardsPerGame / ROUNDS_PER_GAME;
        covariance[DRIFT][DRIFT] = perRound * perRound;
        covariance[OTHERS][OTHERS] = OTHERS_DIFFER_BOARDS * OTHERS_DIFFER_BOARDS;
        comeToNewLanes(0);
    }

    /** Believed miss of his line on a lane (boards). */
    double miss(int side) {
        return mean[side];
    }

    /** He has moved on a lane and expects the miss to change by so much. */
    void moved(int side, double boards) {
        mean[side] -= boards;
    }

    /** Other lanes: he expects the miss he had on these, is less sure of it, and keeps what he thinks of the drift. */
    void moveOn() {
        comeToNewLanes((mean[0] + mean[1]) / 2);
    }

    /**
     * Another ball: he expects no miss, but may be well off, on both lanes alike; what he thinks of the drift and of
     * the others he keeps.
     */
    void otherBall() {
        start(0, NEW_BALL_BOARDS, NEW_BALL_ALIKE);
    }

    /** Others have played on these lanes: both are off by so many boards more, give or take (standard deviation). */
    void reckonWith(double boards, double deviationBoards) {
        mean[0] += boards;
        mean[1] += boards;
        double variance = deviationBoards * deviationBoards;
        covariance[0][0] += variance;
        covariance[1][1] += variance;
        link(0, 1, covariance[0][1] + WEAR_ALIKE * variance);
    }

    /**
     * Learns from a ball of his own, half a round after the one before.
     *
     * @param side lane 0 or 1
     * @param missBoards what the ball says of the line's miss
     * @param variance variance of that (square boards)
     */
    void see(int side, double missBoards, double variance) {
        passHalfARound();
        hear(side, missBoards, variance);
    }

    /**
     * Takes in what is said of a lane by others than those he bowls with.
     *
     * @param side lane 0 or 1
     * @param missBoards by how much his line misses there
     * @param variance variance of that (square boards)
     */
    void hear(int side, double missBoards, double variance) {
        double[] crossCovariance = new double[UNKNOWNS];
        for (int i = 0; i < UNKNOWNS; i++) {
            crossCovariance[i] = covariance[i][side];
        }
        learn(crossCovariance, missBoards - mean[side], crossCovariance[side] + variance);
    }

    /**
     * Learns from the ball of another on his pair.
     *
     * @param side lane 0 or 1
     * @param moveBoards by how much further in than he does the other should stand
     * @param variance variance of that (square boards)
     */
    void watch(int side, double moveBoards, double variance) {
        double[] crossCovariance = new double[UNKNOWNS];
        for (int i = 0; i < UNKNOWNS; i++) {
            crossCovariance[i] = covariance[i][side] + covariance[i][OTHERS];
        }
        double innovationVariance = crossCovariance[side] + crossCovariance[OTHERS] + variance;
        learn(crossCovariance, moveBoards - mean[side] - mean[OTHERS], innovationVariance);
    }

    private void learn(double[] crossCovariance, double innovation, double innovationVariance) {
        if (innovationVariance == 0) {
            return;
        }
        for (int i = 0; i < UNKNOWNS; i++) {
            mean[i] += crossCovariance[i] / innovationVariance * innovation;
            for (int j = 0; j < UNKNOWNS; j++) {
                covariance[i][j] -= crossCovariance[i] * crossCovariance[j] / innovationVariance;
            }
        }
    }

    private void passHalfARound() {
        double drift = covariance[DRIFT][DRIFT];
        double leftDrift = covariance[0][DRIFT];
        double rightDrift = covariance[1][DRIFT];
        double unsteady = UNSTEADY_BOARDS * UNSTEADY_BOARDS / 2;
        mean[0] += mean[DRIFT] / 2;
        mean[1] += mean[DRIFT] / 2;
        covariance[0][0] += leftDrift + drift / 4 + unsteady;
        covariance[1][1] += rightDrift + drift / 4 + unsteady;
        link(0, 1, covariance[0][1] + (leftDrift + rightDrift) / 2 + drift / 4);
        link(0, DRIFT, leftDrift + drift / 2);
        link(1, DRIFT, rightDrift + drift / 2);
        double othersDrift = covariance[OTHERS][DRIFT];
        link(0, OTHERS, covariance[0][OTHERS] + othersDrift / 2);
        link(1, OTHERS, covariance[1][OTHERS] + othersDrift / 2);
        covariance[OTHERS][OTHERS] += OTHERS_CHANGE_BOARDS * OTHERS_CHANGE_BOARDS / 2;
        covariance[DRIFT][DRIFT] += DRIFT_CHANGE_BOARDS * DRIFT_CHANGE_BOARDS / 2;
    }

    private void comeToNewLanes(double missBoards) {
        start(missBoards, NEW_LANE_BOARDS, LANES_ALIKE);
    }

    private void start(double missBoards, double deviationBoards, double alike) {
        double variance = deviationBoards * deviationBoards;
        mean[0] = missBoards;
        mean[1] = missBoards;
        covariance[0][0] = variance;
        covariance[1][1] = variance;
        link(0, 1, alike * variance);
        link(0, DRIFT, 0);
        link(1, DRIFT, 0);
        link(0, OTHERS, 0);
        link(1, OTHERS, 0);
    }

    private void link(int i, int j, double value) {
        covariance[i][j] = value;
        covariance[j][i] = value;
    }
}
