package lanetide.cli.rotate;

import java.util.List;
import java.util.Set;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.notice.Assumption;
import lanetide.squads.change.Change;
import lanetide.squads.model.Event;

/**
 * Late changes and what they lead to.
 *
 * @param planned the event as planned
 * @param change what changes
 * @param note where the rotations come from now
 * @param lost pairs that are lost, counted from zero
 * @param isLeast whether as few visits change as possible, rather than as few groups come back
 */
public record LateChanges(Event planned, Change change, RotationNote note, Set<Integer> lost, boolean isLeast) {
    /** Copies the set. */
    public LateChanges {
        lost = Set.copyOf(lost);
    }

    /**
     * Notes a change; the lost pairs are out of use wherever nobody has bowled on them before.
     *
     * @param planned the event as planned
     * @param change what changes
     * @param note where the planned rotations come from
     * @param lost pairs that are lost
     * @param isLeast whether as few visits change as possible
     * @return the change with the pairs that are left out now
     */
    public static LateChanges of(Event planned, Change change, RotationNote note, Set<Integer> lost, boolean isLeast) {
        return new LateChanges(
                planned, change, note.changed(lost, change.event().squads().size()), lost, isLeast);
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

    /**
     * What answers rest on that were made after the change.
     *
     * @return the changes in sentences
     */
    public Assumption assumption() {
        List<String> words = ChangeWords.of(this, PairRow.of(planned.centre(), lost));
        return new Assumption(Scenario.CHANGED, String.join(" ", words), "as asked for");
    }
}
