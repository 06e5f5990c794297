package lanetide.squads.model;

import java.util.List;
import lanetide.oilflow.lane.LaneSurface;

/**
 * The lanes in use.
 *
 * @param pairs pairs from left to right, at least one, no lane twice
 * @param surface what the lanes are made of
 * @param machines the lane machines
 */
public record Centre(List<LanePair> pairs, LaneSurface surface, LaneMachines machines) {
    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there is no pair or a lane stands in two pairs
     */
    public Centre {
        pairs = List.copyOf(pairs);
        long lanes = pairs.stream()
                .flatMap(pair -> java.util.stream.Stream.of(pair.left(), pair.right()))
                .distinct()
                .count();
        if (pairs.isEmpty() || lanes != 2L * pairs.size()) {
            throw new IllegalArgumentException(
                    "pairs " + pairs + " must be at least one pair, and no lane may stand in two of them");
        }
    }
}
