package lanetide.squads.play;

import lanetide.squads.result.ThrownBall;

/** Throws the balls of a playing. One object serves one playing. */
interface Balls {
    /**
     * Throws at what stands before a bowler.
     *
     * @return pins left standing
     */
    int throwBall(BowlerInPlay bowler, Mates mates, LaneInPlay lane, long timeMs);

    /** Time the last ball took to the pins (ms). */
    long travelMs();

    /** What the last ball did; only after a ball. */
    ThrownBall lastBall();

    /** Balls thrown so far. */
    long thrown();
}
