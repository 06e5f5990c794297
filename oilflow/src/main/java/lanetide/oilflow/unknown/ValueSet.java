package lanetide.oilflow.unknown;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * One value for each unknown: a world that may be the true one.
 *
 * @param number its number among the shipped sets, from 1; 0 for the usual values
 * @param values the values by the names of their unknowns; those that are missing are as usual
 */
public record ValueSet(int number, Map<String, Double> values) {
    /** All values as usual. */
    public static final ValueSet USUAL = new ValueSet(0, Map.of());

    /** Copies the map. */
    public ValueSet {
        values = Collections.unmodifiableMap(new TreeMap<>(values));
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
     * What chance is drawn by where a set tells how far things spread, but not how each is. Other values, another draw;
     * the same on any machine.
     *
     * @return a seed
     */
    public long seed() {
        return values.hashCode();
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
