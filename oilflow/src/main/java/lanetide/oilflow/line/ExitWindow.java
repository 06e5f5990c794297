package lanetide.oilflow.line;

/**
 * Where a player can leave the pattern and still strike. Boards are counted from the gutter on the delivery side.
 *
 * @param lowBoard outermost exit board of the lines at least {@link LineFinder#GOOD_SHARE} times as good as the best
 * @param highBoard innermost such board
 * @param bestBoard exit board of the line the player would choose
 * @param best that line
 * @param quality how good it is
 */
public record ExitWindow(double lowBoard, double highBoard, double bestBoard, Line best, LineQuality quality) {}
