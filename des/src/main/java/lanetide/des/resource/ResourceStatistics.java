package lanetide.des.resource;

import lanetide.des.Simulator;
import lanetide.des.stats.Tally;
import lanetide.des.stats.TimeWeighted;

/**
 * How a resource was used and how long requests waited, from the start or the last {@link #restart} until now. Averages
 * over time weigh each value by how long it held, so that they do not depend on the order of events at one time.
 */
public final class ResourceStatistics {

    private final Simulator simulator;
    private final String name;
    private long startMs;
    private TimeWeighted inUse;
    private TimeWeighted capacity;
    private TimeWeighted queueLength;
    private Tally waitsMs;
    private Tally givenUpMs;
    private long preemptions;
    private long timeOuts;
    private long refusals;

    ResourceStatistics(Simulator simulator, String name, int capacity) {
        this.simulator = simulator;
        this.name = name;
        this.inUse = new TimeWeighted(simulator.nowMs(), 0);
        this.capacity = new TimeWeighted(simulator.nowMs(), capacity);
        this.queueLength = new TimeWeighted(simulator.nowMs(), 0);
        restart();
    }

    /** Forgets everything seen so far, for instance when a warm-up is over; what holds or waits now goes on. */
    public void restart() {
        startMs = simulator.nowMs();
        inUse = new TimeWeighted(startMs, inUse.value());
        capacity = new TimeWeighted(startMs, capacity.value());
        queueLength = new TimeWeighted(startMs, queueLength.value());
        waitsMs = new Tally("wait for '" + name + "' in ms");
        givenUpMs = new Tally("wait given up for '" + name + "' in ms");
        preemptions = 0;
        timeOuts = 0;
        refusals = 0;
    }

    /**
     * Share of the units that were in use, from 0 to 1. Units still in use after a cut of the capacity count as capacity.
     *
     * @throws IllegalStateException if no time has passed, or there was no capacity all the time
     */
    public double utilisation() {
        requireTime("utilisation");
        double available = capacity.area(simulator.nowMs());
        if (available == 0) {
            throw new IllegalStateException(
                    "the utilisation of '" + name + "' needs some capacity, but there was none");
        }
        return inUse.area(simulator.nowMs()) / available;
    }

    /**
     * Average number of units in use.
     *
     * @throws IllegalStateException if no time has passed
     */
    public double meanInUse() {
        requireTime("mean number in use");
        return inUse.mean(simulator.nowMs());
    }

    /**
     * Average number of requests in the queue.
     *
     * @throws IllegalStateException if no time has passed
     */
    public double meanQueueLength() {
        requireTime("mean queue length");
        return queueLength.mean(simulator.nowMs());
    }

    /** Most requests that were in the queue at a time. */
    public int maxQueueLength() {
        return (int) queueLength.max();
    }

    /** Milliseconds from submission to first grant of all requests granted, zeros included. */
    public Tally waitsMs() {
        return copy(waitsMs);
    }

    /** Milliseconds waited in all by requests that left the queue by time-out or cancellation. */
    public Tally givenUpMs() {
        return copy(givenUpMs);
    }

    /** How often units were taken from a holder, by another request or by a cut of the capacity. */
    public long preemptions() {
        return preemptions;
    }

    /** How many requests lost patience. */
    public long timeOuts() {
        return timeOuts;
    }

    /** How many requests found the queue full. */
    public long refusals() {
        return refusals;
    }

    void note(int inUseNow, int capacityNow, int waitingNow) {
        long nowMs = simulator.nowMs();
        inUse.set(nowMs, inUseNow);
        capacity.set(nowMs, Math.max(inUseNow, capacityNow));
        queueLength.set(nowMs, waitingNow);
    }

    void served(Request request) {
        waitsMs.add((double) request.waitedMs());
    }

    void gaveUp(Request request) {
        givenUpMs.add((double) request.waitedMs());
    }

    void preempted() {
        preemptions++;
    }

    void timedOut() {
        timeOuts++;
    }

    void refused() {
        refusals++;
    }

    private static Tally copy(Tally tally) {
        Tally copy = new Tally();
        copy.merge(tally);
        return copy;
    }

    private void requireTime(String statistic) {
        if (simulator.nowMs() == startMs) {
            throw new IllegalStateException("the " + statistic + " of '" + name
                    + "' needs time to pass, but the clock still stands at " + startMs + " ms");
        }
    }
}
