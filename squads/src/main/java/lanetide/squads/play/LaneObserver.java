package lanetide.squads.play;

import java.util.List;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.TypicalLine;

/** Is shown every lane whenever it is written down: as a squad finds it, and after each game on it. */
@FunctionalInterface
public interface LaneObserver {
    /** Looks at nothing. */
    LaneObserver NONE = (state, film, lines) -> {};

    /**
     * Looks at a lane.
     *
     * @param state what is written down of it
     * @param film its film, which goes on changing: copy what shall be kept
     * @param lines how the typical player of each style and hand would play it, in the order of the state's windows;
     *     empty where windows were not asked for
     */
    void onLane(LaneState state, OilFilm film, List<TypicalLine> lines);
}
