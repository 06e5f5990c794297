package lanetide.squads.result;

import java.util.List;
import java.util.Optional;
import lanetide.oilflow.film.OilAccount;

/**
 * One playing of an event.
 *
 * @param squads results by squad
 * @param timetable what happened when, in order of start
 * @param lanes every lane as each squad found it and after each game, by lane, then in order of time
 * @param oil where the oil went
 * @param shots balls thrown, practice included
 * @param stops times for which lanes were out of order, in the order of their ends
 * @param finals what came of the finals; empty if the event has none
 */
public record EventResult(
        List<SquadResult> squads,
        List<TimetableEntry> timetable,
        List<LaneState> lanes,
        OilAccount oil,
        long shots,
        List<LaneStop> stops,
        Optional<FinalsResult> finals) {
    /** Copies the lists. */
    public EventResult {
        squads = List.copyOf(squads);
        timetable = List.copyOf(timetable);
        lanes = List.copyOf(lanes);
        stops = List.copyOf(stops);
    }

    /**
     * A playing without finals.
     *
     * @param squads results by squad
     * @param timetable what happened when, in order of start
     * @param lanes every lane as each squad found it and after each game, by lane, then in order of time
     * @param oil where the oil went
     * @param shots balls thrown, practice included
     * @param stops times for which lanes were out of order, in the order of their ends
     */
    public EventResult(
            List<SquadResult> squads,
            List<TimetableEntry> timetable,
            List<LaneState> lanes,
            OilAccount oil,
            long shots,
            List<LaneStop> stops) {
        this(squads, timetable, lanes, oil, shots, stops, Optional.empty());
    }
}
