package lanetide.des;

/**
 * The caller's hold on one event. The kernel's object for the event is used again when the event is over; the handle then
 * knows by the sequence number, which is never given twice, that its own event is gone.
 */
final class Handle implements EventHandle {

    private final Simulator simulator;
    private final ScheduledEvent event;
    private final int phase;
    private final String label;
    private long timeMs;
    private long sequence;

    Handle(Simulator simulator, ScheduledEvent event) {
        this.simulator = simulator;
        this.event = event;
        this.phase = event.phase();
        this.label = event.label();
        this.timeMs = event.timeMs();
        this.sequence = event.sequence();
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
        return event.sequence() == sequence;
    }

    @Override
    public boolean cancel() {
        if (!isPending()) {
            return false;
        }
        simulator.cancel(event);
        return true;
    }

    @Override
    public void reschedule(long newTimeMs) {
        if (!isPending()) {
            throw new IllegalStateException(
                    "event '" + label + "' has run or was cancelled and cannot be rescheduled; schedule a new one");
        }
        simulator.reschedule(event, newTimeMs);
        timeMs = event.timeMs();
        sequence = event.sequence();
    }

    @Override
    public String toString() {
        return "event '" + label + "' at " + timeMs + " ms, phase " + phase;
    }
}
