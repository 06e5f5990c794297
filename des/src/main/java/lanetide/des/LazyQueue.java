package lanetide.des;

/**
 * Event list that keeps the first event apart, the near future in a {@link FourAryHeap} small enough for the processor's
 * fast memory, and what lies beyond a horizon unsorted. When the near future is used up, the horizon moves on. As long as
 * there are few events, all are near.
 *
 * <p>After the first event was removed its place stays open: in most simulations the next call adds an event, which either
 * takes that place or sinks into the heap from the top, so that one pass does for two.
 *
 * <p>Source: R. Ronngren, J. Riboe and R. Ayani, "Lazy queue: an efficient implementation of the pending-event set",
 * Annual Simulation Symposium, 1991 (from memory), for the idea of sorting late.
 */
final class LazyQueue implements EventList {

    /** Entries of a heap of so many events fit into 128 kB. */
    private static final int FEW = 8192;

    /** At each move of the horizon this part of the far events comes near, though no fewer than an eighth of few. */
    private static final int PART = 16;

    private final EventPool pool;
    private final FourAryHeap near;
    private final FarEvents far = new FarEvents();
    private final int few;

    /** Null if it is not known which event is first. */
    private ScheduledEvent first;

    private long horizonMs = Long.MAX_VALUE;
    private int mostNear;

    LazyQueue(EventPool pool) {
        this(pool, FEW);
    }

    /**
     * @param few so many events may be near before some are put off
     */
    LazyQueue(EventPool pool, int few) {
        this.pool = pool;
        this.few = few;
        this.mostNear = few;
        this.near = new FourAryHeap(pool);
    }

    @Override
    public void add(ScheduledEvent event) {
        if (first == null) {
            addWithoutFirst(event);
        } else if (event.precedes(first)) {
            addNear(first);
            first = event;
        } else {
            addBehind(event);
        }
    }

    @Override
    public void remove(ScheduledEvent event) {
        if (event == first) {
            first = null;
        } else if (near.holds(event)) {
            near.remove(event);
        } else {
            far.remove(event);
        }
    }

    @Override
    public ScheduledEvent removeFirst(long lastTimeMs) {
        ScheduledEvent event = first == null ? takeFirst() : first;
        if (event == null || event.timeMs() > lastTimeMs) {
            first = event;
            return null;
        }
        first = null;
        return event;
    }

    @Override
    public int size() {
        return (first == null ? 0 : 1) + near.size() + far.size();
    }

    private void addWithoutFirst(ScheduledEvent event) {
        if (event.timeMs() > horizonMs) {
            far.add(event.id(), event.timeMs());
        } else if (near.size() == 0 || near.wouldBeFirst(event)) {
            first = event;
        } else {
            first = near.replaceFirst(event);
        }
    }

    private void addBehind(ScheduledEvent event) {
        if (event.timeMs() > horizonMs) {
            far.add(event.id(), event.timeMs());
        } else {
            addNear(event);
        }
    }

    private void addNear(ScheduledEvent event) {
        near.add(event);
        if (near.size() > mostNear) {
            putOff();
        }
    }

    /** The first of those that are near, or have just come near; null if there is none. */
    private ScheduledEvent takeFirst() {
        if (near.size() == 0) {
            if (far.size() == 0) {
                return null;
            }
            moveHorizon();
        }
        return near.removeFirst();
    }

    /** Draws the horizon nearer. The limit doubles with what cannot be put off, such as very many events of one time. */
    private void putOff() {
        near.drainTo(id -> far.add(id, pool.event(id).timeMs()));
        moveHorizon();
        mostNear = Math.max(few, 2 * near.size());
    }

    private void moveHorizon() {
        horizonMs = far.timeOfEarliest(Math.max(few / 8, far.size() / PART));
        far.drainUpTo(horizonMs, id -> near.add(pool.event(id)));
        if (far.size() == 0) {
            horizonMs = Long.MAX_VALUE;
            mostNear = few;
        }
    }
}
