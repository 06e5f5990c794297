package lanetide.squads.measured;

import java.util.List;

/**
 * All that was measured at an event, in the order in which it stands.
 *
 * @param tapes what tapes read
 * @param balls balls that somebody followed to the pins
 * @param scores scores by bowler and game
 * @param ends when games were done
 */
public record Measurements(
        List<TapeTaken> tapes, List<BallThrown> balls, List<ScoreMade> scores, List<GameEnded> ends) {
    /** Nothing was measured. */
    public static final Measurements NONE = new Measurements(List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public Measurements {
        tapes = List.copyOf(tapes);
        balls = List.copyOf(balls);
        scores = List.copyOf(scores);
        ends = List.copyOf(ends);
    }

    /**
     * Whether nothing was measured.
     *
     * @return true if all lists are empty
     */
    public boolean isEmpty() {
        return tapes.isEmpty() && balls.isEmpty() && scores.isEmpty() && ends.isEmpty();
    }
}
