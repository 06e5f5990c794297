package lanetide.cli.report.sheets;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.oilflow.film.OilFilm;
import lanetide.squads.play.LaneObserver;
import lanetide.squads.play.LaneState;
import lanetide.squads.play.TypicalLine;

/** Keeps how the typical player of each style would play every lane at every time. */
public final class StartReel implements LaneObserver {
    private final Map<Key, List<TypicalLine>> lines = new HashMap<>();

    private record Key(int lane, String squad, int afterGame) {}

    @Override
    public void onLane(LaneState state, OilFilm film, List<TypicalLine> typical) {
        lines.put(new Key(state.lane(), state.squad(), state.afterGame()), List.copyOf(typical));
    }

    /** The lines on a lane after a game of a squad, from 1; 0 for the lane as the squad finds it. */
    List<TypicalLine> on(int lane, String squad, int afterGame) {
        return lines.getOrDefault(new Key(lane, squad, afterGame), List.of());
    }
}
