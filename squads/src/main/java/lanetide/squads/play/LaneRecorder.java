package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.result.TypicalLine;

/** Writes down what a lane has become: oil by place, and the exit window of every style. */
final class LaneRecorder {
    private static final double HEADS_END_M = 15 * LaneGeometry.FOOT_M;

    private final List<TypicalPlayer> players;
    private final LineFinder finder;
    private final LaneObserver observer;
    private final Map<String, Line> lastLines = new HashMap<>();
    private final List<LaneState> states = new ArrayList<>();

    /** Records windows for the given players; for none, films only. */
    LaneRecorder(List<TypicalPlayer> players, Physics physics, LaneObserver observer) {
        this.players = players;
        this.finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        this.observer = observer;
    }

    void record(LaneInPlay lane, String squad, int afterGame) {
        OilFilm film = lane.film();
        OilPattern pattern = lane.pattern().orElseThrow();
        double headUm = 0;
        double lowUm = Double.POSITIVE_INFINITY;
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            double meanUm = film.meanOnBoardUm(board, 0, HEADS_END_M);
            headUm = Math.max(headUm, meanUm);
            if (pattern.isInside(board)) {
                lowUm = Math.min(lowUm, meanUm);
            }
        }
        List<TypicalLine> lines =
                players.stream().map(player -> line(player, lane, pattern)).toList();
        LaneState state = new LaneState(
                lane.number(),
                squad,
                afterGame,
                lane.gamesOnOil(),
                film.volumeMl(),
                headUm / OilFilm.UNIT_UM,
                lowUm / OilFilm.UNIT_UM,
                film.volumePastMl(pattern.lengthM()),
                lines.stream().map(TypicalLine::window).toList());
        states.add(state);
        observer.onLane(state, film, lines);
    }

    /** All states by lane, then in order of time. */
    List<LaneState> states() {
        List<LaneState> sorted = new ArrayList<>(states);
        sorted.sort(Comparator.comparingInt(LaneState::lane));
        return sorted;
    }

    private TypicalLine line(TypicalPlayer typical, LaneInPlay lane, OilPattern pattern) {
        String key = lane.number() + "/" + typical.style() + "/" + typical.hand();
        Line near = lastLines.getOrDefault(key, typical.start());
        Optional<ExitWindow> window = finder.movedWindow(typical.player(), lane.film(), near, pattern.lengthM());
        window.ifPresent(found -> lastLines.put(key, found.played()));
        return new TypicalLine(
                new StyleWindow(
                        typical.style(),
                        typical.hand(),
                        window.map(found ->
                                new StyleWindow.Boards(found.lowBoard(), found.highBoard(), found.exitBoard()))),
                typical.player(),
                window.map(ExitWindow::played));
    }
}
