package lanetide.des;

/**
 * An event that waits: its place in the total order, and what it does.
 *
 * @param timeMs simulated time in milliseconds at which it runs
 * @param phase rank among events of the same time; the lower runs first
 * @param tieRank rank among events of the same time and phase; the lower runs first
 * @param sequence how many events were scheduled before it, which no two events share
 * @param label what it is called in traces and error messages
 * @param action what it does
 */
record ScheduledEvent(long timeMs, int phase, long tieRank, long sequence, String label, Runnable action) {

    /** The total order of events: time, then phase, then rank among ties, then sequence number. */
    boolean precedes(ScheduledEvent other) {
        if (timeMs != other.timeMs) {
            return timeMs < other.timeMs;
        }
        if (phase != other.phase) {
            return phase < other.phase;
        }
        return tieRank != other.tieRank ? tieRank < other.tieRank : sequence < other.sequence;
    }
}
