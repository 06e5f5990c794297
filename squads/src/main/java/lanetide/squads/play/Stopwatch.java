package lanetide.squads.play;

import java.util.EnumMap;
import java.util.Map;

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

    /** A game is over on a pair. */
    void played(long gameMs, int bowlers) {
        pairMs += gameMs;
        bowlerGames += bowlers;
    }

    PaceKept kept() {
        return new PaceKept(pairMs, bowlerGames, waitedMs);
    }
}
