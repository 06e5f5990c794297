package lanetide.squads.rotation;

import java.util.List;

/**
 * One turn of a squad on the lanes. A squad that bowls on several days has several.
 *
 * @param squad the squad's name
 * @param oiled whether all lanes are oiled before it
 * @param rotation which group bowls on which pair in which game
 * @param groups the bowlers of each group by hand
 */
public record Session(String squad, boolean oiled, Rotation rotation, List<Hands> groups) {
    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there are not as many groups as the rotation has
     */
    public Session {
        groups = List.copyOf(groups);
        if (groups.size() != rotation.groups()) {
            throw new IllegalArgumentException("squad " + squad + " has " + groups.size() + " groups, its rotation "
                    + rotation.groups() + "; both must be equal");
        }
    }
}
