package lanetide.des;

import java.util.Arrays;

/**
 * Event list as an implicit heap in which every slot has up to four children: those of slot i stand in slots 4i+1 to
 * 4i+4. Adding, removing the first and removing any other event cost O(log n), the last because the list knows the slot
 * of each event; nothing removed leaves a trace behind.
 *
 * <p>Four children halve the depth of a binary heap. What moves between slots are times and numbers, in arrays of their
 * own, so that most comparisons and all moves touch compact memory and no event object. The price is one indirection:
 * while it is listed an event keeps an index into {@link #events}, and {@link #indices} maps slots to indices.
 *
 * <p>Source: D. B. Johnson, "Priority queues with update and finding minimum spanning trees", Information Processing
 * Letters 4 (1975), for heaps with more than two children.
 */
final class FourAryHeap implements EventList {

    private static final int CHILDREN = 4;
    private static final int INITIAL_CAPACITY = 64;

    /** Listed events by index. */
    private ScheduledEvent[] events = {};

    /** Slots by index. */
    private int[] slots = {};

    /** Indices by slot; those from slot {@link #size} on are free. */
    private int[] indices = {};

    /** Times by slot. */
    private long[] timesMs = {};

    private int size;

    FourAryHeap() {
        growTo(INITIAL_CAPACITY);
    }

    @Override
    public void add(ScheduledEvent event) {
        if (size == events.length) {
            growTo(Math.multiplyExact(size, 2));
        }
        int index = indices[size];
        event.index = index;
        events[index] = event;
        siftUp(size++, index, event.timeMs());
    }

    @Override
    public void remove(ScheduledEvent event) {
        removeAt(slots[event.index]);
    }

    @Override
    public ScheduledEvent first() {
        return events[indices[0]];
    }

    @Override
    public ScheduledEvent removeFirst() {
        return removeAt(0);
    }

    @Override
    public int size() {
        return size;
    }

    private void growTo(int capacity) {
        events = Arrays.copyOf(events, capacity);
        slots = Arrays.copyOf(slots, capacity);
        indices = Arrays.copyOf(indices, capacity);
        timesMs = Arrays.copyOf(timesMs, capacity);
        for (int free = size; free < capacity; free++) {
            indices[free] = free;
        }
    }

    private ScheduledEvent removeAt(int gap) {
        int index = indices[gap];
        ScheduledEvent removed = events[index];
        removed.index = ScheduledEvent.NOT_LISTED;
        events[index] = null;
        size--;
        int last = indices[size];
        indices[size] = index;
        if (gap < size) {
            fill(gap, last, timesMs[size]);
        }
        return removed;
    }

    /** Fills a gap with what stood in the last slot, and may belong above or below it. */
    private void fill(int gap, int index, long timeMs) {
        siftDown(gap, index, timeMs);
        if (slots[index] == gap) {
            siftUp(gap, index, timeMs);
        }
    }

    private void siftUp(int start, int index, long timeMs) {
        int slot = start;
        while (slot > 0) {
            int parent = (slot - 1) / CHILDREN;
            if (!precedes(timeMs, index, parent)) {
                break;
            }
            place(slot, indices[parent], timesMs[parent]);
            slot = parent;
        }
        place(slot, index, timeMs);
    }

    private void siftDown(int start, int index, long timeMs) {
        int slot = start;
        int child = firstOfChildren(slot);
        while (child < size && !precedes(timeMs, index, child)) {
            place(slot, indices[child], timesMs[child]);
            slot = child;
            child = firstOfChildren(slot);
        }
        place(slot, index, timeMs);
    }

    /** The child that runs first, or a slot beyond the end if there is no child. */
    private int firstOfChildren(int parent) {
        int first = CHILDREN * parent + 1;
        return first + CHILDREN <= size ? firstOfFour(first) : firstOf(first, size);
    }

    /** A knock-out that the processor can run without guessing; if times are equal, the whole order is needed. */
    private int firstOfFour(int start) {
        long a = timesMs[start];
        long b = timesMs[start + 1];
        long c = timesMs[start + 2];
        long d = timesMs[start + 3];
        long ab = Math.min(a, b);
        long cd = Math.min(c, d);
        if (a == b || c == d || ab == cd) {
            return firstOf(start, start + CHILDREN);
        }
        int firstOfAb = b < a ? start + 1 : start;
        int firstOfCd = d < c ? start + 3 : start + 2;
        return cd < ab ? firstOfCd : firstOfAb;
    }

    private int firstOf(int start, int end) {
        int first = start;
        for (int slot = start + 1; slot < end; slot++) {
            if (precedes(timesMs[slot], indices[slot], first)) {
                first = slot;
            }
        }
        return first;
    }

    private boolean precedes(long timeMs, int index, int slot) {
        long otherMs = timesMs[slot];
        return timeMs < otherMs || (timeMs == otherMs && precedesAtSameTime(index, indices[slot]));
    }

    private boolean precedesAtSameTime(int index, int otherIndex) {
        return events[index].compareAtSameTime(events[otherIndex]) < 0;
    }

    private void place(int slot, int index, long timeMs) {
        indices[slot] = index;
        timesMs[slot] = timeMs;
        slots[index] = slot;
    }
}
