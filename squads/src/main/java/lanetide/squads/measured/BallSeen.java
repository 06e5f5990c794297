package lanetide.squads.measured;

import java.util.Optional;
import java.util.OptionalDouble;
import lanetide.oilflow.Require;
import lanetide.oilflow.lane.LaneGeometry;

/**
 * What somebody saw of a ball's way down the lane. Boards are counted from the gutter on the bowler's side; what nobody
 * looked at is empty.
 *
 * @param laydownBoard board it was laid down on
 * @param arrowsBoard board at the arrows
 * @param passed where it passed a distance that somebody watched
 * @param pinsBoard board where it met the pins
 * @param errorBoards error of a board past the arrows (boards, standard deviation) as somebody sees it, above 0
 */
public record BallSeen(
        OptionalDouble laydownBoard,
        OptionalDouble arrowsBoard,
        Optional<Passed> passed,
        OptionalDouble pinsBoard,
        double errorBoards) {
    /** Error of a board past the arrows where none is stated (standard deviation): assumption, no source found. */
    public static final double USUAL_ERROR_BOARDS = 0.5;

    /**
     * Checks the error.
     *
     * @throws IllegalArgumentException if not {@code errorBoards > 0}
     */
    public BallSeen {
        Require.positive(errorBoards, "error of a board of a ball");
    }

    /**
     * Where a ball passed a distance.
     *
     * @param distanceM distance from the foul line (m), 0 to the head pin
     * @param board the board there
     */
    public record Passed(double distanceM, double board) {
        /**
         * Checks the distance.
         *
         * @throws IllegalArgumentException if {@code distanceM} is not from 0 to {@link LaneGeometry#HEAD_PIN_M}
         */
        public Passed {
            Require.inRange(distanceM, "distance at which a ball was seen (m)", 0, LaneGeometry.HEAD_PIN_M);
        }
    }

    /**
     * Whether somebody saw where its line took it.
     *
     * @return true if a board past the arrows is known
     */
    public boolean tellsItsWay() {
        return passed.isPresent() || pinsBoard.isPresent();
    }
}
