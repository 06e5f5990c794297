package lanetide.des.resource;

import lanetide.des.resource.Request.Notice;
import lanetide.des.resource.Request.State;

/** Who waits and who holds, and the rules by which the one becomes the other; they are told in {@link Resource}. */
final class Allocation {

    private final QueueDiscipline discipline;
    private final WaitingLine line;
    private final RequestList holders = new RequestList();
    private final Announcements announcements;
    private final ResourceStatistics statistics;
    private int capacity;
    private int inUse;
    private int waiting;

    Allocation(int capacity, QueueDiscipline discipline, Announcements announcements, ResourceStatistics statistics) {
        this.capacity = capacity;
        this.discipline = discipline;
        this.line = discipline.newLine();
        this.announcements = announcements;
        this.statistics = statistics;
    }

    int capacity() {
        return capacity;
    }

    void setCapacity(int capacity) {
        this.capacity = capacity;
    }

    int inUse() {
        return inUse;
    }

    int waiting() {
        return waiting;
    }

    /** Serves whoever can be served now. */
    void serve() {
        Request first = line.firstReady();
        while (first != null && makeRoom(first)) {
            grant(first);
            first = line.firstReady();
        }
    }

    /** Displaces holders until the capacity is not exceeded. */
    void displaceExcess() {
        while (inUse > capacity) {
            preempt(holders.max(discipline.order(), holder -> true));
        }
    }

    void enqueue(Request request) {
        line.add(request);
        waiting++;
    }

    /** Takes a request off the queue, into the given state. */
    void dequeue(Request request, State state) {
        line.remove(request);
        waiting--;
        request.pausePatience();
        request.moveTo(state);
    }

    /** Takes the units from a holder, which passes into the given state. */
    void takeBack(Request request, State state) {
        holders.remove(request);
        inUse -= request.units;
        request.pauseHold();
        request.moveTo(state);
    }

    private boolean makeRoom(Request request) {
        int free = capacity - inUse;
        return request.units <= free
                || (discipline.isPreemptive()
                        && Preemption.makeRoom(request, free, holders, discipline.order(), this::preempt));
    }

    private void grant(Request request) {
        dequeue(request, State.HOLDING);
        holders.addLast(request);
        inUse += request.units;
        announcements.addOrForget(request, Notice.GRANTED, Notice.PREEMPTED);
        request.startHold();
    }

    private void preempt(Request request) {
        takeBack(request, State.WAITING);
        statistics.preempted();
        enqueue(request);
        if (!request.isInterrupted()) {
            request.startPatience();
        }
        announcements.addOrForget(request, Notice.PREEMPTED, Notice.GRANTED);
    }
}
