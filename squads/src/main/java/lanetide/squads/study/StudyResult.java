package lanetide.squads.study;

import java.util.List;
import java.util.Optional;
import lanetide.squads.result.EventResult;

/**
 * An event played a number of times with independent luck.
 *
 * @param first a playing with the usual values, whose lanes and timetable stand as the example
 * @param squads statistics by squad over all playings, in the event's order
 * @param timetable the timetable over all playings, in order of the first playing's
 * @param replications number of playings, at least 1
 * @param sets sets of values that the playings went through in turn; 1 if all were played with the usual values
 * @param precision how well scores are known, where playing went on until they should be; empty for a fixed number
 * @param moves how far lines go, over the sets; empty where that was not looked at
 * @param cut what came of the cut and the finals; empty if the event has no cut
 * @param teams how teams stand, in the order in which the event has them; none if everybody bowls for himself
 */
public record StudyResult(
        EventResult first,
        List<SquadStatistics> squads,
        List<TimetableStatistics> timetable,
        int replications,
        int sets,
        Optional<Precision> precision,
        List<WindowStudy.Move> moves,
        Optional<CutStatistics> cut,
        List<TeamStatistics> teams) {
    /** Copies the lists. */
    public StudyResult {
        squads = List.copyOf(squads);
        timetable = List.copyOf(timetable);
        moves = List.copyOf(moves);
        teams = List.copyOf(teams);
    }
}
