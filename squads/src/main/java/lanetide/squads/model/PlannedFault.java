package lanetide.squads.model;

/**
 * A lane that goes out of order at a time known beforehand, to try out what a director would do.
 *
 * @param lane lane number
 * @param atMs when (ms from midnight before the first day), at least 0
 * @param workMs time of the work, once it is begun (ms), at least 0
 */
public record PlannedFault(int lane, long atMs, long workMs) {
    /**
     * Checks the times.
     *
     * @throws IllegalArgumentException if a time is negative
     */
    public PlannedFault {
        if (atMs < 0 || workMs < 0) {
            throw new IllegalArgumentException(
                    "fault of lane " + lane + ": times " + atMs + " ms and " + workMs + " ms must be at least 0");
        }
    }
}
