package lanetide.cli.rotate;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.squads.model.Group;
import lanetide.squads.rotation.design.Classics;
import lanetide.squads.rotation.design.SearchResult;

/**
 * One rotation with its checks and its alternatives; squads that share it are told together.
 *
 * @param squads names of the squads, at least one
 * @param groups the groups of the first of them
 * @param pairs the pairs as these squads have them
 * @param planned the rotation itself
 * @param checks what can be told of it
 * @param alternatives what else there could be, without the rotation itself
 * @param refused designs that cannot serve
 * @param search what a search found, if one was asked for
 */
public record SquadRotation(
        List<String> squads,
        List<Group> groups,
        PairRow pairs,
        Alternative planned,
        List<CheckLine> checks,
        List<Alternative> alternatives,
        List<Classics.Refused> refused,
        Optional<SearchResult> search) {
    /** Copies the lists. */
    public SquadRotation {
        squads = List.copyOf(squads);
        groups = List.copyOf(groups);
        checks = List.copyOf(checks);
        alternatives = List.copyOf(alternatives);
        refused = List.copyOf(refused);
    }

    /**
     * The best rotation known, the planned one first among equals.
     *
     * @return smallest cost
     */
    public Alternative best() {
        return Stream.concat(Stream.of(planned), alternatives.stream())
                .min(Comparator.comparingDouble(Alternative::cost))
                .orElseThrow();
    }
}
