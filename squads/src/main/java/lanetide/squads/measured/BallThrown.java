package lanetide.squads.measured;

import java.util.OptionalDouble;
import lanetide.oilflow.Require;

/**
 * A ball of which somebody noted where it was laid down, where it crossed the arrows and where it met the pins.
 *
 * @param lane lane number
 * @param when when it was thrown, to the game
 * @param bowler name of the bowler in the squad
 * @param laydownBoard board it was laid down on, from the gutter on the bowler's side
 * @param arrowsBoard board at the arrows, counted alike
 * @param pinsBoard board where it met the pins, counted alike
 * @param speedMps its speed when it left the hand (m/s); empty if nobody measured it
 * @param spinRadps how fast it turned (rad/s); empty if nobody measured it
 * @param errorBoards error of the board at the pins (boards, standard deviation) as somebody sees it, above 0
 * @param place where it stands, for what is said of it
 */
public record BallThrown(
        int lane,
        When when,
        String bowler,
        double laydownBoard,
        double arrowsBoard,
        double pinsBoard,
        OptionalDouble speedMps,
        OptionalDouble spinRadps,
        double errorBoards,
        String place) {
    /** Error of a board at the pins where none is stated (standard deviation): assumption, no source found. */
    public static final double USUAL_ERROR_BOARDS = 0.5;

    /**
     * Checks the error.
     *
     * @throws IllegalArgumentException if not {@code errorBoards > 0}
     */
    public BallThrown {
        Require.named(bowler, "bowler");
        Require.positive(errorBoards, "error of a board at the pins");
    }
}
