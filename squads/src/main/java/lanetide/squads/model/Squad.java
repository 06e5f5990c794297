package lanetide.squads.model;

import java.util.List;
import lanetide.oilflow.Require;

/**
 * Bowlers who play at one time.
 *
 * @param id name, alone in the event
 * @param startMs planned start of practice (ms from midnight before the first day), at least 0
 * @param conditioning what is done to the lanes before; it is timed to end at the start
 * @param practiceMs length of practice on the starting pair (ms), at least 0
 * @param groups in rotation order, at least one
 */
public record Squad(String id, long startMs, Conditioning conditioning, long practiceMs, List<Group> groups) {
    /**
     * Copies the list and checks the values.
     *
     * @throws IllegalArgumentException if a time is negative, there is no group or {@code id} is blank
     */
    public Squad {
        Require.named(id, "squad");
        groups = List.copyOf(groups);
        if (startMs < 0 || practiceMs < 0 || groups.isEmpty()) {
            throw new IllegalArgumentException("squad " + id + ": start " + startMs + " ms and practice " + practiceMs
                    + " ms must be at least 0, groups " + groups.size() + " at least 1");
        }
    }
}
