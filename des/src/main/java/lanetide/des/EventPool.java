package lanetide.des;

import java.util.Arrays;

/** The objects for events, used again and again, so that a steady simulation makes no garbage. */
final class EventPool {

    private static final int INITIAL_CAPACITY = 64;

    private ScheduledEvent[] events = new ScheduledEvent[INITIAL_CAPACITY];
    private int made;

    /** Ids of objects that are no events, the one to be used next at the end. */
    private int[] free = new int[INITIAL_CAPACITY];

    private int freeCount;

    /** The object that was given back last, or a new one. */
    ScheduledEvent take() {
        return freeCount > 0 ? events[free[--freeCount]] : make();
    }

    /** Takes back the object of an event that is over. */
    void giveBack(ScheduledEvent event) {
        event.forget();
        free[freeCount++] = event.id();
    }

    ScheduledEvent event(int id) {
        return events[id];
    }

    private ScheduledEvent make() {
        if (made == events.length) {
            int capacity = Math.multiplyExact(made, 2);
            events = Arrays.copyOf(events, capacity);
            free = Arrays.copyOf(free, capacity);
        }
        events[made] = new ScheduledEvent(made);
        return events[made++];
    }
}
