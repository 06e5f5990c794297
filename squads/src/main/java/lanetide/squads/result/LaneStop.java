package lanetide.squads.result;

/**
 * A time for which a lane was out of order.
 *
 * @param lane lane number
 * @param kind what it was
 * @param startMs when it stopped (ms from midnight before the first day)
 * @param endMs when it was in order again (ms)
 */
public record LaneStop(int lane, Kind kind, long startMs, long endMs) {
    /** Kinds of stop. */
    public enum Kind {
        /** A short stop of the pinsetter. */
        JAM,
        /** A fault of the lane. */
        FAULT
    }
}
