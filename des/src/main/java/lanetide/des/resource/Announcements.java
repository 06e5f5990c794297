package lanetide.des.resource;

import java.util.ArrayDeque;
import java.util.Deque;
import lanetide.des.resource.Request.Notice;

/**
 * What owners have still to be told, one callback at a time: what a callback causes waits for its turn, so that nothing
 * nests, however long the chain of grants and releases.
 */
final class Announcements {

    private final Deque<Request> toTell = new ArrayDeque<>();
    private boolean telling;

    void add(Request request, Notice notice) {
        request.setNotice(notice);
        toTell.add(request);
    }

    /** What was undone before the owner heard of it need not be told at all. */
    void addOrForget(Request request, Notice notice, Notice opposite) {
        if (request.notice() == opposite) {
            request.setNotice(Notice.NONE);
        } else {
            add(request, notice);
        }
    }

    void tell() {
        if (telling) {
            return;
        }
        telling = true;
        try {
            while (!toTell.isEmpty()) {
                toTell.remove().tell();
            }
        } finally {
            telling = false;
        }
    }
}
