package lanetide.des;

/**
 * Pending events in their total order ({@link ScheduledEvent#compareTo}). A list marks the events it holds by a
 * {@link ScheduledEvent#index} other than {@link ScheduledEvent#NOT_LISTED}, and unmarks those it gives up.
 */
interface EventList {

    /** Adds an event that no list holds. */
    void add(ScheduledEvent event);

    /** Removes an event that this list holds. */
    void remove(ScheduledEvent event);

    /** The event that runs next; the list must not be empty. */
    ScheduledEvent first();

    /** Removes and returns the event that runs next; the list must not be empty. */
    ScheduledEvent removeFirst();

    int size();

    default boolean isEmpty() {
        return size() == 0;
    }
}
