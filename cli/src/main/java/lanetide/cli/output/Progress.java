package lanetide.cli.output;

import java.io.PrintWriter;
import java.util.function.IntConsumer;

/** Tells on a terminal how far a long run is and how long it will still take, in one line that is overwritten. */
public final class Progress implements IntConsumer {
    private static final String ERASE = "\r" + " ".repeat(60) + "\r";

    private final PrintWriter err;
    private final String what;
    private final int all;
    private final boolean shown;
    private final long startNanos = System.nanoTime();

    private Progress(PrintWriter err, String what, int all, boolean shown) {
        this.err = err;
        this.what = what;
        this.all = all;
        this.shown = shown;
    }

    public static Progress of(PrintWriter err, String what, int all, boolean quiet) {
        return new Progress(err, what, all, !quiet && all > 1 && Terminal.isThere());
    }

    @Override
    public void accept(int done) {
        if (shown) {
            err.print("\r" + line(done, all, what, System.nanoTime() - startNanos));
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
        if (shown) {
            err.print(ERASE);
            err.flush();
        }
    }
}
