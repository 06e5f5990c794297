package lanetide.squads.play;

import java.util.List;

/**
 * An event played a number of times with independent luck.
 *
 * @param first the first playing, whose lanes and timetable stand as the example
 * @param squads statistics by squad over all playings, in the event's order
 * @param replications number of playings, at least 1
 */
public record StudyResult(EventResult first, List<SquadStatistics> squads, int replications) {
    /** Copies the list. */
    public StudyResult {
        squads = List.copyOf(squads);
    }
}
