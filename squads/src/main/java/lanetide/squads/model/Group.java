package lanetide.squads.model;

import java.util.List;
import lanetide.oilflow.Require;

/**
 * The bowlers who share a pair and move together.
 *
 * @param id name, alone in its squad
 * @param bowlers in bowling order; the first half (rounded up) starts on the left lane. At least one
 */
public record Group(String id, List<Bowler> bowlers) {
    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there is no bowler or {@code id} is blank
     */
    public Group {
        Require.named(id, "group");
        bowlers = List.copyOf(bowlers);
        if (bowlers.isEmpty()) {
            throw new IllegalArgumentException("group " + id + " has no bowler; leave the group out or add one");
        }
    }

    /** How many bowlers it has. */
    public int size() {
        return bowlers.size();
    }
}
