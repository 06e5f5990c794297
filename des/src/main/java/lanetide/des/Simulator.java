package lanetide.des;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.LongSupplier;
import lanetide.des.TraceEntry.Happening;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * A clock and a list of events to come. Running means: take the first event, set the clock to its time, run its action,
 * which may schedule other events; and so on. What is scheduled runs: an action that may have become pointless looks
 * when it runs.
 *
 * <p><b>Order of events.</b> Events run by time; at the same time by phase, the lower first; at the same time and phase
 * in the order of scheduling. This order is total: the same calls give the same run, always. An event scheduled during
 * an action for the present time runs at the present time, even if its phase is lower than that of the event now
 * running.
 *
 * <p><b>Time</b> is a whole number of milliseconds and starts at 0. It never goes back and has nothing to do with the
 * wall clock.
 *
 * <p><b>An action that throws</b> ends the run and its exception reaches the caller. The clock stays at that event,
 * which counts as executed; all others remain as they are, and the simulator may be run on.
 *
 * <p>A simulator belongs to one thread at a time. Independent runs may go in parallel, see {@link Replications}.
 */
public final class Simulator {

    private final EventList events = new EventList();
    private final LongSupplier tieRanks;
    private final List<TraceListener> traceListeners = new ArrayList<>();
    private long nowMs;
    private long nextSequence;
    private long executedEvents;
    private boolean running;

    /** A simulator with its clock at 0 ms and no events. */
    public Simulator() {
        this(() -> 0);
    }

    private Simulator(LongSupplier tieRanks) {
        this.tieRanks = tieRanks;
    }

    /**
     * A simulator in which events of the same time and phase run in random order instead of the order of scheduling. A
     * result that holds only for one order of ties is an accident of the program; run the model in both kinds and
     * compare.
     *
     * @param random draws the order; give it a stream of its own, so that nothing else changes
     */
    public static Simulator permutingTies(UniformRandomProvider random) {
        return new Simulator(random::nextLong);
    }

    /** The present simulated time in milliseconds. */
    public long nowMs() {
        return nowMs;
    }

    /**
     * Schedules an event a given time from now.
     *
     * @param delayMs milliseconds from now, at least 0
     * @param phase rank among events of the same time; the lower runs first
     * @param label what the event is called in traces and error messages
     * @param action what the event does
     * @throws IllegalArgumentException if {@code delayMs < 0}, or if {@code nowMs() + delayMs > Long.MAX_VALUE}
     */
    public void schedule(long delayMs, int phase, String label, Runnable action) {
        if (delayMs < 0 || delayMs > Long.MAX_VALUE - nowMs) {
            throw impossibleDelay(delayMs, label);
        }
        scheduleAt(nowMs + delayMs, phase, label, action);
    }

    /**
     * Schedules an event for a given time.
     *
     * @param timeMs simulated time in milliseconds, not before now
     * @param phase rank among events of the same time; the lower runs first
     * @param label what the event is called in traces and error messages
     * @param action what the event does
     * @throws IllegalArgumentException if {@code timeMs < nowMs()}
     */
    public void scheduleAt(long timeMs, int phase, String label, Runnable action) {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(action, "action");
        if (timeMs < nowMs) {
            throw new IllegalArgumentException("timeMs of event '" + label + "' is " + timeMs
                    + ", but the clock already stands at " + nowMs + " ms");
        }
        ScheduledEvent event = new ScheduledEvent(timeMs, phase, tieRanks.getAsLong(), nextSequence++, label, action);
        events.add(event);
        trace(Happening.SCHEDULED, event);
    }

    /**
     * Runs until no event is left.
     *
     * @throws IllegalStateException if called from within a run
     */
    public void run() {
        if (running) {
            throw new IllegalStateException("the simulator is already running at " + nowMs
                    + " ms; schedule events instead of running it from within an action");
        }
        running = true;
        try {
            for (ScheduledEvent next = events.removeFirst(); next != null; next = events.removeFirst()) {
                execute(next);
            }
        } finally {
            running = false;
        }
    }

    /** Adds a listener that is told of all that happens from now on, after the listeners added before it. */
    public void addTraceListener(TraceListener listener) {
        traceListeners.add(Objects.requireNonNull(listener, "listener"));
    }

    /** Number of events whose action has been started since the simulator was made. */
    public long executedEvents() {
        return executedEvents;
    }

    private void execute(ScheduledEvent event) {
        nowMs = event.timeMs();
        executedEvents++;
        trace(Happening.EXECUTED, event);
        event.action().run();
    }

    private void trace(Happening happening, ScheduledEvent event) {
        if (traceListeners.isEmpty()) {
            return;
        }
        TraceEntry entry =
                new TraceEntry(nowMs, happening, event.timeMs(), event.phase(), event.sequence(), event.label());
        for (TraceListener listener : traceListeners) {
            listener.record(entry);
        }
    }

    private IllegalArgumentException impossibleDelay(long delayMs, String label) {
        return new IllegalArgumentException("delayMs of event '" + label + "' is " + delayMs
                + ", but must be at least 0 and at " + nowMs + " ms at most " + (Long.MAX_VALUE - nowMs));
    }
}
