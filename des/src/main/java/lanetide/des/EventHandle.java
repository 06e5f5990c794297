package lanetide.des;

/**
 * What the caller keeps of an event it scheduled. An event is pending until its action starts or it is cancelled;
 * after that it can be neither cancelled nor rescheduled, not even from within its own action.
 */
public interface EventHandle {

    /** Simulated time in milliseconds at which the event runs, ran, or would have run. */
    long timeMs();

    /** Rank among events of the same time; the lower phase runs first. */
    int phase();

    /** What the event is called in traces and error messages. */
    String label();

    /** Whether the event still waits to run. */
    boolean isPending();

    /**
     * Takes the event off the list, so that it never runs.
     *
     * @return false, changing nothing, if the event has already run, is running, or was cancelled before
     */
    boolean cancel();

    /**
     * Moves the event to another time; among events of the same time and phase it then counts as the last scheduled.
     *
     * @param timeMs the new simulated time in milliseconds, not before the present
     * @throws IllegalStateException if the event is no longer pending
     * @throws IllegalArgumentException if {@code timeMs} is less than the simulator's present time
     */
    void reschedule(long timeMs);
}
