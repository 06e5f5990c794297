package lanetide.oilflow.line;

import lanetide.oilflow.lane.LaneGeometry;

/**
 * A line as a bowler plays it. Boards are counted from the gutter on the delivery side.
 *
 * @param laydownBoard where the ball touches down
 * @param launchRad launch angle (rad), positive toward that gutter
 */
public record Line(double laydownBoard, double launchRad) {
    /**
     * Where the line crosses the arrows.
     *
     * @return board at the arrows, before the ball has hooked
     */
    public double arrowsBoard() {
        return laydownBoard - StrictMath.tan(launchRad) * LaneGeometry.ARROWS_M / LaneGeometry.BOARD_M;
    }

    /**
     * The trade's move: the feet by some boards, the target at the arrows by half as many (common practice, no source).
     *
     * @param feetBoards boards to move the feet, positive away from the delivery side's gutter
     * @return the line after the move
     */
    public Line moved(double feetBoards) {
        return through(laydownBoard + feetBoards, arrowsBoard() + feetBoards / 2);
    }

    /** The way of a shot laid down as meant that misses its board at the arrows, inward if the miss is above 0. */
    Line missed(double inwardBoards) {
        return through(laydownBoard, arrowsBoard() + inwardBoards);
    }

    /**
     * The line through two boards.
     *
     * @param laydownBoard board at the foul line
     * @param arrowsBoard board at the arrows
     * @return the line
     */
    public static Line through(double laydownBoard, double arrowsBoard) {
        double acrossM = (laydownBoard - arrowsBoard) * LaneGeometry.BOARD_M;
        return new Line(laydownBoard, StrictMath.atan(acrossM / LaneGeometry.ARROWS_M));
    }
}
