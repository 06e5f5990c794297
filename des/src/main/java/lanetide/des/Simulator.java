package lanetide.des;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import lanetide.des.TraceEntry.Happening;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * A clock and a list of events to come. Running means: take the first event, set the clock to its time, run its action,
 * which may schedule, move or cancel other events; and so on.
 *
 * <p><b>Order of events.</b> Events run by time; at the same time by phase, the lower first; at the same time and phase
 * in the order of scheduling, where rescheduling counts as scheduling anew. This order is total: the same calls give
 * the same run, always. An event scheduled during an action for the present time runs at the present time, even if its
 * phase is lower than that of the event now running.
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

    private final EventPool pool = new EventPool();
    private final EventList events = new LazyQueue(pool);
    private final LongSupplier tieRanks;
    private final List<TraceListener> traceListeners = new ArrayList<>();
    private ScheduledEvent justOver;
    private long nowMs;
    private long nextSequence;
    private long executedEvents;
    private boolean running;
    private boolean stopRequested;

    /** A simulator with its clock at 0 ms and no events. */
    public Simulator() {
        this(() -> 0);
    }

    private Simulator(LongSupplier tieRanks) {
        this.tieRanks = tieRanks;
    }

    /**
     * A simulator in which events of the same time and phase run in random order instead of the order of scheduling. A
     * result that holds only for one order of ties is an accident of the program; run the model in both kinds and compare.
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
     * @return by which the event can be cancelled or moved; if it never will be, {@link #post} makes no garbage
     * @throws IllegalArgumentException if {@code delayMs < 0}, or if {@code nowMs() + delayMs > Long.MAX_VALUE}
     */
    public EventHandle schedule(long delayMs, int phase, String label, Runnable action) {
        return new Handle(this, enter(timeAfter(delayMs, label), phase, label, action));
    }

    /**
     * Schedules an event for a given time.
     *
     * @param timeMs simulated time in milliseconds, not before now
     * @param phase rank among events of the same time; the lower runs first
     * @param label what the event is called in traces and error messages
     * @param action what the event does
     * @return by which the event can be cancelled or moved
     * @throws IllegalArgumentException if {@code timeMs < nowMs()}
     */
    public EventHandle scheduleAt(long timeMs, int phase, String label, Runnable action) {
        return new Handle(this, enter(timeMs, phase, label, action));
    }

    /**
     * Schedules an event a given time from now that nobody will cancel or move. This makes no garbage.
     *
     * @param delayMs milliseconds from now, at least 0
     * @param phase rank among events of the same time; the lower runs first
     * @param label what the event is called in traces and error messages
     * @param action what the event does
     * @throws IllegalArgumentException if {@code delayMs < 0}, or if {@code nowMs() + delayMs > Long.MAX_VALUE}
     */
    public void post(long delayMs, int phase, String label, Runnable action) {
        enter(timeAfter(delayMs, label), phase, label, action);
    }

    /**
     * Runs until no event is left or {@link #stop} is called.
     *
     * @throws IllegalStateException if called from within a run
     */
    public void run() {
        runEvents(Long.MAX_VALUE, () -> true);
    }

    /**
     * Runs all events up to and including the given time, then sets the clock to it. If {@link #stop} ends the run
     * early, the clock stays at the last event executed.
     *
     * @param timeMs simulated time in milliseconds, not before now
     * @throws IllegalArgumentException if {@code timeMs < nowMs()}
     * @throws IllegalStateException if called from within a run
     */
    public void runUntil(long timeMs) {
        if (timeMs < nowMs) {
            throw past("runUntil", timeMs);
        }
        runEvents(timeMs, () -> true);
        if (!stopRequested) {
            nowMs = timeMs;
        }
    }

    /**
     * Runs as long as the condition holds, an event is left, and {@link #stop} is not called.
     *
     * @param condition asked before each event
     * @throws IllegalStateException if called from within a run
     */
    public void runWhile(BooleanSupplier condition) {
        runEvents(Long.MAX_VALUE, Objects.requireNonNull(condition, "condition"));
    }

    /** Ends the present run after the event now executing. Outside a run this changes nothing. */
    public void stop() {
        stopRequested = true;
    }

    /** Adds a listener that is told of all that happens from now on, after the listeners added before it. */
    public void addTraceListener(TraceListener listener) {
        traceListeners.add(Objects.requireNonNull(listener, "listener"));
    }

    /** Number of events whose action has been started since the simulator was made. */
    public long executedEvents() {
        return executedEvents;
    }

    /** Number of events that wait to run. */
    public int pendingEvents() {
        return events.size();
    }

    /** Takes a pending event off the list. */
    void cancel(ScheduledEvent event) {
        events.remove(event);
        long number = event.sequence();
        event.end();
        trace(Happening.CANCELLED, event, number);
        pool.giveBack(event);
    }

    /** Moves a pending event to another time. */
    void reschedule(ScheduledEvent event, long timeMs) {
        requireNotPast(timeMs, event.label());
        events.remove(event);
        event.moveTo(timeMs, tieRanks.getAsLong(), nextSequence++);
        events.add(event);
        trace(Happening.RESCHEDULED, event, event.sequence());
    }

    private ScheduledEvent enter(long timeMs, int phase, String label, Runnable action) {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(action, "action");
        requireNotPast(timeMs, label);
        ScheduledEvent event = takeObject();
        event.become(phase, label, action);
        event.moveTo(timeMs, tieRanks.getAsLong(), nextSequence++);
        events.add(event);
        trace(Happening.SCHEDULED, event, event.sequence());
        return event;
    }

    private long timeAfter(long delayMs, String label) {
        if (delayMs < 0 || delayMs > Long.MAX_VALUE - nowMs) {
            throw impossibleDelay(delayMs, label);
        }
        return nowMs + delayMs;
    }

    private void runEvents(long lastTimeMs, BooleanSupplier condition) {
        if (running) {
            throw new IllegalStateException("the simulator is already running at " + nowMs
                    + " ms; schedule events instead of running it from within an action");
        }
        running = true;
        stopRequested = false;
        try {
            while (!stopRequested && condition.getAsBoolean()) {
                ScheduledEvent event = events.removeFirst(lastTimeMs);
                if (event == null) {
                    break;
                }
                execute(event);
            }
        } finally {
            running = false;
        }
    }

    /** The object of the event is free while its action runs; mostly that schedules another, which takes it over. */
    private void execute(ScheduledEvent event) {
        nowMs = event.timeMs();
        executedEvents++;
        long number = event.sequence();
        event.end();
        trace(Happening.EXECUTED, event, number);
        justOver = event;
        event.action().run();
        if (justOver != null) {
            pool.giveBack(justOver);
            justOver = null;
        }
    }

    private ScheduledEvent takeObject() {
        ScheduledEvent event = justOver;
        if (event == null) {
            return pool.take();
        }
        justOver = null;
        return event;
    }

    private void trace(Happening happening, ScheduledEvent event, long number) {
        if (traceListeners.isEmpty()) {
            return;
        }
        TraceEntry entry = new TraceEntry(nowMs, happening, event.timeMs(), event.phase(), number, event.label());
        for (TraceListener listener : traceListeners) {
            listener.record(entry);
        }
    }

    private IllegalArgumentException impossibleDelay(long delayMs, String label) {
        String what = "delayMs of event '" + label + "' is " + delayMs + ", but ";
        return new IllegalArgumentException(
                delayMs < 0
                        ? what + "must be at least 0; use 0 for now"
                        : what + "at " + nowMs + " ms must be at most " + (Long.MAX_VALUE - nowMs)
                                + "; an event that never comes need not be scheduled");
    }

    private void requireNotPast(long timeMs, String label) {
        if (timeMs < nowMs) {
            throw past("event '" + label + "'", timeMs);
        }
    }

    private IllegalArgumentException past(String what, long timeMs) {
        return new IllegalArgumentException(
                "timeMs of " + what + " is " + timeMs + ", but the clock already stands at " + nowMs + " ms");
    }
}
