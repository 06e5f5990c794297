package lanetide.des.resource;

import lanetide.des.EventHandle;
import lanetide.des.Simulator;

/** A span of simulated time that can be made to stand still and go on, and at whose end something happens. */
final class Countdown {

    private final Simulator simulator;
    private final int phase;
    private final String label;
    private final Runnable whenOver;
    private long leftMs;
    private EventHandle end;

    Countdown(Simulator simulator, long spanMs, int phase, String label, Runnable whenOver) {
        this.simulator = simulator;
        this.leftMs = spanMs;
        this.phase = phase;
        this.label = label;
        this.whenOver = whenOver;
    }

    /** Begins, or goes on; only while it stands still. */
    void start() {
        end = simulator.schedule(leftMs, phase, label, whenOver);
    }

    /** Makes it stand still, unless it does already. */
    void pause() {
        if (end != null && end.isPending()) {
            leftMs = end.timeMs() - simulator.nowMs();
            end.cancel();
        }
    }
}
