package lanetide.des;

/** An event as the kernel sees it: its place in the total order, its action, and its place in the event list. */
final class ScheduledEvent implements EventHandle, Comparable<ScheduledEvent> {

    /** The index of an event that no list holds. */
    static final int NOT_LISTED = -1;

    /** Where the event list keeps this event; written by the list alone. */
    int index = NOT_LISTED;

    private final Simulator simulator;
    private final int phase;
    private final String label;
    private final Runnable action;
    private long timeMs;
    private long sequence;

    ScheduledEvent(Simulator simulator, long timeMs, int phase, long sequence, String label, Runnable action) {
        this.simulator = simulator;
        this.timeMs = timeMs;
        this.phase = phase;
        this.sequence = sequence;
        this.label = label;
        this.action = action;
    }

    @Override
    public long timeMs() {
        return timeMs;
    }

    @Override
    public int phase() {
        return phase;
    }

    @Override
    public String label() {
        return label;
    }

    @Override
    public boolean isPending() {
        return index != NOT_LISTED;
    }

    @Override
    public boolean cancel() {
        return simulator.cancel(this);
    }

    @Override
    public void reschedule(long newTimeMs) {
        simulator.reschedule(this, newTimeMs);
    }

    long sequence() {
        return sequence;
    }

    Runnable action() {
        return action;
    }

    /** Takes a new place in the order; only while no list holds the event, since lists are sorted by it. */
    void moveTo(long newTimeMs, long newSequence) {
        timeMs = newTimeMs;
        sequence = newSequence;
    }

    /** The total order of events: time, then phase, then sequence number, which no two events share. */
    @Override
    public int compareTo(ScheduledEvent other) {
        int byTime = Long.compare(timeMs, other.timeMs);
        return byTime != 0 ? byTime : compareAtSameTime(other);
    }

    int compareAtSameTime(ScheduledEvent other) {
        int byPhase = Integer.compare(phase, other.phase);
        return byPhase != 0 ? byPhase : Long.compare(sequence, other.sequence);
    }

    @Override
    public String toString() {
        return "event '" + label + "' at " + timeMs + " ms, phase " + phase;
    }
}
