package lanetide.cli.scenario;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lanetide.squads.model.LanePair;

/**
 * Which pairs groups are sent to.
 *
 * @param pairs the centre's pairs, from left to right; none if they are wrong
 * @param closed pairs that are closed
 * @param kept pairs that are kept spare
 */
record Lanes(List<LanePair> pairs, Set<LanePair> closed, Set<LanePair> kept) {
    static final Lanes UNKNOWN = new Lanes(List.of(), Set.of(), Set.of());

    List<LanePair> inUse() {
        return pairs.stream().filter(pair -> !kept.contains(pair)).toList();
    }

    /** The spare pairs by their place among the centre's pairs. */
    Set<Integer> spare() {
        Set<Integer> spare = new TreeSet<>();
        for (int pair = 0; pair < pairs.size(); pair++) {
            if (kept.contains(pairs.get(pair))) {
                spare.add(pair);
            }
        }
        return spare;
    }

    /** The key that takes a pair out of use, if one does. */
    Optional<String> whyNot(LanePair pair) {
        return closed.contains(pair)
                ? Optional.of("closed")
                : Optional.of("spare").filter(key -> kept.contains(pair));
    }
}
