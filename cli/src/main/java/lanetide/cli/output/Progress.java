package lanetide.cli.output;

import java.io.PrintWriter;
import java.util.function.IntConsumer;
import java.util.function.LongSupplier;

/**
 * Tells how far a long run is and how long it will still take: on a terminal in one line that is overwritten,
 * elsewhere, such as in a file, in a line a minute.
 */
public final class Progress implements IntConsumer {
    private static final String ERASE = "\r" + " ".repeat(60) + "\r";
    private static final long MINUTE_NANOS = 60_000_000_000L;

    private final PrintWriter err;
    private final String what;
    private final int all;
    private final Manner manner;
    private final LongSupplier clockNanos;
    private final long startNanos;
    private long toldNanos;

    /** How it is told. */
    enum Manner {
        /** Not at all. */
        SILENT,
        /** One line that is overwritten. */
        ONE_LINE,
        /** A line a minute. */
        LINE_A_MINUTE
    }

    Progress(PrintWriter err, String what, int all, Manner manner, LongSupplier clockNanos) {
        this.err = err;
        this.what = what;
        this.all = all;
        this.manner = manner;
        this.clockNanos = clockNanos;
        this.startNanos = clockNanos.getAsLong();
        this.toldNanos = startNanos;
    }

    public static Progress of(PrintWriter err, String what, int all, boolean quiet) {
        Manner manner = quiet || all <= 1 ? Manner.SILENT : Terminal.isThere() ? Manner.ONE_LINE : Manner.LINE_A_MINUTE;
        return new Progress(err, what, all, manner, System::nanoTime);
    }

    @Override
    public synchronized void accept(int done) {
        long nowNanos = clockNanos.getAsLong();
        if (manner == Manner.ONE_LINE) {
            err.print("\r" + line(done, all, what, nowNanos - startNanos));
            err.flush();
        } else if (manner == Manner.LINE_A_MINUTE && nowNanos - toldNanos >= MINUTE_NANOS) {
            toldNanos = nowNanos;
            err.println(line(done, all, what, nowNanos - startNanos).strip());
            err.flush();
        }
    }

    /** How far it is, and at the pace so far how much time is left. */
    public static String line(int done, int all, String what, long elapsedNanos) {
        long left = Math.round(1e-9 * elapsedNanos / done * (all - done));
        String time = left < 120 ? left + " s" : (left + 30) / 60 + " min";
        return done + " of " + all + " " + what + ", about " + time + " left ";
    }

    public void close() {
        if (manner == Manner.ONE_LINE) {
            err.print(ERASE);
            err.flush();
        }
    }
}
