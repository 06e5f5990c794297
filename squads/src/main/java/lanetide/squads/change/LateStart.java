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
         * The earliest start.
         *
         * @param before the squad before, with its new start
         * @param games its games
         * @param next the squad that waits
         * @return time (ms from midnight before the first day)
         */
        long ms(Squad before, int games, Squad next);
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
        List<Squad> squads = new ArrayList<>(event.squads());
        List<Change.Start> starts = new ArrayList<>();
        long startMs = squads.get(squad).startMs() + delayMs;
        for (int at = squad; at < squads.size() && startMs > squads.get(at).startMs(); at++) {
            Squad planned = squads.get(at);
            squads.set(at, planned.startingAt(startMs));
            starts.add(new Change.Start(planned.id(), planned.startMs(), startMs));
            if (at + 1 < squads.size()) {
                startMs = ready.ms(squads.get(at), event.games(at), squads.get(at + 1));
            }
        }
        return new Change(event.withSquads(squads), List.of(), List.of(), List.of(), List.of(), starts);
    }
}
