package lanetide.squads.bowler;

import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.oilflow.line.Line;

/** The lines a bowler plays on the lanes of his pair. */
public final class PlayedLines {
    private static final double OUTERMOST_LAYDOWN = 2;
    private static final double INNERMOST_LAYDOWN = 38;
    private static final double OUTERMOST_ARROW = 1;
    private static final double INNERMOST_ARROW = 34;

    private final Map<Integer, Line> lines = new LinkedHashMap<>();
    private Line start;

    /**
     * Nothing played yet.
     *
     * @param start the line he starts with
     */
    public PlayedLines(Line start) {
        this.start = start;
    }

    /**
     * The line on a lane.
     *
     * @param lane lane number
     * @return the line he plays there; on a lane new to him the one he starts with
     */
    public Line on(int lane) {
        Line played = lines.get(lane);
        if (played == null) {
            lines.put(lane, start);
            return start;
        }
        return played;
    }

    /**
     * Goes over to another line.
     *
     * @param lane lane number
     * @param line the line he plays there from now on
     */
    public void play(int lane, Line line) {
        lines.put(lane, line);
    }

    /** Goes over by as much as two lines differ; where that is not on the lane, to the second of them. */
    void shift(Line from, Line to) {
        double feet = to.laydownBoard() - from.laydownBoard();
        double target = to.arrowsBoard() - from.arrowsBoard();
        start = shifted(start, feet, target, to);
        lines.replaceAll((lane, line) -> shifted(line, feet, target, to));
    }

    private static Line shifted(Line line, double feet, double target, Line otherwise) {
        Line shifted = Line.through(line.laydownBoard() + feet, line.arrowsBoard() + target);
        return isPlayable(shifted) ? shifted : otherwise;
    }

    /** Whether a bowler can stand and aim like this. */
    static boolean isPlayable(Line line) {
        return line.laydownBoard() >= OUTERMOST_LAYDOWN
                && line.laydownBoard() <= INNERMOST_LAYDOWN
                && line.arrowsBoard() >= OUTERMOST_ARROW
                && line.arrowsBoard() <= INNERMOST_ARROW;
    }

    /** Leaves these lanes; he starts on the next from the middle of the lines he played here. */
    public void moveOn() {
        if (lines.isEmpty()) {
            return;
        }
        double laydown = 0;
        double arrows = 0;
        for (Line line : lines.values()) {
            laydown += line.laydownBoard() / lines.size();
            arrows += line.arrowsBoard() / lines.size();
        }
        start = Line.through(laydown, arrows);
        lines.clear();
    }
}
