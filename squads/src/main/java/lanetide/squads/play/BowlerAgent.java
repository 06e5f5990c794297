package lanetide.squads.play;

import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Adaptation;

/**
 * How a bowler chooses his line. He knows no more than a bowler can: the line he meant to play, how far his ball missed it
 * at the arrows by his release alone, and, with an error, where it met the pins. What he learns is kept per lane.
 *
 * <p>After each ball at a full rack he updates a running belief of his miss on that lane. He allows for what his own release
 * did to the ball, and a ball that missed its arrow widely teaches little. When the belief leaves the dead band he moves as many
 * boards with the feet as he believes he misses, half as many at the arrows (common practice, no source).
 */
final class BowlerAgent {
    /**
     * Boards at the pins that he puts down to himself for each board his release missed the arrow by. A miss at the arrows comes
     * half from the laydown, which moves the hit by about as much, and half from the angle, which moves it by three to four
     * times as much (assumption: bowlers know this from experience).
     */
    private static final double OWN_FAULT_AT_PINS = 2;

    /** A shot this many boards off at the arrows counts for exp(-1/2) of a good one (assumption). */
    private static final double POOR_SHOT_BOARDS = 1;

    private static final double OUTERMOST_LAYDOWN = 2;
    private static final double INNERMOST_LAYDOWN = 38;
    private static final double OUTERMOST_ARROW = 1;
    private static final double INNERMOST_ARROW = 34;

    private final Adaptation adaptation;
    private final Map<Integer, OnLane> lanes = new LinkedHashMap<>();
    private Line start;

    BowlerAgent(Adaptation adaptation, Line start) {
        this.adaptation = adaptation;
        this.start = start;
    }

    /** The line he means to play on a lane. */
    Line line(int lane) {
        return onLane(lane).line;
    }

    /** Goes to another pair: he starts there from the middle of the lines he last played. */
    void moveOn() {
        if (lanes.isEmpty()) {
            return;
        }
        double laydown = 0;
        double arrows = 0;
        for (OnLane here : lanes.values()) {
            laydown += here.line.laydownBoard() / lanes.size();
            arrows += here.line.arrowsBoard() / lanes.size();
        }
        start = Line.through(laydown, arrows);
        lanes.clear();
    }

    /**
     * Learns from a ball at a full rack and moves if he must.
     *
     * @param lane lane it was thrown on
     * @param seenArrivalBoard where he thinks it met the pins
     * @param missAtArrowsBoards how far his release missed the arrow; the ball's own early hook is none of his faults
     */
    void learn(int lane, double seenArrivalBoard, double missAtArrowsBoards) {
        OnLane here = onLane(lane);
        double poor = missAtArrowsBoards / POOR_SHOT_BOARDS;
        double trust = StrictMath.exp(-poor * poor / 2);
        double rate = Math.min(1, 2 / (adaptation.memoryShots() + 1)) * trust;
        double miss = seenArrivalBoard - PinCarry.POCKET_BOARD - OWN_FAULT_AT_PINS * missAtArrowsBoards;
        here.belief += rate * (miss - here.belief);
        if (Math.abs(here.belief) > adaptation.deadBandBoards()) {
            move(here, adaptation.gain() * here.belief);
        }
    }

    private OnLane onLane(int lane) {
        return lanes.computeIfAbsent(lane, key -> new OnLane(start));
    }

    /** Moves by whole and half boards, as far as the lane lets him, and expects the miss to shrink by as much. */
    private static void move(OnLane here, double boards) {
        double feet = Math.rint(boards * 2) / 2;
        Line moved = here.line.moved(feet);
        boolean onLane = moved.laydownBoard() >= OUTERMOST_LAYDOWN
                && moved.laydownBoard() <= INNERMOST_LAYDOWN
                && moved.arrowsBoard() >= OUTERMOST_ARROW
                && moved.arrowsBoard() <= INNERMOST_ARROW;
        if (onLane) {
            here.line = moved;
            here.belief -= feet;
        }
    }

    private static final class OnLane {
        private Line line;
        private double belief;

        OnLane(Line line) {
            this.line = line;
        }
    }
}
