package lanetide.squads.model;

import java.util.List;
import java.util.Map;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.Topography;

/**
 * The lanes in use.
 *
 * @param pairs pairs from left to right, at least one, no lane twice
 * @param surface what the lanes are made of
 * @param machines the lane machines
 * @param topographies how far lanes are from level, by lane number; lanes that are missing are level
 */
public record Centre(
        List<LanePair> pairs, LaneSurface surface, LaneMachines machines, Map<Integer, Topography> topographies) {
    /**
     * Copies the list and the map, and checks the list.
     *
     * @throws IllegalArgumentException if there is no pair or a lane stands in two pairs
     */
    public Centre {
        pairs = List.copyOf(pairs);
        topographies = Map.copyOf(topographies);
        long lanes = pairs.stream()
                .flatMap(pair -> java.util.stream.Stream.of(pair.left(), pair.right()))
                .distinct()
                .count();
        if (pairs.isEmpty() || lanes != 2L * pairs.size()) {
            throw new IllegalArgumentException(
                    "pairs " + pairs + " must be at least one pair, and no lane may stand in two of them");
        }
    }

    /**
     * Level lanes.
     *
     * @param pairs as above
     * @param surface as above
     * @param machines as above
     */
    public Centre(List<LanePair> pairs, LaneSurface surface, LaneMachines machines) {
        this(pairs, surface, machines, Map.of());
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
}
