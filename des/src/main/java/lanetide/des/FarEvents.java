package lanetide.des;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** Events of the far future, not sorted: adding and removing one takes a few steps, however many there are. */
final class FarEvents {

    private static final int INITIAL_CAPACITY = 64;
    private static final int SAMPLE = 256;

    /** A sample of times, at most twice as large as wanted since it is taken in equal steps. */
    private final long[] sample = new long[2 * SAMPLE];

    /** Times by place. */
    private long[] timesMs = new long[INITIAL_CAPACITY];

    /** Ids by place. */
    private int[] ids = new int[INITIAL_CAPACITY];

    /** Places by id; of events that are elsewhere, anything. */
    private int[] places = {};

    private int size;

    int size() {
        return size;
    }

    void add(int id, long timeMs) {
        if (id >= places.length) {
            places = Arrays.copyOf(places, Math.max(INITIAL_CAPACITY, Math.multiplyExact(id, 2)));
        }
        if (size == ids.length) {
            int capacity = Math.multiplyExact(size, 2);
            timesMs = Arrays.copyOf(timesMs, capacity);
            ids = Arrays.copyOf(ids, capacity);
        }
        put(size++, id, timeMs);
    }

    void remove(ScheduledEvent event) {
        removeAt(places[event.id()]);
    }

    /** A time up to which about the given number of events lie, at least one; by a sample spread over the places. */
    long timeOfEarliest(int wanted) {
        int step = Math.max(1, size / SAMPLE);
        int count = 0;
        for (int place = 0; place < size; place += step) {
            sample[count++] = timesMs[place];
        }
        Arrays.sort(sample, 0, count);
        return sample[(int) Math.min(count - 1L, (long) wanted * count / size)];
    }

    /** Gives up all events up to a time, in no particular order. */
    void drainUpTo(long timeMs, IntConsumer takesIds) {
        int place = 0;
        while (place < size) {
            if (timesMs[place] <= timeMs) {
                takesIds.accept(ids[place]);
                removeAt(place);
            } else {
                place++;
            }
        }
    }

    private void removeAt(int place) {
        size--;
        if (place < size) {
            put(place, ids[size], timesMs[size]);
        }
    }

    private void put(int place, int id, long timeMs) {
        ids[place] = id;
        timesMs[place] = timeMs;
        places[id] = place;
    }
}
