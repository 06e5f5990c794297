package lanetide.des;

import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * Events in an implicit heap in which every slot has up to four children: those of slot i stand in slots 4i+1 to 4i+4.
 * Adding, removing the first and removing any other event cost O(log n), the last because the heap knows the slot of each
 * event; nothing removed leaves a trace behind.
 *
 * <p>Four children halve the depth of a binary heap. What moves between slots are times and ids, in arrays of their own, so
 * that most comparisons and all moves touch compact memory and no event object.
 *
 * <p>Source: D. B. Johnson, "Priority queues with update and finding minimum spanning trees", Information Processing
 * Letters 4 (1975), for heaps with more than two children.
 */
final class FourAryHeap {

    private static final int CHILDREN = 4;
    private static final int INITIAL_CAPACITY = 64;
    private static final int NOWHERE = -1;

    private final EventPool pool;

    /** Times by slot. */
    private long[] timesMs = new long[INITIAL_CAPACITY];

    /** Ids by slot. */
    private int[] ids = new int[INITIAL_CAPACITY];

    /** Slots by id. */
    private int[] slots = {};

    private int size;

    FourAryHeap(EventPool pool) {
        this.pool = pool;
    }

    int size() {
        return size;
    }

    boolean holds(ScheduledEvent event) {
        return event.id() < slots.length && slots[event.id()] != NOWHERE;
    }

    void add(ScheduledEvent event) {
        makeRoomFor(event.id());
        siftUp(size++, event.id(), event.timeMs());
    }

    void remove(ScheduledEvent event) {
        removeAt(slots[event.id()]);
    }

    /** Whether an event runs before all of the heap, which must not be empty. */
    boolean wouldBeFirst(ScheduledEvent event) {
        return precedes(event.timeMs(), event.id(), 0);
    }

    /** Removes and returns the first event; the heap must not be empty. */
    ScheduledEvent removeFirst() {
        ScheduledEvent first = pool.event(ids[0]);
        removeAt(0);
        return first;
    }

    /** Removes and returns the first event and adds another in one pass; the heap must not be empty. */
    ScheduledEvent replaceFirst(ScheduledEvent event) {
        ScheduledEvent first = pool.event(ids[0]);
        slots[first.id()] = NOWHERE;
        makeRoomFor(event.id());
        siftDown(0, event.id(), event.timeMs());
        return first;
    }

    /** Gives up all events, in no particular order. */
    void drainTo(IntConsumer takesIds) {
        int count = size;
        size = 0;
        for (int slot = 0; slot < count; slot++) {
            slots[ids[slot]] = NOWHERE;
            takesIds.accept(ids[slot]);
        }
    }

    private void makeRoomFor(int id) {
        if (id >= slots.length) {
            growToHoldId(id);
        }
        if (size == ids.length) {
            growToHoldOneMore();
        }
    }

    private void growToHoldId(int id) {
        int known = slots.length;
        slots = Arrays.copyOf(slots, Math.max(INITIAL_CAPACITY, Math.multiplyExact(id, 2)));
        Arrays.fill(slots, known, slots.length, NOWHERE);
    }

    private void growToHoldOneMore() {
        int capacity = Math.multiplyExact(size, 2);
        timesMs = Arrays.copyOf(timesMs, capacity);
        ids = Arrays.copyOf(ids, capacity);
    }

    private void removeAt(int slot) {
        slots[ids[slot]] = NOWHERE;
        fillFromEnd(slot);
    }

    /** Fills an open slot with what stands in the last, and may belong above or below it. */
    private void fillFromEnd(int open) {
        size--;
        if (open < size) {
            int id = ids[size];
            siftDown(open, id, timesMs[size]);
            if (slots[id] == open) {
                siftUp(open, id, timesMs[open]);
            }
        }
    }

    private void siftUp(int start, int id, long timeMs) {
        int slot = start;
        while (slot > 0) {
            int parent = (slot - 1) / CHILDREN;
            if (!precedes(timeMs, id, parent)) {
                break;
            }
            place(slot, ids[parent], timesMs[parent]);
            slot = parent;
        }
        place(slot, id, timeMs);
    }

    private void siftDown(int start, int id, long timeMs) {
        int slot = start;
        int child = firstOfChildren(slot);
        while (child < size && !precedes(timeMs, id, child)) {
            place(slot, ids[child], timesMs[child]);
            slot = child;
            child = firstOfChildren(slot);
        }
        place(slot, id, timeMs);
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
            if (precedes(timesMs[slot], ids[slot], first)) {
                first = slot;
            }
        }
        return first;
    }

    private boolean precedes(long timeMs, int id, int slot) {
        long otherMs = timesMs[slot];
        return timeMs < otherMs || (timeMs == otherMs && pool.event(id).precedesAtSameTime(pool.event(ids[slot])));
    }

    private void place(int slot, int id, long timeMs) {
        ids[slot] = id;
        timesMs[slot] = timeMs;
        slots[id] = slot;
    }
}
