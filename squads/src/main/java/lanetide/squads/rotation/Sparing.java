package lanetide.squads.rotation;

import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Another design on some of the pairs only; the others are kept spare, so that a group can be sent there if a lane breaks
 * down.
 *
 * @param design the design on the pairs in use
 * @param spare pairs nobody is sent to, counted from zero among all pairs
 */
public record Sparing(RotationDesign design, Set<Integer> spare) implements RotationDesign {

    /** A design with spare pairs; the set is copied. */
    public Sparing {
        spare = Collections.unmodifiableSortedSet(new TreeSet<>(spare));
    }

    /**
     * {@inheritDoc}
     *
     * @throws ImpossibleRotationException also if a spare pair does not exist or {@code groups} exceeds the pairs in use
     */
    @Override
    public Rotation plan(int groups, int pairs, int games) {
        List<Integer> used = used(pairs);
        Rotation inner = design.plan(groups, used.size(), games);
        return Rotation.tabulate(groups, pairs, games, (game, group) -> used.get(inner.pairOf(game, group)));
    }

    @Override
    public String describe() {
        String kept = spare.size() == 1 ? "1 pair is" : spare.size() + " pairs are";
        return spare.isEmpty() ? design.describe() : design.describe() + " " + kept + " kept spare.";
    }

    @Override
    public OptionalInt maxGamesWithoutRepeat(int pairs) {
        return design.maxGamesWithoutRepeat(used(pairs).size());
    }

    private List<Integer> used(int pairs) {
        for (int pair : spare) {
            if (pair < 0 || pair >= pairs) {
                throw new ImpossibleRotationException(
                        "spare pair", pair + 1, "1 to %d, a pair of the centre".formatted(pairs), "Correct it.");
            }
        }
        return IntStream.range(0, pairs)
                .filter(pair -> !spare.contains(pair))
                .boxed()
                .toList();
    }
}
