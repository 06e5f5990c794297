package lanetide.squads.play;

import java.util.OptionalInt;
import lanetide.squads.luck.Luck;
import lanetide.squads.model.PaceOfPlay;

/**
 * A bowler as a member of his group: what he throws, how long he takes, when he has his ball back, and which games are
 * his.
 */
final class Member {
    private final BowlerInPlay bowler;
    private final ShotTimes times;
    private final ShotTimes practiceTimes;
    private final Attendance attendance;
    private long ballBackMs;
    private OptionalInt firstGame = OptionalInt.empty();
    private PairLanes at;

    /** The times have streams of their own, and practice has another, so that more practice changes no time in play. */
    Member(BowlerInPlay bowler, PaceOfPlay pace, Attendance attendance, Luck luck) {
        double tempo = bowler.bowler().tempo();
        this.bowler = bowler;
        this.times = new ShotTimes(pace, tempo, luck.times());
        this.practiceTimes = new ShotTimes(pace, tempo, luck.practiceTimes());
        this.attendance = attendance;
    }

    /**
     * When a bowler bowls.
     *
     * @param fromGame first game that is his, from 0
     * @param toGame game from which on he does not bowl, from 0
     * @param arrivesMs when he is there (ms)
     */
    record Attendance(int fromGame, int toGame, long arrivesMs) {
        static final Attendance ALWAYS = new Attendance(0, Integer.MAX_VALUE, 0);
    }

    BowlerInPlay bowler() {
        return bowler;
    }

    ShotTimes times() {
        return times;
    }

    ShotTimes practiceTimes() {
        return practiceTimes;
    }

    /** Whether he bowls a game that begins now. */
    boolean plays(int game, long nowMs) {
        return game >= attendance.fromGame() && game < attendance.toGame() && nowMs >= attendance.arrivesMs();
    }

    /** When he is there (ms). */
    long arrivesMs() {
        return attendance.arrivesMs();
    }

    /** When he has his ball in his hands again (ms). */
    long ballBackMs() {
        return ballBackMs;
    }

    void ballBackAt(long timeMs) {
        ballBackMs = timeMs;
    }

    /** Bowls on these lanes from now on; on other lanes than before he has to find his line anew. */
    void goesTo(PairLanes lanes) {
        if (at != null && !at.equals(lanes)) {
            bowler.agent().moveOn();
        }
        at = lanes;
    }

    void begins(int game) {
        if (firstGame.isEmpty()) {
            firstGame = OptionalInt.of(game);
        }
    }

    /** The first game he bowled, from 0; empty for none. */
    OptionalInt firstGame() {
        return firstGame;
    }
}
