package lanetide.cli.rotate;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.squads.model.Centre;
import lanetide.squads.model.LanePair;
import lanetide.squads.rotation.Rotation;

/**
 * The pairs of a centre in their row.
 *
 * @param pairs all pairs, from left to right
 * @param spare pairs that are kept spare, counted from zero
 */
public record PairRow(List<LanePair> pairs, Set<Integer> spare) {
    /** Copies the collections. */
    public PairRow {
        pairs = List.copyOf(pairs);
        spare = Set.copyOf(spare);
    }

    static PairRow of(Centre centre, Set<Integer> spare) {
        return new PairRow(centre.pairs(), spare);
    }

    /**
     * How many pairs groups are sent to.
     *
     * @return at least 1
     */
    public int inUse() {
        return pairs.size() - spare.size();
    }

    /**
     * The left lane of every pair, by which distances are measured.
     *
     * @return lane numbers
     */
    public List<Integer> leftLanes() {
        return pairs.stream().map(LanePair::left).toList();
    }

    /**
     * The name of a pair.
     *
     * @param pair pair, counted from zero
     * @return such as {@code 7-8}
     */
    public String name(int pair) {
        return pairs.get(pair).id();
    }

    /** The same pairs, of which some more are not used. */
    PairRow without(List<LanePair> unused) {
        return new PairRow(
                pairs,
                Stream.concat(spare.stream(), unused.stream().map(pairs::indexOf))
                        .collect(Collectors.toSet()));
    }

    /** The same pairs, of which those are spare that were and that the rotation does not visit. */
    PairRow usedBy(Rotation rotation) {
        return new PairRow(
                pairs, spare.stream().filter(pair -> !rotation.visits(pair)).collect(Collectors.toSet()));
    }

    /** A rotation over the pairs in use as one over all pairs. */
    Rotation overAll(Rotation inner) {
        return inner.among(used(), pairs.size());
    }

    /** A rotation over all pairs, none of them spare, as one over the pairs in use. */
    Rotation overUsed(Rotation rotation) {
        List<Integer> used = used();
        return Rotation.tabulate(
                rotation.groups(),
                used.size(),
                rotation.games(),
                (game, group) -> used.indexOf(rotation.pairOf(game, group)));
    }

    private List<Integer> used() {
        return IntStream.range(0, pairs.size())
                .filter(pair -> !spare.contains(pair))
                .boxed()
                .toList();
    }
}
