package lanetide.squads.draw;

import java.util.List;
import java.util.OptionalInt;

/**
 * Those who go together in a draw: partners, or one bowler.
 *
 * @param members their places in the list of entries, at least one
 * @param box where they are already, from 0; empty if the lot decides
 */
record Unit(List<Integer> members, OptionalInt box) {
    Unit {
        members = List.copyOf(members);
    }

    int size() {
        return members.size();
    }
}
