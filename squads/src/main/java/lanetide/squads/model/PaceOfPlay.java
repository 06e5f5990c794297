package lanetide.squads.model;

/**
 * How long things take between shots. Defaults are common practice, no source, checked against the published squad
 * windows.
 *
 * @param firstShotMs from the lane being free until the bowler whose turn it is releases a first ball (ms)
 * @param spareShotMs from the ball's return until the release of the next ball in the frame (ms)
 * @param resetMs from the ball's arrival until the pins are set and the ball is back (ms)
 * @param movePerPairMs walk past two lanes, that is to a neighbouring pair, with the bags (ms)
 * @param settleMs getting ready on a new pair before its first shot (ms)
 */
public record PaceOfPlay(long firstShotMs, long spareShotMs, long resetMs, long movePerPairMs, long settleMs) {
    /** The pace used where a scenario says nothing. */
    public static final PaceOfPlay USUAL = new PaceOfPlay(22_000, 14_000, 14_000, 20_000, 120_000);

    /**
     * Checks that no time is negative.
     *
     * @throws IllegalArgumentException if a time is negative
     */
    public PaceOfPlay {
        if (Math.min(Math.min(firstShotMs, spareShotMs), Math.min(resetMs, Math.min(movePerPairMs, settleMs))) < 0) {
            throw new IllegalArgumentException("pace of play: no time may be below 0 ms, but they are " + firstShotMs
                    + ", " + spareShotMs + ", " + resetMs + ", " + movePerPairMs + ", " + settleMs);
        }
    }
}
