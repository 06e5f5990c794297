package lanetide.des;

import java.util.Arrays;

/**
 * Event list as an implicit heap in which every node has up to four children: children of slot i stand in slots 4i+1 to
 * 4i+4. Adding, removing the first and removing any other event cost O(log n), the last because each event knows its
 * slot; nothing removed leaves a trace behind.
 *
 * <p>Four children halve the depth of a binary heap, and the times stand apart in an array of their own, so that most
 * comparisons touch neighbouring memory and no event object.
 *
 * <p>Source: D. B. Johnson, "Priority queues with update and finding minimum spanning trees", Information Processing
 * Letters 4 (1975), for d-ary heaps.
 */
final class FourAryHeap implements EventList {

    private static final int CHILDREN = 4;
    private static final int INITIAL_CAPACITY = 64;

    private ScheduledEvent[] events = new ScheduledEvent[INITIAL_CAPACITY];
    private long[] timesMs = new long[INITIAL_CAPACITY];
    private int size;

    @Override
    public void add(ScheduledEvent event) {
        if (size == events.length) {
            grow();
        }
        siftUp(size++, event);
    }

    @Override
    public void remove(ScheduledEvent event) {
        removeAt(event.slot);
    }

    @Override
    public ScheduledEvent first() {
        return events[0];
    }

    @Override
    public ScheduledEvent removeFirst() {
        ScheduledEvent first = events[0];
        removeAt(0);
        return first;
    }

    @Override
    public int size() {
        return size;
    }

    private void grow() {
        int capacity = Math.multiplyExact(size, 2);
        events = Arrays.copyOf(events, capacity);
        timesMs = Arrays.copyOf(timesMs, capacity);
    }

    /** Fills the gap with the last event, which may belong above or below it. */
    private void removeAt(int gap) {
        events[gap].slot = ScheduledEvent.NOT_LISTED;
        ScheduledEvent last = events[--size];
        events[size] = null;
        if (gap == size) {
            return;
        }
        siftDown(gap, last);
        if (last.slot == gap) {
            siftUp(gap, last);
        }
    }

    private void siftUp(int start, ScheduledEvent event) {
        int slot = start;
        while (slot > 0) {
            int parent = (slot - 1) / CHILDREN;
            if (!precedes(event, parent)) {
                break;
            }
            place(slot, events[parent]);
            slot = parent;
        }
        place(slot, event);
    }

    private void siftDown(int start, ScheduledEvent event) {
        int slot = start;
        int child = firstOfChildren(slot);
        while (child < size && !precedes(event, child)) {
            place(slot, events[child]);
            slot = child;
            child = firstOfChildren(slot);
        }
        place(slot, event);
    }

    /** The child that runs first, or a slot beyond the end if there is no child. */
    private int firstOfChildren(int parent) {
        int first = CHILDREN * parent + 1;
        int end = Math.min(first + CHILDREN, size);
        for (int child = first + 1; child < end; child++) {
            if (precedes(events[child], first)) {
                first = child;
            }
        }
        return first;
    }

    private boolean precedes(ScheduledEvent event, int slot) {
        long timeMs = event.timeMs();
        return timeMs != timesMs[slot] ? timeMs < timesMs[slot] : event.compareAtSameTime(events[slot]) < 0;
    }

    private void place(int slot, ScheduledEvent event) {
        events[slot] = event;
        timesMs[slot] = event.timeMs();
        event.slot = slot;
    }
}
