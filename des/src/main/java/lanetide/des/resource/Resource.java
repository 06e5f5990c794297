package lanetide.des.resource;

import java.util.Objects;
import lanetide.des.Simulator;
import lanetide.des.resource.Request.Notice;
import lanetide.des.resource.Request.State;

/**
 * Units of which there are few, such as lane machines, and the queue before them.
 *
 * <p><b>Grants.</b> A decision falls the moment something changes, and within the millisecond in the order of events: who
 * asks first at an idle resource gets it, even if a better request comes later in the same millisecond. The first of the
 * queue is never overtaken, even if it wants more units than are free and a later one could be served.
 *
 * <p><b>Pre-emption</b>, only under {@link QueueDiscipline#PREEMPTIVE_PRIORITY}: a request that finds too few units free
 * takes them from holders of strictly higher priority number, first from the one that the discipline would serve last,
 * and only if this yields enough. Equals are left alone, and so are requests of the same owner. Whoever is displaced waits
 * again in the place of its first submission among equals, whatever the limit of the queue, and is granted anew in its
 * turn; a timed hold then goes on where it stopped.
 *
 * <p><b>Capacity</b> may change. After {@link #setCapacity} holders stay until they are done; after
 * {@link #setCapacityAtOnce} those whom the discipline would serve last have to go, under any discipline, and wait again.
 *
 * <p>A callback that throws ends the call and its exception reaches the caller; the resource stays consistent, and what
 * was still to be told is told after the next change.
 */
public final class Resource {

    private final Simulator simulator;
    private final String name;
    private final int queueLimit;
    private final Announcements announcements = new Announcements();
    private final ResourceStatistics statistics;
    private final Allocation allocation;
    private int mostCapacity;
    private long submitted;

    /** A resource before which any number may wait, first come, first served. */
    public Resource(Simulator simulator, String name, int capacity) {
        this(simulator, name, capacity, QueueDiscipline.FIRST_COME);
    }

    /** A resource before which any number may wait. */
    public Resource(Simulator simulator, String name, int capacity, QueueDiscipline discipline) {
        this(simulator, name, capacity, discipline, Integer.MAX_VALUE);
    }

    /**
     * A resource with a limited queue.
     *
     * @param name what it is called in error messages
     * @param capacity number of units, at least 1
     * @param discipline who is served next
     * @param queueLimit how many may wait, at least 0; whoever finds the queue full and cannot be served at once is
     *     refused
     * @throws IllegalArgumentException if {@code capacity < 1} or {@code queueLimit < 0}
     */
    public Resource(Simulator simulator, String name, int capacity, QueueDiscipline discipline, int queueLimit) {
        this.simulator = Objects.requireNonNull(simulator, "simulator");
        this.name = Objects.requireNonNull(name, "name");
        this.mostCapacity = requireAtLeast(1, capacity, "capacity");
        this.queueLimit = requireAtLeast(0, queueLimit, "queueLimit");
        statistics = new ResourceStatistics(simulator, name, capacity);
        allocation = new Allocation(capacity, discipline, announcements, statistics);
    }

    /** What the resource is called in error messages. */
    public String name() {
        return name;
    }

    /** The terms of a request, to be filled in and submitted. */
    public RequestDraft newRequest(String label) {
        return new RequestDraft(this, label);
    }

    /** Number of units that can be granted in all. */
    public int capacity() {
        return allocation.capacity();
    }

    /** Number of units granted; more than the capacity while holders stay after a cut. */
    public int inUse() {
        return allocation.inUse();
    }

    /** Number of requests in the queue. */
    public int waiting() {
        return allocation.waiting();
    }

    /** What has been seen since the start or the last {@link ResourceStatistics#restart}. */
    public ResourceStatistics statistics() {
        return statistics;
    }

    /**
     * Changes the capacity; if it is cut below the units in use, holders stay until they are done.
     *
     * @param capacity number of units, at least 0
     * @throws IllegalArgumentException if {@code capacity < 0}
     */
    public void setCapacity(int capacity) {
        allocation.setCapacity(requireAtLeast(0, capacity, "capacity"));
        mostCapacity = Math.max(mostCapacity, capacity);
        settle();
    }

    /**
     * Changes the capacity; if it is cut below the units in use, holders are displaced and wait again.
     *
     * @param capacity number of units, at least 0
     * @throws IllegalArgumentException if {@code capacity < 0}
     */
    public void setCapacityAtOnce(int capacity) {
        allocation.setCapacity(requireAtLeast(0, capacity, "capacity"));
        mostCapacity = Math.max(mostCapacity, capacity);
        allocation.displaceExcess();
        settle();
    }

    Simulator simulator() {
        return simulator;
    }

    int mostCapacity() {
        return mostCapacity;
    }

    Request submit(RequestDraft draft) {
        Request request = new Request(this, submitted++, draft);
        allocation.enqueue(request);
        allocation.serve();
        if (request.state() == State.WAITING) {
            joinQueue(request);
        }
        settle();
        return request;
    }

    boolean cancel(Request request) {
        boolean grantedUntold = request.state() == State.HOLDING && request.notice() == Notice.GRANTED;
        if (request.state() != State.WAITING && !grantedUntold) {
            return false;
        }
        statistics.gaveUp(request);
        end(request, State.CANCELLED);
        return true;
    }

    void release(Request request) {
        boolean displacedUntold = request.state() == State.WAITING && request.notice() == Notice.PREEMPTED;
        if (request.state() != State.HOLDING && !displacedUntold) {
            String advice = request.state() == State.WAITING ? "; cancel it instead" : "";
            throw new IllegalStateException(request + ", and holds nothing to release" + advice);
        }
        end(request, State.RELEASED);
    }

    /** A timed hold is over. */
    void finish(Request request) {
        allocation.takeBack(request, State.RELEASED);
        announcements.add(request, Notice.DONE);
        settle();
    }

    void timeOut(Request request) {
        statistics.timedOut();
        statistics.gaveUp(request);
        allocation.dequeue(request, State.TIMED_OUT);
        announcements.add(request, Notice.TIMED_OUT);
        settle();
    }

    /** The first interrupt begins. */
    void halt(Request request) {
        if (request.state() == State.WAITING) {
            request.pausePatience();
        } else {
            request.pauseHold();
        }
        settle();
    }

    /** The last interrupt ends. */
    void goOn(Request request) {
        if (request.state() == State.HOLDING) {
            request.startHold();
        } else {
            request.startPatience();
        }
        settle();
    }

    private void joinQueue(Request request) {
        if (allocation.waiting() > queueLimit) {
            allocation.dequeue(request, State.REFUSED);
            statistics.refused();
            announcements.add(request, Notice.REFUSED);
        } else {
            request.startPatience();
        }
    }

    /** Ends a request at its owner's wish, of which the owner need not be told. */
    private void end(Request request, State state) {
        request.setNotice(Notice.NONE);
        if (request.state() == State.HOLDING) {
            allocation.takeBack(request, state);
        } else {
            allocation.dequeue(request, state);
        }
        settle();
    }

    /** Serves whoever can be served after a change, notes the figures, and tells the owners. */
    private void settle() {
        allocation.serve();
        statistics.note(allocation.inUse(), allocation.capacity(), allocation.waiting());
        announcements.tell();
    }

    private static int requireAtLeast(int least, int value, String what) {
        if (value < least) {
            throw new IllegalArgumentException(what + " is " + value + ", but must be at least " + least);
        }
        return value;
    }
}
