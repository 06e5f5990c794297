package lanetide.squads.change;

import java.util.ArrayList;
import java.util.List;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.ImpossibleRotationException;

/** A squad that starts late, and those after it that must wait for it. */
public final class LateStart {

    private LateStart() {}

    /** When lanes are ready for a squad. */
    @FunctionalInterface
    public interface Ready {
        /**
         * The earliest start of a squad.
         *
         * @param event the event, with what has changed so far
         * @param squad place of the squad in it, at least 1
         * @return time (ms from midnight before the first day)
         */
        long ms(Event event, int squad);
    }

    /**
     * Lets a squad start late. Later squads start as planned, or as soon as the lanes are ready for them.
     *
     * @param event the event
     * @param squad place of the squad in it, counted from zero
     * @param delayMs how much later it starts (ms)
     * @param ready when lanes are ready
     * @return the changed event
     * @throws ImpossibleRotationException if {@code delayMs < 1}
     */
    public static Change of(Event event, int squad, long delayMs, Ready ready) {
        if (delayMs < 1) {
            throw new ImpossibleRotationException("delay in ms", delayMs, "at least 1", "Leave it out.");
        }
        Change late = startingAt(event, event, squad, event.squads().get(squad).startMs() + delayMs);
        return waiting(event, late, squad + 1, ready);
    }

    /**
     * Lets squads start as planned, or as soon as the lanes are ready for them.
     *
     * @param event the event
     * @param ready when lanes are ready
     * @return the event with the starts that can be kept; unchanged if all can
     */
    public static Change waiting(Event event, Ready ready) {
        return waiting(event, Change.none(event), 1, ready);
    }

    private static Change waiting(Event planned, Change change, int from, Ready ready) {
        Change all = change;
        for (int at = from; at < all.event().squads().size(); at++) {
            long readyMs = ready.ms(all.event(), at);
            if (readyMs > all.event().squads().get(at).startMs()) {
                all = all.then(startingAt(planned, all.event(), at, readyMs));
            }
        }
        return all;
    }

    /** Later squads on the same lanes keep the order of start, until it is seen when they can start. */
    private static Change startingAt(Event planned, Event event, int squad, long startMs) {
        List<Squad> squads = new ArrayList<>(event.squads());
        List<Integer> moved = new ArrayList<>();
        for (int at = squad; at < squads.size(); at++) {
            int here = at;
            boolean follows = at == squad || moved.stream().anyMatch(before -> event.shareLanes(before, here));
            if (follows && squads.get(at).startMs() < startMs) {
                squads.set(at, squads.get(at).startingAt(startMs));
                moved.add(at);
            }
        }
        Squad late = planned.squads().get(squad);
        List<Change.Start> starts = List.of(new Change.Start(late.id(), late.startMs(), startMs));
        return new Change(event.withSquads(squads), List.of(), List.of(), List.of(), List.of(), starts);
    }
}
