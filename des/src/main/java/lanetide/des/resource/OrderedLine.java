package lanetide.des.resource;

import java.util.Comparator;
import java.util.TreeSet;

/** A line in any total order. */
final class OrderedLine implements WaitingLine {

    private final TreeSet<Request> requests;

    OrderedLine(Comparator<Request> totalOrder) {
        requests = new TreeSet<>(totalOrder);
    }

    @Override
    public void add(Request request) {
        requests.add(request);
    }

    @Override
    public void remove(Request request) {
        requests.remove(request);
    }

    @Override
    public Request firstReady() {
        for (Request request : requests) {
            if (!request.isInterrupted()) {
                return request;
            }
        }
        return null;
    }
}
