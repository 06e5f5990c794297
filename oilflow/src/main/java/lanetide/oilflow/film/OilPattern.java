package lanetide.oilflow.film;

import java.util.Locale;
import lanetide.oilflow.Require;

/**
 * An oil pattern by what its sheet states and an inspector can measure.
 *
 * <p>Across the lane the film is flat outside {@code taperFromBoard}, rises in a straight line to {@code taperToBoard} and
 * is flat inside, alike from both gutters. Along the lane it falls as {@code floor + (1 - floor)(1 - y/L)^decay}. The
 * ratio is the mean of the middle five boards over the mean of boards 3 to 7 (USBC, sport bowling rule as published in
 * 2005).
 *
 * @param id name by which scenarios choose it
 * @param lengthM where the oil ends (m from the foul line), 6 to 17.7 (58 ft)
 * @param volumeMl oil on one lane (mL), above 0 to 60
 * @param ratio inside over outside, 1 to 14
 * @param taperFromBoard board at which the film starts to rise, 2 to 12
 * @param taperToBoard board from which it is flat, above {@code taperFromBoard} to 17
 * @param decay exponent of the fall along the lane, 0 to 6
 * @param floor share of the foul-line film that is left at the end of the pattern, 0 to 1
 */
public record OilPattern(
        String id,
        double lengthM,
        double volumeMl,
        double ratio,
        double taperFromBoard,
        double taperToBoard,
        double decay,
        double floor) {
    /** Board at which the film of most published patterns starts to rise. */
    public static final double USUAL_TAPER_FROM_BOARD = 5;

    /** Board from which it is flat. */
    public static final double USUAL_TAPER_TO_BOARD = 14;

    /** Exponent of the lengthwise fall that fits the length rule best (chosen, not measured: see the module's README). */
    public static final double USUAL_DECAY = 1.2;

    /** Share left at the pattern's end that fits the length rule best (chosen, not measured). */
    public static final double USUAL_FLOOR = 0.25;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range, or if the taper leaves no oil outside that
     *     would give the ratio
     */
    public OilPattern {
        Require.named(id, "pattern");
        Require.inRange(lengthM, "length (m) of pattern " + id, 6, 17.7);
        Require.inRange(
                Require.positive(volumeMl, "volume (mL) of pattern " + id), "volume (mL) of pattern " + id, 0, 60);
        Require.inRange(ratio, "ratio of pattern " + id, 1, 14);
        Require.inRange(taperFromBoard, "start of the taper (board) of pattern " + id, 2, 12);
        Require.inRange(taperToBoard, "end of the taper (board) of pattern " + id, taperFromBoard + 0.5, 17);
        Require.inRange(decay, "decay of pattern " + id, 0, 6);
        Require.inRange(floor, "floor of pattern " + id, 0, 1);
        outsideShare(ratio, taperFromBoard, taperToBoard);
    }

    /**
     * A pattern with the usual taper and lengthwise shape.
     *
     * @param id its name
     * @param lengthM length (m)
     * @param volumeMl volume (mL)
     * @param ratio ratio
     * @return the pattern
     */
    public static OilPattern of(String id, double lengthM, double volumeMl, double ratio) {
        return new OilPattern(
                id, lengthM, volumeMl, ratio, USUAL_TAPER_FROM_BOARD, USUAL_TAPER_TO_BOARD, USUAL_DECAY, USUAL_FLOOR);
    }

    /**
     * Film across the lane, relative to the middle.
     *
     * @param board board number from either gutter, fractions allowed
     * @return share of the middle's film, above 0 to 1
     */
    public double acrossShare(double board) {
        double fromGutter = Math.min(board, 40 - board);
        double outside = outsideShare(ratio, taperFromBoard, taperToBoard);
        double rise = (fromGutter - taperFromBoard) / (taperToBoard - taperFromBoard);
        return outside + (1 - outside) * Math.max(0, Math.min(1, rise));
    }

    /**
     * Film along the lane, relative to the foul line.
     *
     * @param distanceM distance from the foul line (m)
     * @return share of the foul line's film; 0 past the end
     */
    public double alongShare(double distanceM) {
        if (distanceM > lengthM) {
            return 0;
        }
        return floor + (1 - floor) * StrictMath.pow(1 - distanceM / lengthM, decay);
    }

    /** Solves "mean share of boards 3 to 7 = 1/ratio" for the flat outside share: that mean is linear in it. */
    private static double outsideShare(double ratio, double taperFrom, double taperTo) {
        double meanRise = 0;
        for (int board = 3; board <= 7; board++) {
            meanRise += Math.max(0, Math.min(1, (board - taperFrom) / (taperTo - taperFrom))) / 5;
        }
        double outside = (1 / ratio - meanRise) / (1 - meanRise);
        if (!(outside >= 0)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "ratio is %s, but a taper from board %s to %s leaves at most %.2f; start the taper further in",
                    ratio,
                    taperFrom,
                    taperTo,
                    1 / meanRise));
        }
        return outside;
    }
}
