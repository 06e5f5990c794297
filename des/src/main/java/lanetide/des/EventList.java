package lanetide.des;

import java.util.Arrays;

/**
 * Pending events in an implicit heap in which every slot has up to four children: those of slot i stand in slots 4i+1
 * to 4i+4, and none of them {@linkplain ScheduledEvent#precedes precedes} the event of slot i. Adding an event and
 * removing the first cost O(log n); four children halve the depth of a binary heap.
 *
 * <p>After the first event was removed its slot stays open: in most simulations the next call adds an event, which
 * sinks into the heap from there, so that one pass does for two.
 *
 * <p>Source: D. B. Johnson, "Priority queues with update and finding minimum spanning trees", Information Processing
 * Letters 4 (1975), for heaps with more than two children.
 */
final class EventList {

    private static final int CHILDREN = 4;
    private static final int INITIAL_CAPACITY = 64;

    private ScheduledEvent[] events = new ScheduledEvent[INITIAL_CAPACITY];

    /** Slots in use, an open one included. */
    private int size;

    private boolean firstIsOpen;

    void add(ScheduledEvent event) {
        if (firstIsOpen) {
            firstIsOpen = false;
            siftDown(event);
        } else {
            if (size == events.length) {
                events = Arrays.copyOf(events, Math.multiplyExact(size, 2));
            }
            siftUp(event);
        }
    }

    /** Removes and returns the event that runs next; null if there is none. */
    ScheduledEvent removeFirst() {
        if (firstIsOpen) {
            closeFirst();
        }
        ScheduledEvent first = events[0];
        firstIsOpen = first != null;
        return first;
    }

    /** Fills the open slot with the event of the last. */
    private void closeFirst() {
        firstIsOpen = false;
        size--;
        ScheduledEvent last = events[size];
        events[size] = null;
        if (size > 0) {
            siftDown(last);
        }
    }

    /** Lets an event rise from a new slot at the end to its place. */
    private void siftUp(ScheduledEvent event) {
        int slot = size++;
        while (slot > 0) {
            int parent = (slot - 1) / CHILDREN;
            if (!event.precedes(events[parent])) {
                break;
            }
            events[slot] = events[parent];
            slot = parent;
        }
        events[slot] = event;
    }

    /** Lets an event sink from the first slot, which is open, to its place. */
    private void siftDown(ScheduledEvent event) {
        int slot = 0;
        int child = firstOfChildren(slot);
        while (child < size) {
            ScheduledEvent first = events[child];
            if (event.precedes(first)) {
                break;
            }
            events[slot] = first;
            slot = child;
            child = firstOfChildren(slot);
        }
        events[slot] = event;
    }

    /** The child that runs first, or a slot beyond the end if there is no child. */
    private int firstOfChildren(int parent) {
        int first = CHILDREN * parent + 1;
        int end = Math.min(first + CHILDREN, size);
        for (int slot = first + 1; slot < end; slot++) {
            first = events[slot].precedes(events[first]) ? slot : first;
        }
        return first;
    }
}
