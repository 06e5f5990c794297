package lanetide.des;

/** Pending events in their total order, {@link ScheduledEvent#precedes}. */
interface EventList {

    /** Adds an event that the list does not hold. */
    void add(ScheduledEvent event);

    /** Removes an event that the list holds. */
    void remove(ScheduledEvent event);

    /** Removes and returns the event that runs next; null, changing nothing, if there is none up to the given time. */
    ScheduledEvent removeFirst(long lastTimeMs);

    int size();
}
