package lanetide.des;

import java.util.EnumSet;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import lanetide.des.TraceEntry.Happening;

/**
 * What of a trace is wanted: by kind, by label, and by time.
 *
 * @param kinds the happenings wanted
 * @param label a condition on the label of the event
 * @param fromMs simulated time in milliseconds of the first happening wanted
 * @param untilMs simulated time in milliseconds of the last happening wanted
 */
public record TraceFilter(Set<Happening> kinds, Predicate<String> label, long fromMs, long untilMs)
        implements Predicate<TraceEntry> {

    /** Everything. */
    public static final TraceFilter ALL =
            new TraceFilter(EnumSet.allOf(Happening.class), label -> true, 0, Long.MAX_VALUE);

    /**
     * @throws IllegalArgumentException if {@code kinds} is empty, or if {@code untilMs < fromMs}
     */
    public TraceFilter {
        if (kinds.isEmpty()) {
            throw new IllegalArgumentException("kinds is empty, but must hold at least one happening");
        }
        if (untilMs < fromMs) {
            throw new IllegalArgumentException(
                    "untilMs is " + untilMs + ", but must be at least fromMs, which is " + fromMs);
        }
        kinds = Set.copyOf(kinds);
        Objects.requireNonNull(label, "label");
    }

    /** The same filter for these kinds only. */
    public TraceFilter ofKinds(Set<Happening> wanted) {
        return new TraceFilter(wanted, label, fromMs, untilMs);
    }

    /** The same filter for labels that meet a condition only. */
    public TraceFilter ofLabels(Predicate<String> wanted) {
        return new TraceFilter(kinds, wanted, fromMs, untilMs);
    }

    /** The same filter for happenings from one time to another, both included. */
    public TraceFilter between(long firstMs, long lastMs) {
        return new TraceFilter(kinds, label, firstMs, lastMs);
    }

    @Override
    public boolean test(TraceEntry entry) {
        return fromMs <= entry.clockMs()
                && entry.clockMs() <= untilMs
                && kinds.contains(entry.happening())
                && label.test(entry.label());
    }
}
