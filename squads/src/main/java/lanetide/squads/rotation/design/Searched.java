package lanetide.squads.rotation.design;

import java.util.OptionalInt;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;

/**
 * A rotation designed by search for these groups, pairs and games; see {@link RotationSearch}.
 *
 * @param objective what it is to be good at
 * @param seed same seed, same rotation
 * @param tries exchanges to try at most, at least 1; empty for the usual number
 */
public record Searched(SearchObjective objective, long seed, OptionalInt tries) implements RotationDesign {

    /**
     * A design by search.
     *
     * @throws ImpossibleRotationException if {@code tries} is below 1
     */
    public Searched {
        if (tries.orElse(1) < 1) {
            throw new ImpossibleRotationException("number of tries", tries.getAsInt(), "at least 1", "Leave it out.");
        }
    }

    /**
     * A search with so many tries.
     *
     * @param objective what it is to be good at
     * @param seed same seed, same rotation
     * @param tries exchanges to try at most
     * @throws ImpossibleRotationException if {@code tries < 1}
     */
    public Searched(SearchObjective objective, long seed, int tries) {
        this(objective, seed, OptionalInt.of(tries));
    }

    /**
     * A search under the usual objective with the usual number of tries.
     *
     * @param seed same seed, same rotation
     */
    public Searched(long seed) {
        this(SearchObjective.DEFAULT, seed, OptionalInt.empty());
    }

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        return RotationSearch.run(
                        groups, pairs, games, objective, seed, tries.orElse(RotationSearch.defaultTries(groups, games)))
                .rotation();
    }
}
