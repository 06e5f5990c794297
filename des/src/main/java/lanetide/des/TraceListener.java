package lanetide.des;

/** Is told of everything that happens to events, in the order in which it happens. A listener only watches. */
@FunctionalInterface
public interface TraceListener {

    /**
     * Called right after an event was scheduled, and right before its action runs, so that a trace shows causes before
     * their effects.
     */
    void record(TraceEntry entry);
}
