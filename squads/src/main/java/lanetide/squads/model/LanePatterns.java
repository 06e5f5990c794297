package lanetide.squads.model;

import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import lanetide.oilflow.film.OilPattern;

/**
 * The oil patterns that are laid when lanes are oiled: one, but for lanes that have another.
 *
 * @param usual the pattern of every lane that is not among the others
 * @param others patterns by lane number
 */
public record LanePatterns(OilPattern usual, Map<Integer, OilPattern> others) {
    /** Copies the map, without lanes that have the usual pattern, so that equal lanes make equal objects. */
    public LanePatterns {
        OilPattern most = usual;
        Map<Integer, OilPattern> different = new HashMap<>(others);
        different.values().removeIf(most::equals);
        others = Map.copyOf(different);
    }

    /**
     * One pattern on every lane.
     *
     * @param pattern the pattern
     * @return the patterns
     */
    public static LanePatterns everywhere(OilPattern pattern) {
        return new LanePatterns(pattern, Map.of());
    }

    /**
     * What lies on some lanes.
     *
     * @param byLane patterns by lane number, at least one
     * @return the patterns, of which that of the most lanes is the usual one; of several the first
     */
    public static LanePatterns of(Map<Integer, OilPattern> byLane) {
        Map<OilPattern, Integer> lanes = new LinkedHashMap<>();
        new TreeMap<>(byLane).values().forEach(pattern -> lanes.merge(pattern, 1, Integer::sum));
        int most = Collections.max(lanes.values());
        OilPattern usual = lanes.keySet().stream()
                .filter(pattern -> lanes.get(pattern) == most)
                .findFirst()
                .orElseThrow();
        return new LanePatterns(usual, byLane);
    }

    /**
     * All patterns, the usual one first.
     *
     * @return the patterns, some perhaps more than once
     */
    public Stream<OilPattern> all() {
        return Stream.concat(Stream.of(usual), others.values().stream());
    }

    /**
     * The pattern of a lane.
     *
     * @param lane lane number
     * @return what is laid there
     */
    public OilPattern on(int lane) {
        return others.getOrDefault(lane, usual);
    }
}
