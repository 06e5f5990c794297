package lanetide.des.resource;

import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * One wish for units of a {@link Resource}, from its submission to its end.
 *
 * <p>A request waits, or holds, or is over. While it waits it can be <em>cancelled</em>; while it holds it can be
 * <em>released</em>; neither does anything else, so that a wrong call shows. Once over, a request stays over.
 */
public final class Request {

    /** Where a request stands. */
    public enum State {
        /** In the queue, for the first time or after a pre-emption. */
        WAITING,
        /** Units are granted. */
        HOLDING,
        /** Over: the units were given back. */
        RELEASED,
        /** Over: withdrawn from the queue. */
        CANCELLED,
        /** Over: patience ended in the queue. */
        TIMED_OUT,
        /** Over: the queue was full. */
        REFUSED;

        /** Whether a request in this state can never hold units again. */
        public boolean isOver() {
            return this != WAITING && this != HOLDING;
        }
    }

    /** What the owner has still to be told. */
    enum Notice {
        NONE,
        GRANTED,
        PREEMPTED,
        DONE,
        TIMED_OUT,
        REFUSED
    }

    /** After everything else of the same time, so that who can be served within his last millisecond is served. */
    private static final int PATIENCE_PHASE = Integer.MAX_VALUE;

    final Resource resource;
    final int units;
    final Object owner;

    /** Neighbours in the list that holds this request; written by {@link RequestList} alone. */
    Request previous;

    Request next;

    private final long number;
    private final String label;
    private final int priority;
    private final Consumer<Request> whenGranted;
    private final Consumer<Request> whenDone;
    private final Consumer<Request> whenTimedOut;
    private final Consumer<Request> whenRefused;
    private final Consumer<Request> whenPreempted;
    private final BiConsumer<Request, String> whenInterrupted;
    private final Countdown hold;
    private Countdown patience;
    private State state = State.WAITING;
    private Notice notice = Notice.NONE;
    private boolean grantTold;
    private int interrupts;
    private long sinceMs;
    private long waitedMs;
    private long heldMs;

    Request(Resource resource, long number, RequestDraft draft) {
        this.resource = resource;
        this.number = number;
        label = draft.label;
        units = draft.units;
        priority = draft.priority;
        owner = draft.owner;
        whenGranted = draft.whenGranted;
        whenDone = draft.whenDone;
        whenTimedOut = draft.whenTimedOut;
        whenRefused = draft.whenRefused;
        whenPreempted = draft.whenPreempted;
        whenInterrupted = draft.whenInterrupted;
        sinceMs = resource.simulator().nowMs();
        patience = draft.patienceMs == RequestDraft.NO_END
                ? null
                : countdown(draft.patienceMs, PATIENCE_PHASE, label + " times out", () -> resource.timeOut(this));
        hold = draft.holdMs == RequestDraft.NO_END
                ? null
                : countdown(draft.holdMs, draft.holdPhase, label, () -> resource.finish(this));
    }

    /** What the request is called in traces and error messages. */
    public String label() {
        return label;
    }

    /** Rank under a discipline by priority; the lower number goes first. */
    public int priority() {
        return priority;
    }

    /** How many requests were submitted to the resource before this one. */
    public long number() {
        return number;
    }

    public State state() {
        return state;
    }

    /** Whether there have been more interrupts than resumptions. */
    public boolean isInterrupted() {
        return interrupts > 0;
    }

    /** Milliseconds in the queue so far, in all. */
    public long waitedMs() {
        return waitedMs + (state == State.WAITING ? resource.simulator().nowMs() - sinceMs : 0);
    }

    /** Milliseconds of holding units so far, in all, interruptions included. */
    public long heldMs() {
        return heldMs + (state == State.HOLDING ? resource.simulator().nowMs() - sinceMs : 0);
    }

    /**
     * Withdraws the request from the queue; nothing of it remains there, and no callback runs.
     *
     * @return false, changing nothing, if the request does not wait
     */
    public boolean cancel() {
        return resource.cancel(this);
    }

    /**
     * Gives the units back, early if the request was to hold them for a given time; no callback of this request runs.
     *
     * @throws IllegalStateException if the request does not hold units
     */
    public void release() {
        resource.release(this);
    }

    /**
     * Halts the request: a holder keeps its units, but the clock of its hold stands still; a waiting request keeps its
     * place and its patience, but is passed over. Interrupts nest: it takes as many resumptions.
     *
     * @param cause why, handed to {@code whenInterrupted}
     * @throws IllegalStateException if the request is over
     */
    public void interrupt(String cause) {
        requireNotOver("interrupted");
        interrupts++;
        if (interrupts == 1) {
            resource.halt(this);
        }
        whenInterrupted.accept(this, cause);
    }

    /**
     * Ends one interrupt. After the last, a holder's clock goes on; a waiting request is served at once if it can be.
     *
     * @throws IllegalStateException if the request is over or not interrupted
     */
    public void resume() {
        requireNotOver("resumed");
        if (interrupts == 0) {
            throw new IllegalStateException(this + ", is not interrupted and cannot be resumed");
        }
        interrupts--;
        if (interrupts == 0) {
            resource.goOn(this);
        }
    }

    Notice notice() {
        return notice;
    }

    void setNotice(Notice notice) {
        this.notice = notice;
    }

    void moveTo(State newState) {
        waitedMs = waitedMs();
        heldMs = heldMs();
        sinceMs = resource.simulator().nowMs();
        state = newState;
    }

    /** Lets patience run out, unless the owner knows of a grant. */
    void startPatience() {
        if (patience != null) {
            patience.start();
        }
    }

    void pausePatience() {
        if (patience != null) {
            patience.pause();
        }
    }

    /** Lets the clock of a timed hold run. */
    void startHold() {
        if (hold != null) {
            hold.start();
        }
    }

    /** Lets the clock of a timed hold stand still. */
    void pauseHold() {
        if (hold != null) {
            hold.pause();
        }
    }

    /** Tells the owner what there is to tell. */
    void tell() {
        Notice told = notice;
        notice = Notice.NONE;
        switch (told) {
            case NONE -> {}
            case GRANTED -> tellGrant();
            case PREEMPTED -> whenPreempted.accept(this);
            case DONE -> whenDone.accept(this);
            case TIMED_OUT -> whenTimedOut.accept(this);
            case REFUSED -> whenRefused.accept(this);
        }
    }

    private void tellGrant() {
        if (!grantTold) {
            grantTold = true;
            patience = null;
            resource.statistics().served(this);
        }
        whenGranted.accept(this);
    }

    private Countdown countdown(long spanMs, int phase, String what, Runnable whenOver) {
        return new Countdown(resource.simulator(), spanMs, phase, what, whenOver);
    }

    private void requireNotOver(String what) {
        if (state.isOver()) {
            throw new IllegalStateException(this + ", and cannot be " + what);
        }
    }

    @Override
    public String toString() {
        return "request '" + label + "' of '" + resource.name() + "' is " + state;
    }
}
