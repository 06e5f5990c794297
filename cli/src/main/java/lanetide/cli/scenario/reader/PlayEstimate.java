package lanetide.cli.scenario.reader;

import lanetide.squads.model.Bowler;
import lanetide.squads.model.Break;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;

/**
 * The shortest time in which a squad can be done, before it is played.
 *
 * <p>A pair's two lanes are in play at the same time, so a game of several bowlers takes the lanes' time for all their
 * shots, divided by two. A first ball occupies a lane for {@code firstShot + pinsetter}, a further ball in the frame
 * for {@code spareShot} and the slower of pinsetter and ball return.
 *
 * @param pace how long things take
 */
record PlayEstimate(PaceOfPlay pace) {
    /** First balls in a game: one a frame. */
    private static final int FRAMES = 10;

    /** Balls beyond the first that no bowler can avoid: the two fill balls after a strike in the tenth frame. */
    private static final int FURTHER = 2;

    private static final int LANES = 2;

    /**
     * The shortest time: strikes only, both lanes always in use, no ride of the ball, no walking, no neighbour, and
     * everybody a standard deviation quicker than his mean; breaks as planned.
     *
     * @param squad the squad
     * @param games its games
     * @return the time from the start of its practice (ms)
     */
    long fastestMs(Squad squad, int games) {
        long slowestGroupMs =
                squad.groups().stream().mapToLong(this::gameMs).max().orElse(0);
        return squad.practiceMs() + breaksMs(squad) + games * slowestGroupMs;
    }

    private static long breaksMs(Squad squad) {
        return squad.arrangements().breaks().stream().mapToLong(Break::lengthMs).sum();
    }

    private long gameMs(Group group) {
        double tempos = group.bowlers().stream().mapToDouble(Bowler::tempo).sum();
        long ownMs =
                Math.round((1 - pace.spread()) * tempos * (FRAMES * pace.firstShotMs() + FURTHER * pace.spareShotMs()));
        long lanesMs = FRAMES * pace.pinsetterMs() + FURTHER * Math.max(pace.pinsetterMs(), pace.ballReturnMs());
        return (ownMs + group.bowlers().size() * lanesMs) / LANES;
    }
}
