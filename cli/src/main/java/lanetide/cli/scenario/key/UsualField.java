package lanetide.cli.scenario.key;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Shares of a mixed field, for whoever does not know better: offered by the starter, and used where entries leave
 * something open. All are an assumption.
 */
public final class UsualField {
    /** Delivery sides. */
    public static final Map<String, Double> HANDS = shares("right", 88, "left", 12);

    /** Playing styles. */
    public static final Map<String, Double> STYLES = shares("straight", 20, "stroker", 35, "tweener", 30, "power", 15);

    /** Covers of the strike ball. */
    public static final Map<String, Double> COVERS =
            shares("plastic", 10, "urethane", 10, "weak-reactive", 25, "medium-reactive", 40, "strong-reactive", 15);

    private UsualField() {}

    /**
     * Writes shares as a scenario does.
     *
     * @param shares share by name
     * @return for example <code>{right: 88 %, left: 12 %}</code>
     */
    public static String written(Map<String, Double> shares) {
        return shares.entrySet().stream()
                .map(share -> share.getKey() + ": " + BowlerKeys.SHARE.write(share.getValue()))
                .collect(Collectors.joining(", ", "{", "}"));
    }

    /** Shares by name, from names and per cent in turn. */
    private static Map<String, Double> shares(Object... namesAndPerCent) {
        Map<String, Double> shares = new LinkedHashMap<>();
        for (int i = 0; i < namesAndPerCent.length; i += 2) {
            shares.put((String) namesAndPerCent[i], (Integer) namesAndPerCent[i + 1] / 100.0);
        }
        return Collections.unmodifiableMap(shares);
    }
}
