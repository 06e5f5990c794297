package lanetide.squads.model;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.lane.Hand;

/**
 * One bowler.
 *
 * @param id name, alone in the squad
 * @param hand delivery side
 * @param style how he throws
 * @param level how good he is
 * @param cover shell of the ball he throws at full racks
 * @param spareCover shell of the ball he throws at spares
 * @param tempo time he takes over his shots, as a share of the usual, 0.2 (in a hurry) to 5 (very slow)
 */
public record Bowler(
        String id, Hand hand, PlayingStyle style, Level level, Coverstock cover, Coverstock spareCover, double tempo) {
    /** The tempo of a bowler of whom nothing else is known. */
    public static final double USUAL_TEMPO = 1;

    /**
     * Checks the name and the tempo.
     *
     * @throws IllegalArgumentException if {@code id} is blank or {@code tempo} lies outside its range
     */
    public Bowler {
        Require.named(id, "bowler");
        Require.inRange(tempo, "tempo of bowler " + id, 0.2, 5);
    }

    /**
     * A bowler who takes the usual time over his shots.
     *
     * @param id name, alone in the squad
     * @param hand delivery side
     * @param style how he throws
     * @param level how good he is
     * @param cover shell of the ball he throws at full racks
     * @param spareCover shell of the ball he throws at spares
     */
    public Bowler(String id, Hand hand, PlayingStyle style, Level level, Coverstock cover, Coverstock spareCover) {
        this(id, hand, style, level, cover, spareCover, USUAL_TEMPO);
    }
}
