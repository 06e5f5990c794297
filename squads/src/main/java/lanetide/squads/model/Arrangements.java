package lanetide.squads.model;

import java.util.List;
import java.util.OptionalInt;

/**
 * What is arranged for a squad beside its games.
 *
 * @param breaks breaks in order
 * @param changes how who bowls differs from the list, at most one change a bowler
 * @param machines lane machines used before it; empty for all of the centre's. At least 1
 */
public record Arrangements(List<Break> breaks, List<LineUpChange> changes, OptionalInt machines) {
    /** Nothing but games. */
    public static final Arrangements NONE = new Arrangements(List.of(), List.of(), OptionalInt.empty());

    /**
     * Copies the lists and checks them.
     *
     * @throws IllegalArgumentException if a bowler has two changes or {@code machines < 1}
     */
    public Arrangements {
        breaks = List.copyOf(breaks);
        changes = List.copyOf(changes);
        if (changes.stream().map(LineUpChange::bowler).distinct().count() < changes.size()) {
            throw new IllegalArgumentException("a bowler has two changes of the line-up; give him one");
        }
        if (machines.orElse(1) < 1) {
            throw new IllegalArgumentException("machines is " + machines.getAsInt() + ", but must be at least 1");
        }
    }
}
