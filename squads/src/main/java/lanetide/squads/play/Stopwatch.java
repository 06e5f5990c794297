package lanetide.squads.play;

import java.util.EnumMap;
import java.util.Map;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.WaitCause;

/** Adds up what a squad's time went into. */
final class Stopwatch {
    private final Map<WaitCause, Long> waitedMs = new EnumMap<>(WaitCause.class);
    private long pairMs;
    private int bowlerGames;

    /** A lane stood still. */
    void waited(WaitCause cause, long laneMs) {
        if (laneMs > 0) {
            waitedMs.merge(cause, laneMs, Long::sum);
        }
    }

    /** A pair was in play. */
    void paired(long gameMs) {
        pairMs += gameMs;
    }

    /** A bowler has finished a game. */
    void bowled() {
        bowlerGames++;
    }

    PaceKept kept() {
        return new PaceKept(pairMs, bowlerGames, waitedMs);
    }
}
