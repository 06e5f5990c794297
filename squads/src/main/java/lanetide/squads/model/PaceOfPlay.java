package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * How long things take between shots. Defaults are common practice, no source, checked against the published squad
 * windows.
 *
 * @param firstShotMs mean time from the lane and the bowler being free until he releases a first ball (ms), at least 0
 * @param spareShotMs mean time from the ball's return until the release of the next ball in the frame (ms), at least 0
 * @param spread standard deviation of these two, as a share of their mean, 0 to 1. They follow a log-normal law
 * @param pinsetterMs from the ball's arrival until the pins stand and the lane is free (ms), at least 0
 * @param ballReturnMs from the ball's arrival until it is back with the bowler (ms), at least 0
 * @param movePerPairMs walk past two lanes, that is to a neighbouring pair, with the bags (ms), at least 0
 * @param settleMs getting ready on a new pair before its first shot (ms), at least 0
 * @param courtesy who waits for whom on the approach
 */
public record PaceOfPlay(
        long firstShotMs,
        long spareShotMs,
        double spread,
        long pinsetterMs,
        long ballReturnMs,
        long movePerPairMs,
        long settleMs,
        LaneCourtesy courtesy) {
    /** The pace used where a scenario says nothing. */
    public static final PaceOfPlay USUAL =
            new PaceOfPlay(22_000, 14_000, 0.2, 14_000, 14_000, 20_000, 120_000, LaneCourtesy.USUAL);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a time is negative or the spread lies outside its range
     */
    public PaceOfPlay {
        long shortest = Math.min(firstShotMs, Math.min(spareShotMs, Math.min(pinsetterMs, ballReturnMs)));
        if (Math.min(shortest, Math.min(movePerPairMs, settleMs)) < 0) {
            throw new IllegalArgumentException("pace of play: no time may be below 0 ms, but they are " + firstShotMs
                    + ", " + spareShotMs + ", " + pinsetterMs + ", " + ballReturnMs + ", " + movePerPairMs + ", "
                    + settleMs);
        }
        Require.inRange(spread, "spread of shot times", 0, 1);
    }
}
