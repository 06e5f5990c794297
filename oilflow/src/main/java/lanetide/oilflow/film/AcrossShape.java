package lanetide.oilflow.film;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.Require;

/**
 * One half of a pattern across the lane: flat outside {@code taperFromBoard}, rising in a straight line to
 * {@code taperToBoard}, flat inside. The ratio is the mean of the middle five boards over the mean of boards 3 to 7
 * (USBC, sport bowling rule as published in 2005), each board taken over its whole width, as a tape reads it.
 *
 * @param ratio inside over outside, 1 to 14
 * @param taperFromBoard board from the gutter at which the film starts to rise, 2 to 12
 * @param taperToBoard board from the gutter from which it is flat, {@code taperFromBoard + 0.5} to 17
 */
public record AcrossShape(double ratio, double taperFromBoard, double taperToBoard) {
    /** The innermost board at which a taper may end. */
    public static final double MAX_TAPER_TO_BOARD = 17;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range, or if the taper leaves no oil outside that
     *     would give the ratio
     */
    public AcrossShape {
        Require.inRange(ratio, "ratio", 1, 14);
        Require.inRange(taperFromBoard, "start of the taper (board)", 2, 12);
        Require.inRange(taperToBoard, "end of the taper (board)", taperFromBoard + 0.5, MAX_TAPER_TO_BOARD);
        outsideShare(ratio, taperFromBoard, taperToBoard);
    }

    /**
     * The shape of most patterns of such a ratio and length.
     *
     * @param ratio inside over outside, 1 to 14
     * @param lengthM where the oil ends (m from the foul line)
     * @return the shape
     * @throws IllegalArgumentException if {@code ratio} lies outside its range
     */
    public static AcrossShape usual(double ratio, double lengthM) {
        Require.inRange(ratio, "ratio", 1, 14);
        double fromBoard = UsualTaper.fromBoard(ratio, lengthM);
        return new AcrossShape(ratio, fromBoard, fromBoard + UsualTaper.boards(ratio));
    }

    /**
     * The shape as a function.
     *
     * @return film relative to the middle, by board from the gutter
     */
    public DoubleUnaryOperator profile() {
        double outside = outsideShare(ratio, taperFromBoard, taperToBoard);
        return board -> outside + (1 - outside) * rise(board, taperFromBoard, taperToBoard);
    }

    private static double rise(double board, double from, double to) {
        return Math.max(0, Math.min(1, (board - from) / (to - from)));
    }

    /** Solves "mean share of boards 3 to 7 = 1/ratio" for the flat outside share: that mean is linear in it. */
    private static double outsideShare(double ratio, double from, double to) {
        double meanRise = (riseUpTo(7.5, from, to) - riseUpTo(2.5, from, to)) / 5;
        double outside = (1 / ratio - meanRise) / (1 - meanRise);
        if (!(outside >= 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "ratio is %s, but a taper from board %s to %s leaves at most %.2f; start the taper further in",
                    ratio,
                    from,
                    to,
                    Math.floor(100 / meanRise) / 100));
        }
        return outside;
    }

    /** Area under the rise from the gutter to a board. */
    private static double riseUpTo(double board, double from, double to) {
        double onTaper = Math.max(0, Math.min(board, to) - from);
        return onTaper * onTaper / (2 * (to - from)) + Math.max(0, board - to);
    }
}
