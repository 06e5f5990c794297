package lanetide.des;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import java.util.function.Function;

/**
 * Writes a trace, one line for each happening: as text for people, or as JSON Lines (one object a line, UTF-8, each
 * line ended by a line feed) for programs. An {@link UncheckedIOException} ends the run if the lines cannot be written.
 */
public final class TraceWriter implements TraceListener {

    private final Appendable out;
    private final Function<TraceEntry, String> format;

    private TraceWriter(Appendable out, Function<TraceEntry, String> format) {
        this.out = Objects.requireNonNull(out, "out");
        this.format = format;
    }

    /** Lines such as {@code 40 ms: scheduled 'release' for 65 ms, phase 1, number 7}. */
    public static TraceWriter text(Appendable out) {
        return new TraceWriter(out, TraceEntry::toString);
    }

    /**
     * Lines such as {@code {"clockMs":40,"happening":"scheduled","label":"release","timeMs":65,"phase":1,"number":7}}.
     */
    public static TraceWriter jsonLines(Appendable out) {
        return new TraceWriter(out, TraceEntry::toJson);
    }

    @Override
    public void record(TraceEntry entry) {
        try {
            out.append(format.apply(entry)).append('\n');
        } catch (IOException e) {
            throw new UncheckedIOException("the trace cannot be written: " + e.getMessage(), e);
        }
    }
}
