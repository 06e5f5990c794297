package lanetide.cli.scenario.reader;

import java.util.function.ToLongFunction;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Break;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;

/**
 * How long a squad will take, before it is simulated.
 *
 * <p>A pair's two lanes are in play at the same time, so a game of several bowlers takes the lanes' time for all their
 * shots, divided by two (by one for a single bowler, who cannot throw on both). A first ball occupies a lane for
 * {@code firstShot + ride + pinsetter}, a further ball in the frame for {@code spareShot + ride} and the slower of
 * pinsetter and ball return; a lone bowler waits for his ball in any case.
 *
 * @param pace how long things take
 */
public record PlayEstimate(PaceOfPlay pace) {
    /** First balls in a game: one a frame. */
    private static final int FRAMES = 10;

    /** Balls beyond the first that no bowler can avoid: the two fill balls after a strike in the tenth frame. */
    private static final int MIN_FURTHER = 2;

    /** Balls beyond the first in a usual game of about 17 balls (common practice, no source). */
    private static final int TYPICAL_FURTHER = 7;

    /** Time from release to the pins (ms): 2.0 to 2.6 s is published for usual speeds; the middle. */
    private static final long RIDE_MS = 2_300;

    /**
     * The shortest time in which a squad can be done: strikes only, both lanes always in use, no walking, no neighbour,
     * and everybody a standard deviation quicker than his mean; breaks as planned.
     *
     * @param squad the squad
     * @param games its games
     * @return the time from the start of its practice (ms)
     */
    public long fastestMs(Squad squad, int games) {
        return squad.practiceMs()
                + breaksMs(squad)
                + games * slowest(squad, group -> gameMs(group, MIN_FURTHER, 2, 0, 1 - pace.spread(), 0));
    }

    /**
     * The time a squad usually takes: the same at the mean pace, with usual spares, the ride of the ball, neighbours
     * and the walk to the next pair.
     *
     * @param squad the squad
     * @param games its games
     * @return the time from the start of its practice (ms)
     */
    public long usualMs(Squad squad, int games) {
        long walkMs = (games - 1) * (pace.movePerPairMs() + pace.settleMs());
        return squad.practiceMs() + breaksMs(squad) + games * slowest(squad, this::usualGameMs) + walkMs;
    }

    private static long breaksMs(Squad squad) {
        return squad.arrangements().breaks().stream().mapToLong(Break::lengthMs).sum();
    }

    private long usualGameMs(Group group) {
        int lanesInUse = Math.min(group.bowlers().size(), 2);
        return gameMs(group, TYPICAL_FURTHER, lanesInUse, RIDE_MS, 1, neighbourMs());
    }

    /**
     * Mean wait for neighbours before a ball: there are two for each lane of courtesy, each is on the approach for its
     * share of a lane's cycle, and is met in the middle of it.
     */
    private long neighbourMs() {
        long onApproachMs = Math.min(pace.courtesy().approachMs(), pace.firstShotMs());
        long cycleMs = pace.firstShotMs() + RIDE_MS + pace.pinsetterMs();
        return pace.courtesy().lanes() * onApproachMs * onApproachMs / cycleMs;
    }

    private static long slowest(Squad squad, ToLongFunction<Group> timeMs) {
        return squad.groups().stream().mapToLong(timeMs).max().orElse(0);
    }

    private long gameMs(Group group, int further, int lanesInUse, long rideMs, double shareOfTime, long waitMs) {
        double tempos = group.bowlers().stream().mapToDouble(Bowler::tempo).sum();
        long ownMs = Math.round(shareOfTime * tempos * (FRAMES * pace.firstShotMs() + further * pace.spareShotMs()));
        long firstMs = rideMs + waitMs + (lanesInUse == 1 ? pace.ballReturnMs() : pace.pinsetterMs());
        long furtherMs = rideMs + waitMs + Math.max(pace.pinsetterMs(), pace.ballReturnMs());
        return (ownMs + group.bowlers().size() * (FRAMES * firstMs + further * furtherMs)) / lanesInUse;
    }
}
