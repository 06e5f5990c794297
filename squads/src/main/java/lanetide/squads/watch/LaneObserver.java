package lanetide.squads.watch;

import java.util.List;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.result.TypicalLine;

/** Is shown every lane as a squad finds it, and after each game on it. */
@FunctionalInterface
public interface LaneObserver {
    /** Looks at nothing. */
    LaneObserver NONE = (moment, film, lines) -> {};

    /**
     * Looks at a lane.
     *
     * @param moment which lane, and when
     * @param film its film, which goes on changing: copy what shall be kept
     * @param lines how the typical player of each style and hand would play it, in the order of the windows that are
     *     written down; empty where windows were not asked for
     */
    void onLane(LaneMoment moment, OilFilm film, List<TypicalLine> lines);
}
