package lanetide.oilflow.film;

import java.util.Locale;
import lanetide.oilflow.Require;
import lanetide.oilflow.lane.Hand;

/**
 * An oil pattern by what tapes read on a freshly oiled lane. The film between the readings is interpolated
 * ({@link TapeTable}) and ends at the stated length.
 *
 * @param id name by which scenarios choose it
 * @param lengthM where the oil ends (m from the foul line), 6 to 17.7 (58 ft)
 * @param volumeMl oil on one lane (mL), above 0 to 60; the film is scaled to hold it
 * @param tapes the readings, over the whole lane
 */
public record TapePattern(String id, double lengthM, double volumeMl, TapeTable tapes) implements OilPattern {
    /** A board is inside if it and all boards from it to the middle hold at least this share of the middle's film. */
    private static final double INSIDE_SHARE = 0.9;

    /** The outermost of the middle five boards: they are inside whatever they hold. */
    private static final int MIDDLE_BOARD = 18;

    /**
     * Checks the ranges above, and that the readings do not contradict the volume.
     *
     * @throws IllegalArgumentException if a value lies outside its range, or if the film could not hold
     *     {@code volumeMl} were every reading off by its error bar
     */
    public TapePattern {
        Require.named(id, "pattern");
        Require.inRange(lengthM, "length (m) of pattern " + id, MIN_LENGTH_M, MAX_LENGTH_M);
        Require.inRange(
                Require.positive(volumeMl, "volume (mL) of pattern " + id), "volume (mL) of pattern " + id, 0, MAX_ML);
        tapes = tapes.acrossTheLane();
        double leastMl = tapes.volumeMl(lengthM, -tapes.errorUnits());
        double mostMl = tapes.volumeMl(lengthM, tapes.errorUnits());
        Require.positive(tapes.volumeMl(lengthM, 0), "oil under the tapes (mL) of pattern " + id);
        // A volume taken from the tapes themselves must pass whatever the last bit of its sum.
        if (!(volumeMl >= leastMl * (1 - 1e-9) && volumeMl <= mostMl * (1 + 1e-9))) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the volume of pattern %s is %.2f mL, but its tapes hold %.2f to %.2f mL",
                    id,
                    volumeMl,
                    leastMl,
                    mostMl));
        }
    }

    /**
     * A pattern that holds what its tapes amount to.
     *
     * @param id its name
     * @param lengthM its length (m)
     * @param tapes the readings
     * @return the pattern
     */
    public static TapePattern of(String id, double lengthM, TapeTable tapes) {
        return new TapePattern(id, lengthM, tapes.volumeMl(lengthM, 0), tapes);
    }

    /**
     * The film across the lane at a distance, relative to a scale of the pattern's own.
     *
     * @param distanceM distance from the foul line (m)
     * @return the film by gutter and board; nothing past the end
     */
    public AcrossFilm at(double distanceM) {
        if (distanceM > lengthM) {
            return AcrossFilm.NONE;
        }
        // The left half is read in the mirror, so that readings alike on both sides give a film alike to the last bit.
        TapeTable mirror = tapes.mirrored();
        double[] fromRight = tapes.rowAt(distanceM);
        double[] fromLeft = mirror.rowAt(distanceM);
        return (gutter, board) ->
                gutter == Hand.RIGHT ? tapes.across(fromRight, board) : mirror.across(fromLeft, board);
    }

    @Override
    public double flatFromBoard(Hand gutter) {
        TapeTable table = gutter == Hand.RIGHT ? tapes : tapes.mirrored();
        double[] mean = new double[table.boards().size()];
        table.units().forEach(row -> {
            for (int i = 0; i < mean.length; i++) {
                mean[i] += row.get(i);
            }
        });
        double middle = table.across(mean, 20);
        int board = MIDDLE_BOARD;
        while (board > 1 && table.across(mean, board - 1) >= INSIDE_SHARE * middle) {
            board--;
        }
        return board;
    }

    @Override
    public boolean isSymmetric() {
        return tapes.equals(tapes.mirrored());
    }
}
