package lanetide.squads.study;

import java.util.List;
import java.util.Optional;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.squads.result.PaceKept;

/**
 * A squad over all playings of an event.
 *
 * @param squad squad's name
 * @param meanScore mean over bowlers, games and playings (pins a game)
 * @param meanScoreCi95 interval of what it is expected to score, with the luck of play and what is not known; empty for
 *     fewer than two playings
 * @param luckCi95 the same with the luck of play alone
 * @param meanByGame mean over bowlers and playings, by game (pins)
 * @param earliestEndMs earliest end over the playings (ms from midnight before the first day)
 * @param latestEndMs latest end over the playings (ms)
 * @param pace how its time was spent, all playings together
 */
public record SquadStatistics(
        String squad,
        double meanScore,
        Optional<ConfidenceInterval> meanScoreCi95,
        Optional<ConfidenceInterval> luckCi95,
        List<Double> meanByGame,
        long earliestEndMs,
        long latestEndMs,
        PaceKept pace) {
    /** Copies the list. */
    public SquadStatistics {
        meanByGame = List.copyOf(meanByGame);
    }
}
