package lanetide.squads.watch;

import java.util.List;
import lanetide.des.TraceListener;

/**
 * Who watches a playing. They only watch: nothing in the play depends on them.
 *
 * @param lanes is shown the lanes
 * @param shots is told of every ball
 * @param traces are told of every event of the kernel
 */
public record Observers(LaneObserver lanes, ShotObserver shots, List<TraceListener> traces) {
    /** Nobody watches. */
    public static final Observers NONE = new Observers(LaneObserver.NONE, ShotObserver.NONE, List.of());

    /**
     * Somebody who looks at the lanes alone.
     *
     * @param lanes is shown the lanes
     * @return the observers
     */
    public static Observers of(LaneObserver lanes) {
        return new Observers(lanes, ShotObserver.NONE, List.of());
    }

    /** Copies the list. */
    public Observers {
        traces = List.copyOf(traces);
    }
}
