package lanetide.squads.rotation;

import java.util.List;
import java.util.stream.IntStream;

/**
 * One turn of a squad on the lanes. A squad that bowls on several days has several.
 *
 * @param squad the squad's name
 * @param oiled whether its lanes are oiled before it
 * @param rotation which group bowls on which pair in which game
 * @param groups the bowlers of each group by hand
 * @param pairs its pairs, counted from zero
 */
public record Session(String squad, boolean oiled, Rotation rotation, List<Hands> groups, List<Integer> pairs) {
    /**
     * Copies the lists and checks the first.
     *
     * @throws IllegalArgumentException if there are not as many groups as the rotation has
     */
    public Session {
        groups = List.copyOf(groups);
        pairs = List.copyOf(pairs);
        if (groups.size() != rotation.groups()) {
            throw new IllegalArgumentException("squad " + squad + " has " + groups.size() + " groups, its rotation "
                    + rotation.groups() + "; both must be equal");
        }
    }

    /**
     * A turn on all lanes.
     *
     * @param squad the squad's name
     * @param oiled whether they are oiled before it
     * @param rotation which group bowls on which pair in which game
     * @param groups the bowlers of each group by hand
     * @throws IllegalArgumentException as above
     */
    public Session(String squad, boolean oiled, Rotation rotation, List<Hands> groups) {
        this(
                squad,
                oiled,
                rotation,
                groups,
                IntStream.range(0, rotation.pairs()).boxed().toList());
    }
}
