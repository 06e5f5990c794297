package lanetide.cli.scenario.lanes;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lanetide.squads.model.LanePair;

/**
 * The pairs of a centre as a scenario has them.
 *
 * @param pairs pairs in use, from left to right; none if they are wrong
 * @param closed pairs that are closed
 * @param spare pairs that are kept spare
 */
public record Lanes(List<LanePair> pairs, Set<LanePair> closed, Set<LanePair> spare) {
    public static final Lanes UNKNOWN = new Lanes(List.of(), Set.of(), Set.of());

    /** The pairs that groups are sent to. */
    public List<LanePair> rotationPairs() {
        return pairs.stream().filter(pair -> !spare.contains(pair)).toList();
    }

    /** Pairs as a notice lists them. */
    public static String named(List<LanePair> pairs) {
        return pairs.stream().map(LanePair::id).collect(Collectors.joining(", "));
    }

    /** The key for which no group is sent to a pair, if one says so. */
    public Optional<String> whyNot(LanePair pair) {
        return closed.contains(pair)
                ? Optional.of("closed")
                : Optional.of("spare").filter(key -> spare.contains(pair));
    }
}
