package lanetide.oilflow.film;

/**
 * What one tape reads.
 *
 * @param distanceM distance from the foul line (m)
 * @param board whole board from the right-hand gutter
 * @param units units of oil
 */
public record TapeReading(double distanceM, int board, double units) {}
