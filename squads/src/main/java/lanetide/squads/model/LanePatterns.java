package lanetide.squads.model;

import java.util.HashMap;
import java.util.Map;
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
     * The pattern of a lane.
     *
     * @param lane lane number
     * @return what is laid there
     */
    public OilPattern on(int lane) {
        return others.getOrDefault(lane, usual);
    }
}
