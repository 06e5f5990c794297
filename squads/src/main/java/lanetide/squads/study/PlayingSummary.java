package lanetide.squads.study;

import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;

/**
 * What a study keeps of one playing; the lanes and the bowlers would need too much memory.
 *
 * @param squads squad by squad
 * @param timetable what happened when
 */
record PlayingSummary(List<SquadSummary> squads, List<TimetableEntry> timetable) {
    static PlayingSummary of(EventResult playing) {
        return new PlayingSummary(
                playing.squads().stream().map(SquadSummary::of).toList(), playing.timetable());
    }

    /** The mean scores of the squads (pins a game). */
    double[] meanScores() {
        return squads.stream().mapToDouble(SquadSummary::meanScore).toArray();
    }

    /**
     * One squad.
     *
     * @param meanScore mean over bowlers and games (pins)
     * @param byGame mean over bowlers, by game (pins)
     * @param endMs when its last ball was scored (ms)
     * @param pace how its time was spent
     */
    record SquadSummary(double meanScore, List<Double> byGame, long endMs, PaceKept pace) {
        static SquadSummary of(SquadResult squad) {
            return new SquadSummary(
                    squad.meanScore(),
                    IntStream.range(0, squad.games()).mapToObj(squad::meanScore).toList(),
                    squad.endMs(),
                    squad.pace());
        }
    }
}
