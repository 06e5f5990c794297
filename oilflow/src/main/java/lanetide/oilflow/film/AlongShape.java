package lanetide.oilflow.film;

import lanetide.oilflow.Require;

/**
 * A pattern along the lane, relative to the foul line. Where oil is applied, to {@code appliedToM}, the film falls as
 * {@code floor + (1 - floor)(1 - y/appliedToM)^decay}. What lies beyond is buffed, carried on by the machine's brush:
 * there it falls in a straight line from {@code floor} to {@code buffTo} at the pattern's end.
 *
 * @param decay exponent of the fall, 0 to 6
 * @param floor share of the foul-line film left where the applied oil ends, 0 to 1
 * @param appliedToM where the applied oil ends (m from the foul line), above 0
 * @param buffTo share left at the end of the pattern, 0 to {@code floor}
 */
public record AlongShape(double decay, double floor, double appliedToM, double buffTo) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public AlongShape {
        Require.inRange(decay, "decay", 0, 6);
        Require.inRange(floor, "floor", 0, 1);
        Require.positive(appliedToM, "end of the applied oil (m)");
        Require.inRange(buffTo, "share at the end of the buffed part", 0, floor);
    }

    /**
     * A pattern applied to its very end.
     *
     * @param decay exponent of the fall
     * @param floor share left at the end
     * @param lengthM the pattern's length (m)
     * @return the shape
     */
    public static AlongShape unbuffed(double decay, double floor, double lengthM) {
        return new AlongShape(decay, floor, lengthM, floor);
    }

    /**
     * Film at a distance.
     *
     * @param distanceM distance from the foul line (m)
     * @param lengthM where the pattern ends (m)
     * @return share of the foul line's film; 0 past the end
     */
    public double share(double distanceM, double lengthM) {
        if (distanceM > lengthM) {
            return 0;
        }
        if (distanceM <= appliedToM) {
            return floor + (1 - floor) * StrictMath.pow(1 - distanceM / appliedToM, decay);
        }
        return floor + (buffTo - floor) * (distanceM - appliedToM) / (lengthM - appliedToM);
    }
}
