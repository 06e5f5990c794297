package lanetide.squads.measured;

import lanetide.oilflow.Require;
import lanetide.oilflow.lane.LaneGeometry;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * What a tape read on a lane.
 *
 * @param lane lane number
 * @param when when it was taken
 * @param distanceM distance from the foul line (m), 0 to the head pin
 * @param board board from the right-hand gutter, 1 to 39
 * @param units oil it read (units), at least 0
 * @param errorUnits its own error (units, standard deviation), above 0
 * @param place where it stands, for what is said of it
 */
public record TapeTaken(
        int lane, When when, double distanceM, int board, double units, double errorUnits, String place) {
    /** Error of a reading where none is stated (units, standard deviation): assumption, no source found. */
    public static final double USUAL_ERROR_UNITS = 2;

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public TapeTaken {
        Require.inRange(distanceM, "distance of a tape (m)", 0, LaneGeometry.HEAD_PIN_M);
        Require.inRange(board, "board of a tape", 1, LaneGeometry.BOARDS);
        Require.inRange(units, "units of a tape", 0, Double.MAX_VALUE);
        Require.positive(errorUnits, "error of a tape (units)");
    }

    /**
     * Whether another tape is the same reading, wherever it stands.
     *
     * @param other the other
     * @return true if both read the same at one place and time
     */
    public boolean reads(TapeTaken other) {
        return equals(new TapeTaken(
                other.lane, other.when, other.distanceM, other.board, other.units, other.errorUnits, place));
    }

    /**
     * What such a tape reads on the mean where there is so much oil: none reads less than nothing.
     *
     * @param there oil that is there (units), at least 0
     * @return its mean reading, by a normal error cut off at nothing (units)
     */
    public double meanReading(double there) {
        double deviations = there / errorUnits;
        return there * NORMAL.cumulativeProbability(deviations) + errorUnits * NORMAL.density(deviations);
    }
}
