package lanetide.squads.play;

import java.util.List;

/**
 * An event played a number of times with independent luck.
 *
 * @param first the first playing, whose lanes and timetable stand as the example
 * @param squads statistics by squad over all playings, in the event's order
 * @param timetable the timetable over all playings, in order of the first playing's
 * @param replications number of playings, at least 1
 */
public record StudyResult(
        EventResult first, List<SquadStatistics> squads, List<TimetableStatistics> timetable, int replications) {
    /** Copies the lists. */
    public StudyResult {
        squads = List.copyOf(squads);
        timetable = List.copyOf(timetable);
    }
}
