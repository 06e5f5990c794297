package lanetide.squads.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * How fast a squad bowled and what held it up.
 *
 * @param pairMs time of play of all games on all pairs together, from a game's start on a pair to its end there (ms)
 * @param bowlerGames games bowled, counted once for each bowler
 * @param waitedMs time lanes stood still by cause (ms of one lane); causes that did not occur are left out
 */
public record PaceKept(long pairMs, int bowlerGames, Map<WaitCause, Long> waitedMs) {
    private static final double MINUTE_MS = 60_000;

    /** Nothing bowled, nothing waited for. */
    public static final PaceKept NOTHING = new PaceKept(0, 0, Map.of());

    /** Copies the map. */
    public PaceKept {
        Map<WaitCause, Long> copy = new EnumMap<>(WaitCause.class);
        copy.putAll(waitedMs);
        waitedMs = Collections.unmodifiableMap(copy);
    }

    /**
     * Adds another count.
     *
     * @param other the other
     * @return both together
     */
    public PaceKept plus(PaceKept other) {
        Map<WaitCause, Long> sum = new EnumMap<>(WaitCause.class);
        sum.putAll(waitedMs);
        other.waitedMs.forEach((cause, ms) -> sum.merge(cause, ms, Long::sum));
        return new PaceKept(pairMs + other.pairMs, bowlerGames + other.bowlerGames, sum);
    }

    /**
     * The pace.
     *
     * @return minutes of a pair for one game of one bowler; empty if nothing was bowled
     */
    public OptionalDouble minutesPerBowlerGame() {
        return perBowlerGame((double) pairMs);
    }

    /**
     * Time waited for a cause.
     *
     * @param cause the cause
     * @return minutes of a pair (half the minutes of its lanes) for one game of one bowler; empty if nothing was bowled
     */
    public OptionalDouble minutesWaited(WaitCause cause) {
        return perBowlerGame(waitedMs.getOrDefault(cause, 0L) / 2.0);
    }

    private OptionalDouble perBowlerGame(double ms) {
        return bowlerGames == 0 ? OptionalDouble.empty() : OptionalDouble.of(ms / MINUTE_MS / bowlerGames);
    }
}
