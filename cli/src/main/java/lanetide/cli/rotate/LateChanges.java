package lanetide.cli.rotate;

import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.squads.change.Change;
import lanetide.squads.model.Event;

/**
 * Late changes and what they lead to.
 *
 * @param planned the event as planned
 * @param change what changes
 * @param note where the rotations come from now
 * @param isLeast whether as few visits change as possible, rather than as few groups come back
 */
public record LateChanges(Event planned, Change change, RotationNote note, boolean isLeast) {

    /**
     * Notes a change.
     *
     * @param planned the event as planned
     * @param change what changes
     * @param note where the planned rotations come from
     * @param lost pairs that are lost
     * @param isLeast whether as few visits change as possible
     * @return the change with the pairs that are left out now
     */
    public static LateChanges of(Event planned, Change change, RotationNote note, Set<Integer> lost, boolean isLeast) {
        Set<Integer> spare = note.spare().stream()
                .filter(pair -> !isVisited(change.event(), pair))
                .collect(Collectors.toSet());
        Set<Integer> unused =
                lost.stream().filter(pair -> !isVisited(change.event(), pair)).collect(Collectors.toSet());
        return new LateChanges(
                planned, change, new RotationNote(note.label(), note.description(), spare).changed(unused), isLeast);
    }

    /**
     * Whether the rotations written out could stand in the scenario: one for all squads, with the groups as planned.
     *
     * @return false also if no visit changes
     */
    public boolean isPasteable() {
        return change.moved().isEmpty()
                && change.dissolved().isEmpty()
                && change.event().rotations().stream().distinct().count() == 1
                && !change.visits().isEmpty();
    }

    private static boolean isVisited(Event event, int pair) {
        return event.rotations().stream()
                .anyMatch(rotation -> IntStream.range(0, rotation.games())
                        .anyMatch(game -> !rotation.groupsOn(game, pair).isEmpty()));
    }
}
