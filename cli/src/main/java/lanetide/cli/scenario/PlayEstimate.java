package lanetide.cli.scenario;

import lanetide.squads.model.PaceOfPlay;

/**
 * How long a squad will take, before it is simulated.
 *
 * <p>A pair's two lanes are in play at the same time, so a game of {@code n} bowlers takes the lanes' time for all their
 * shots, divided by two (by one for a single bowler, who cannot throw on both). A first ball occupies a lane for
 * {@code firstShot + ride + reset}, a further ball in the frame for {@code spareShot + ride + reset}.
 *
 * @param pace how long things take
 */
public record PlayEstimate(PaceOfPlay pace) {
    /** First balls in a game: one a frame. */
    private static final int FRAMES = 10;

    /** Balls beyond the first that no bowler can avoid: the two fill balls after a strike in the tenth frame. */
    private static final int FEWEST_FURTHER = 2;

    /** Balls beyond the first in a usual game of about 17 balls (common practice, no source). */
    private static final int USUAL_FURTHER = 7;

    /** Time from release to the pins (ms): 2.0 to 2.6 s is published for usual speeds; the middle. */
    private static final long RIDE_MS = 2_300;

    /**
     * The shortest time in which a squad can be done: strikes only, both lanes always in use, no walking.
     *
     * @param bowlers bowlers on the fullest pair
     * @param games games
     * @param practiceMs length of practice (ms)
     * @return the time from its start (ms)
     */
    public long fastestMs(int bowlers, int games, long practiceMs) {
        return practiceMs + games * gameMs(bowlers, FEWEST_FURTHER, 2, 0);
    }

    /**
     * The time a squad usually takes: the same, with usual spares, the ride of the ball and the walk to the next pair.
     *
     * @param bowlers bowlers on the fullest pair
     * @param games games
     * @param practiceMs length of practice (ms)
     * @return the time from its start (ms)
     */
    public long usualMs(int bowlers, int games, long practiceMs) {
        long walkMs = (games - 1) * (pace.movePerPairMs() + pace.settleMs());
        return practiceMs + games * gameMs(bowlers, USUAL_FURTHER, Math.min(bowlers, 2), RIDE_MS) + walkMs;
    }

    private long gameMs(int bowlers, int further, int lanesInUse, long rideMs) {
        long firstMs = pace.firstShotMs() + rideMs + pace.resetMs();
        long furtherMs = pace.spareShotMs() + rideMs + pace.resetMs();
        return bowlers * (FRAMES * firstMs + further * furtherMs) / lanesInUse;
    }
}
