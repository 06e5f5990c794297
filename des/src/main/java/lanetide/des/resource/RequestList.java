package lanetide.des.resource;

import java.util.Comparator;
import java.util.Objects;
import java.util.function.Predicate;

/**
 * Requests in the order of their numbers, chained through the requests themselves: adding at the end and removing
 * anywhere take the same few steps however many there are, and make no garbage. A request is in one such list at most.
 */
final class RequestList implements WaitingLine {

    private Request head;
    private Request tail;

    @Override
    public void add(Request request) {
        Request before = tail;
        while (before != null && before.number() > request.number()) {
            before = before.previous;
        }
        link(before, request);
    }

    @Override
    public void remove(Request request) {
        if (request.previous == null) {
            head = request.next;
        } else {
            request.previous.next = request.next;
        }
        if (request.next == null) {
            tail = request.previous;
        } else {
            request.next.previous = request.previous;
        }
        request.previous = null;
        request.next = null;
    }

    @Override
    public Request firstReady() {
        Request request = head;
        while (request != null && request.isInterrupted()) {
            request = request.next;
        }
        return request;
    }

    /** Adds at the end, whatever the number. */
    void addLast(Request request) {
        link(tail, request);
    }

    /** Units wanted or held, in all, by those that meet a condition. */
    int units(Predicate<Request> condition) {
        int units = 0;
        for (Request request = head; request != null; request = request.next) {
            units += condition.test(request) ? request.units : 0;
        }
        return units;
    }

    /** The greatest in the given total order of those that meet a condition; there must be one. */
    Request max(Comparator<Request> order, Predicate<Request> condition) {
        Request max = null;
        for (Request request = head; request != null; request = request.next) {
            if (condition.test(request) && (max == null || order.compare(request, max) > 0)) {
                max = request;
            }
        }
        return Objects.requireNonNull(max, "none meets the condition");
    }

    private void link(Request before, Request request) {
        Request after = before == null ? head : before.next;
        request.previous = before;
        request.next = after;
        if (before == null) {
            head = request;
        } else {
            before.next = request;
        }
        if (after == null) {
            tail = request;
        } else {
            after.previous = request;
        }
    }
}
