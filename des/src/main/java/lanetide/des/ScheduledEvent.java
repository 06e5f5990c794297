package lanetide.des;

/**
 * An event that waits, as the kernel sees it: its place in the total order and its action. Once it is over the object is
 * used again for another event, so that the kernel alone may hold on to one; callers get an {@link EventHandle}.
 */
final class ScheduledEvent {

    private static final long NONE = -1;

    private final int id;
    private long timeMs;
    private int phase;
    private long tieRank;
    private long sequence = NONE;
    private String label;
    private Runnable action;

    ScheduledEvent(int id) {
        this.id = id;
    }

    /** Number of the object, kept from use to use; a pool counts its objects from 0. */
    int id() {
        return id;
    }

    long timeMs() {
        return timeMs;
    }

    int phase() {
        return phase;
    }

    /** Number given at scheduling or rescheduling, which no two events share; of no event, -1. */
    long sequence() {
        return sequence;
    }

    String label() {
        return label;
    }

    Runnable action() {
        return action;
    }

    void become(int newPhase, String newLabel, Runnable newAction) {
        phase = newPhase;
        label = newLabel;
        action = newAction;
    }

    /** Takes a new place in the order; only while no list holds the event, since lists are sorted by it. */
    void moveTo(long newTimeMs, long newTieRank, long newSequence) {
        timeMs = newTimeMs;
        tieRank = newTieRank;
        sequence = newSequence;
    }

    /** Becomes no event, as handles will find. */
    void end() {
        sequence = NONE;
    }

    /** Forgets what it was to do, so that nothing stays in memory for its sake. */
    void forget() {
        label = null;
        action = null;
    }

    /** The total order of events: time, then {@link #precedesAtSameTime}. */
    boolean precedes(ScheduledEvent other) {
        return timeMs < other.timeMs || (timeMs == other.timeMs && precedesAtSameTime(other));
    }

    /** The order of events of the same time: phase, then rank among ties, then sequence number. */
    boolean precedesAtSameTime(ScheduledEvent other) {
        if (phase != other.phase) {
            return phase < other.phase;
        }
        return tieRank != other.tieRank ? tieRank < other.tieRank : sequence < other.sequence;
    }
}
