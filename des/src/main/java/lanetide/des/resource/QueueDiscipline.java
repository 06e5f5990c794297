package lanetide.des.resource;

import java.util.Comparator;

/**
 * Who is served next, and whether it may take a unit from somebody who holds one. Whatever the discipline, requests that
 * rank equally are served in the order of their submission.
 */
public final class QueueDiscipline {

    /** First come, first served; priorities have no say. */
    public static final QueueDiscipline FIRST_COME =
            new QueueDiscipline(Comparator.comparingLong(Request::number), false);

    /** The request with the <em>lower</em> priority number first, as with the phases of events; holders stay until done. */
    public static final QueueDiscipline PRIORITY =
            new QueueDiscipline(Comparator.comparingInt(Request::priority), false);

    /**
     * As {@link #PRIORITY}, and a request takes units from holders whose priority number is <em>strictly</em> higher, so
     * that equals never displace each other. See {@link Resource} for who has to go.
     */
    public static final QueueDiscipline PREEMPTIVE_PRIORITY =
            new QueueDiscipline(Comparator.comparingInt(Request::priority), true);

    private final Comparator<Request> order;
    private final boolean preemptive;

    private QueueDiscipline(Comparator<Request> order, boolean preemptive) {
        this.order = order.thenComparingLong(Request::number);
        this.preemptive = preemptive;
    }

    /**
     * An order of one's own, without pre-emption.
     *
     * @param order the request that compares as less is served first; how two requests compare must not change while
     *     they wait
     */
    public static QueueDiscipline by(Comparator<? super Request> order) {
        return new QueueDiscipline(order::compare, false);
    }

    /** The total order of requests: the discipline, then the number. */
    Comparator<Request> order() {
        return order;
    }

    boolean isPreemptive() {
        return preemptive;
    }

    WaitingLine newLine() {
        return this == FIRST_COME ? new RequestList() : new OrderedLine(order);
    }
}
