package lanetide.squads.play;

import lanetide.squads.model.PaceOfPlay;

/** A bowler as a member of his group: what he throws, how long he takes, and when he has his ball back. */
final class Member {
    private final BowlerInPlay bowler;
    private final ShotTimes times;
    private final ShotTimes practiceTimes;
    private long ballBackMs;

    /** The times have streams of their own, and practice has another, so that more practice changes no time in play. */
    Member(BowlerInPlay bowler, PaceOfPlay pace, Luck luck) {
        double tempo = bowler.bowler().tempo();
        this.bowler = bowler;
        this.times = new ShotTimes(pace, tempo, luck.times());
        this.practiceTimes = new ShotTimes(pace, tempo, luck.practiceTimes());
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

    /** When he has his ball in his hands again (ms). */
    long ballBackMs() {
        return ballBackMs;
    }

    void ballBackAt(long timeMs) {
        ballBackMs = timeMs;
    }
}
