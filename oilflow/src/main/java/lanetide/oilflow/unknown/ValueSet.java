package lanetide.oilflow.unknown;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * One value for each unknown: a world that may be the true one.
 *
 * @param number its number among the shipped sets, from 1; 0 for the usual values
 * @param values the values by the names of their unknowns; those that are missing are as usual
 * @param seed what chance is drawn by where a set tells how far things spread, but not how each is
 */
public record ValueSet(int number, Map<String, Double> values, long seed) {
    /** All values as usual. */
    public static final ValueSet USUAL = new ValueSet(0, Map.of());

    /** Copies the map. */
    public ValueSet {
        values = Collections.unmodifiableMap(new TreeMap<>(values));
    }

    /**
     * A set whose draws go with its values: other values, another draw; the same on any machine.
     *
     * @param number as above
     * @param values as above
     */
    public ValueSet(int number, Map<String, Double> values) {
        this(number, values, new TreeMap<>(values).hashCode());
    }

    /**
     * Whether all values are as usual.
     *
     * @return true for {@link #USUAL}
     */
    public boolean isUsual() {
        return values.isEmpty();
    }

    /**
     * The same with other values; what is drawn stays.
     *
     * @param others the values
     * @return the set
     */
    public ValueSet withValues(Map<String, Double> others) {
        return new ValueSet(number, others, seed);
    }

    /**
     * The same values with other draws.
     *
     * @param other what chance is drawn by
     * @return the set
     */
    public ValueSet drawnBy(long other) {
        return new ValueSet(number, values, other);
    }

    /**
     * The value of an unknown.
     *
     * @param unknown the unknown
     * @return its value in this set
     */
    public double of(Unknown unknown) {
        return values.getOrDefault(unknown.id(), unknown.usual());
    }
}
