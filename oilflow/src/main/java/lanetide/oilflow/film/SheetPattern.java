package lanetide.oilflow.film;

import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.Require;
import lanetide.oilflow.lane.Hand;

/**
 * An oil pattern by what its sheet states and an inspector can measure: length, volume, ratio, tapers, and how it falls
 * along the lane.
 *
 * @param id name by which scenarios choose it
 * @param lengthM where the oil ends (m from the foul line), 6 to 17.7 (58 ft)
 * @param volumeMl oil on one lane (mL), above 0 to 60
 * @param right the half at the right-hand gutter
 * @param left the half at the left-hand gutter
 * @param along the shape along the lane; its applied oil ends at {@code lengthM} at the latest
 */
public record SheetPattern(
        String id, double lengthM, double volumeMl, AcrossShape right, AcrossShape left, AlongShape along)
        implements OilPattern {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public SheetPattern {
        Require.named(id, "pattern");
        Require.inRange(lengthM, "length (m) of pattern " + id, MIN_LENGTH_M, MAX_LENGTH_M);
        Require.inRange(
                Require.positive(volumeMl, "volume (mL) of pattern " + id), "volume (mL) of pattern " + id, 0, MAX_ML);
        Require.inRange(along.appliedToM(), "end of the applied oil (m) of pattern " + id, 0, lengthM);
    }

    /**
     * The same pattern with another fall along the lane, nothing buffed.
     *
     * @param decay exponent of the fall, 0 to 6
     * @param floor share of the foul-line film left at the end, 0 to 1
     * @return the pattern
     */
    public SheetPattern falling(double decay, double floor) {
        return new SheetPattern(id, lengthM, volumeMl, right, left, AlongShape.unbuffed(decay, floor, lengthM));
    }

    /**
     * Whether it falls along the lane as patterns do of which only length, volume and ratio are known.
     *
     * @return true if its fall is the usual one
     */
    public boolean fallsAsUsual() {
        return along.equals(AlongShape.unbuffed(DEFAULT_DECAY, DEFAULT_FLOOR, lengthM));
    }

    /**
     * The ratio over both sides: the middle over the mean of both outsides.
     *
     * @return the stated ratio; for sides that differ, their harmonic mean
     */
    public double ratio() {
        return isSymmetric() ? right.ratio() : 2 / (1 / right.ratio() + 1 / left.ratio());
    }

    /**
     * The film across the lane, the same at every distance but for a share.
     *
     * @return the film by gutter and board, relative to the middle
     */
    AcrossFilm across() {
        DoubleUnaryOperator ofRight = right.profile();
        DoubleUnaryOperator ofLeft = left.profile();
        return (gutter, board) -> (gutter == Hand.RIGHT ? ofRight : ofLeft).applyAsDouble(board);
    }

    @Override
    public double flatFromBoard(Hand gutter) {
        return (gutter == Hand.RIGHT ? right : left).taperToBoard();
    }

    @Override
    public boolean isSymmetric() {
        return right.equals(left);
    }
}
