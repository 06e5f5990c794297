package lanetide.squads.fairness;

import java.util.List;
import java.util.function.ToLongFunction;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/** Events on lanes that nobody changes: every ball, and every squad, finds the pattern as it is laid. */
public final class UnchangingLanes {
    private UnchangingLanes() {}

    /**
     * The same event on such lanes.
     *
     * @param event an event
     * @return the event without transfer of oil, oiled afresh before every squad
     */
    public static Event of(Event event) {
        return of(event, Squad::practiceMs);
    }

    /** The same without practice, as there is nothing to find out: then no seat differs from another in any way. */
    static Event withoutPractice(Event event) {
        return of(event, squad -> 0);
    }

    private static Event of(Event event, ToLongFunction<Squad> practiceMs) {
        List<Squad> squads = event.squads().stream()
                .map(squad ->
                        squad.withConditioning(Conditioning.STRIP_AND_OIL).withPractice(practiceMs.applyAsLong(squad)))
                .toList();
        return event.withSquads(squads).withLaws(event.laws().withLanesThatStay());
    }
}
