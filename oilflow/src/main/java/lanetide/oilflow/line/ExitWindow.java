package lanetide.oilflow.line;

/**
 * Where a player can leave the pattern and still strike. Boards are counted from the gutter on the delivery side.
 *
 * @param lowBoard outermost exit board of the lines at least {@link LineFinder#GOOD_SHARE} times as good as the best
 * @param highBoard innermost such board
 * @param bestBoard exit board of the line the player would choose
 * @param best that line: of the good ones the nearest to the angle he plays
 * @param played the line that moving by two and one has brought him to
 * @param strikeShare share of strikes on the best line, over the scatter of the player's release
 */
public record ExitWindow(
        double lowBoard, double highBoard, double bestBoard, Line best, Line played, double strikeShare) {}
