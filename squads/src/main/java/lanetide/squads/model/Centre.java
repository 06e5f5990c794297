package lanetide.squads.model;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;

/**
 * The lanes in use.
 *
 * @param pairs pairs from left to right, at least one, no lane twice
 * @param surface what the lanes are made of
 * @param machines the lane machines
 * @param topographies how far lanes are from level, by lane number; lanes that are missing are level
 * @param spares pairs kept free for groups whose lane is out of order; made ready with the others
 */
public record Centre(
        List<LanePair> pairs,
        LaneSurface surface,
        LaneMachines machines,
        Map<Integer, Topography> topographies,
        List<LanePair> spares) {
    /**
     * Copies the lists and the map, and checks the lists.
     *
     * @throws IllegalArgumentException if there is no pair or a lane stands in two pairs, spare or not
     */
    public Centre {
        pairs = List.copyOf(pairs);
        topographies = Map.copyOf(topographies);
        spares = List.copyOf(spares);
        List<LanePair> all = Stream.concat(pairs.stream(), spares.stream()).toList();
        long lanes = all.stream()
                .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                .distinct()
                .count();
        if (pairs.isEmpty() || lanes != 2L * all.size()) {
            throw new IllegalArgumentException(
                    "pairs " + all + " must be at least one pair, and no lane may stand in two of them");
        }
    }

    /**
     * A centre that keeps no pair free.
     *
     * @param pairs as above
     * @param surface as above
     * @param machines as above
     * @param topographies as above
     */
    public Centre(
            List<LanePair> pairs, LaneSurface surface, LaneMachines machines, Map<Integer, Topography> topographies) {
        this(pairs, surface, machines, topographies, List.of());
    }

    /**
     * Level lanes, of which none is kept free.
     *
     * @param pairs as above
     * @param surface as above
     * @param machines as above
     */
    public Centre(List<LanePair> pairs, LaneSurface surface, LaneMachines machines) {
        this(pairs, surface, machines, Map.of());
    }

    /**
     * The same centre with other pairs kept free.
     *
     * @param others the pairs
     * @return the centre
     */
    public Centre withSpares(List<LanePair> others) {
        return new Centre(pairs, surface, machines, topographies, others);
    }

    /**
     * The shape of a lane.
     *
     * @param lane its number
     * @return how far it is from level
     */
    public Topography topography(int lane) {
        return topographies.getOrDefault(lane, Topography.FLAT);
    }

    /**
     * All pairs that are made ready.
     *
     * @return the pairs in use, then the spare ones
     */
    public List<LanePair> allPairs() {
        return Stream.concat(pairs.stream(), spares.stream()).toList();
    }

    /**
     * All lanes that are made ready.
     *
     * @return their numbers from left to right
     */
    public List<Integer> laneNumbers() {
        return allPairs().stream()
                .flatMap(pair -> Stream.of(pair.left(), pair.right()))
                .sorted()
                .toList();
    }
}
