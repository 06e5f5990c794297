package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * Chance events that put a lane out of order. They come after a geometric number of frames, and the work on each is
 * log-normal.
 *
 * @param everyFrames mean number of frames on a lane from one to the next, at least 1; infinite for never
 * @param workMs mean time of the work, once it is begun (ms), at least 0
 * @param spread standard deviation of the work as a share of its mean, 0 to 3
 */
public record Stops(double everyFrames, long workMs, double spread) {
    /** Nothing ever stops. */
    public static final Stops NEVER = new Stops(Double.POSITIVE_INFINITY, 0, 0);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Stops {
        Require.inRange(everyFrames, "frames between stops of a lane", 1, Double.POSITIVE_INFINITY);
        Require.inRange(spread, "spread of the work on a lane", 0, 3);
        if (workMs < 0) {
            throw new IllegalArgumentException("work on a lane is " + workMs + " ms; it must be at least 0");
        }
    }
}
