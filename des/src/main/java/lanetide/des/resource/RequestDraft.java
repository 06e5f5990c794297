package lanetide.des.resource;

import java.util.Objects;
import java.util.function.BiConsumer;
import java.util.function.Consumer;

/**
 * What is asked of a resource, before it is asked. Made by {@link Resource#newRequest}; all parts but the label may be left
 * out. Submitting it again makes another request on the same terms.
 *
 * <p>Every {@code when...} callback runs at the simulated time of what it tells, one at a time, never within another
 * callback of the same resource, and in the order in which the resource decided; {@code whenInterrupted} alone runs
 * within {@link Request#interrupt}.
 */
public final class RequestDraft {

    /** The length of a hold that the owner ends himself, and of a patience without end. */
    static final long NO_END = -1;

    /** So far from the end of time that no countdown can reach it. */
    private static final long LONGEST_MS = Long.MAX_VALUE / 2;

    final String label;
    int units = 1;
    int priority;
    Object owner;
    long patienceMs = NO_END;
    long holdMs = NO_END;
    int holdPhase;
    Consumer<Request> whenGranted = RequestDraft::ignore;
    Consumer<Request> whenDone = RequestDraft::ignore;
    Consumer<Request> whenTimedOut = RequestDraft::ignore;
    Consumer<Request> whenRefused = RequestDraft::ignore;
    Consumer<Request> whenPreempted = RequestDraft::ignore;
    BiConsumer<Request, String> whenInterrupted = (request, cause) -> ignore(request);

    private final Resource resource;

    RequestDraft(Resource resource, String label) {
        this.resource = resource;
        this.label = Objects.requireNonNull(label, "label");
    }

    /**
     * How many units are wanted, 1 if not said; they are granted all together.
     *
     * @throws IllegalArgumentException if {@code units < 1} or more than the resource has ever had
     */
    public RequestDraft units(int units) {
        if (units < 1 || units > resource.mostCapacity()) {
            throw new IllegalArgumentException("units of request '" + label + "' is " + units
                    + ", but must be at least 1 and at most " + resource.mostCapacity() + ", the capacity of '"
                    + resource.name() + "'");
        }
        this.units = units;
        return this;
    }

    /** Rank under a discipline by priority, 0 if not said; the <em>lower</em> number goes first. */
    public RequestDraft priority(int priority) {
        this.priority = priority;
        return this;
    }

    /** For whom the units are wanted; no request pre-empts another of the same owner, which is compared by identity. */
    public RequestDraft owner(Object owner) {
        this.owner = Objects.requireNonNull(owner, "owner");
        return this;
    }

    /**
     * How long to wait for the first grant, without end if not said. Who can be served within the last millisecond is
     * served, since time-outs come after all other events of the same time; 0 means this very millisecond or never.
     *
     * @throws IllegalArgumentException if {@code patienceMs < 0} or beyond 2<sup>62</sup>
     */
    public RequestDraft patienceMs(long patienceMs) {
        requireSpan(patienceMs, "patienceMs");
        this.patienceMs = patienceMs;
        return this;
    }

    /**
     * Gives the units back by itself after holding them for a time. The clock of this time stands still while the request
     * is pre-empted or interrupted, and then goes on where it stopped.
     *
     * @param holdMs milliseconds to hold
     * @param phase rank of the end of the hold among events of the same time
     * @param whenDone told when the units were given back, before those are told who get them
     * @throws IllegalArgumentException if {@code holdMs < 0} or beyond 2<sup>62</sup>
     */
    public RequestDraft holdFor(long holdMs, int phase, Consumer<Request> whenDone) {
        requireSpan(holdMs, "holdMs");
        this.holdMs = holdMs;
        this.holdPhase = phase;
        this.whenDone = Objects.requireNonNull(whenDone, "whenDone");
        return this;
    }

    /** Told at each grant: the first, and again whenever units are granted anew after a pre-emption. */
    public RequestDraft whenGranted(Consumer<Request> whenGranted) {
        this.whenGranted = Objects.requireNonNull(whenGranted, "whenGranted");
        return this;
    }

    /** Told when patience has ended; the request is over and has left the queue. */
    public RequestDraft whenTimedOut(Consumer<Request> whenTimedOut) {
        this.whenTimedOut = Objects.requireNonNull(whenTimedOut, "whenTimedOut");
        return this;
    }

    /** Told if the queue was full; the request is over. */
    public RequestDraft whenRefused(Consumer<Request> whenRefused) {
        this.whenRefused = Objects.requireNonNull(whenRefused, "whenRefused");
        return this;
    }

    /** Told when the units were taken away; the request waits again, and may be cancelled here. */
    public RequestDraft whenPreempted(Consumer<Request> whenPreempted) {
        this.whenPreempted = Objects.requireNonNull(whenPreempted, "whenPreempted");
        return this;
    }

    /** Told of each interrupt and its cause. */
    public RequestDraft whenInterrupted(BiConsumer<Request, String> whenInterrupted) {
        this.whenInterrupted = Objects.requireNonNull(whenInterrupted, "whenInterrupted");
        return this;
    }

    /**
     * Asks. If the units are free and nobody goes before, they are granted before this method returns, and unless it was
     * called from within a callback of the same resource, {@code whenGranted} has run by then too.
     */
    public Request submit() {
        return resource.submit(this);
    }

    private void requireSpan(long spanMs, String what) {
        if (spanMs < 0 || spanMs > LONGEST_MS) {
            throw new IllegalArgumentException(what + " of request '" + label + "' is " + spanMs
                    + ", but must be at least 0 and at most " + LONGEST_MS);
        }
    }

    /** What an owner does who did not say. */
    private static void ignore(Request request) {}
}
