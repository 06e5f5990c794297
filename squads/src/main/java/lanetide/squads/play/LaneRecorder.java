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
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.result.LaneState;
import lanetide.squads.result.StyleWindow;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.LaneRecords;

/** Writes down what lanes have become, as far as that is asked for, and shows them to who watches. */
final class LaneRecorder {

    private final List<TypicalPlayer> players;
    private final StartingLines lines;
    private final Optional<LineFinder> finder;
    private final boolean writes;
    private final LaneObserver observer;
    private final Map<String, Line> lastLines = new HashMap<>();
    private final List<LaneState> states = new ArrayList<>();

    /** A recorder of what is asked for; windows are those of the given players. */
    LaneRecorder(
            LaneRecords wanted,
            List<TypicalPlayer> players,
            StartingLines lines,
            Physics physics,
            LaneObserver observer) {
        this.lines = lines;
        this.writes = wanted != LaneRecords.NONE;
        this.players = wanted == LaneRecords.WINDOWS ? players : List.of();
        this.finder = this.players.isEmpty()
                ? Optional.empty()
                : Optional.of(new LineFinder(new RowMarch(physics.grid()), physics.carry()));
        this.observer = observer;
    }

    void record(LaneInPlay lane, String squad, int afterGame) {
        OilPattern pattern = lane.pattern().orElseThrow();
        List<TypicalLine> lines =
                players.stream().map(player -> line(player, lane, pattern)).toList();
        LaneMoment moment = new LaneMoment(lane.number(), squad, afterGame, lane.gamesOnOil());
        if (writes) {
            states.add(state(moment, lane.film(), pattern, lines));
        }
        observer.onLane(moment, lane.film(), lines);
    }

    private static LaneState state(LaneMoment moment, OilFilm film, OilPattern pattern, List<TypicalLine> lines) {
        double headUm = 0;
        double lowUm = Double.POSITIVE_INFINITY;
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            double meanUm = film.meanOnBoardUm(board, 0, LaneGeometry.HEADS_END_M);
            headUm = Math.max(headUm, meanUm);
            if (pattern.isInside(board)) {
                lowUm = Math.min(lowUm, meanUm);
            }
        }
        return new LaneState(
                moment.lane(),
                moment.squad(),
                moment.afterGame(),
                moment.gamesOnOil(),
                film.volumeMl(),
                headUm / OilFilm.UNIT_UM,
                lowUm / OilFilm.UNIT_UM,
                film.volumePastMl(pattern.lengthM()),
                lines.stream().map(TypicalLine::window).toList());
    }

    /** All states by lane, then in order of time. */
    List<LaneState> states() {
        List<LaneState> sorted = new ArrayList<>(states);
        sorted.sort(Comparator.comparingInt(LaneState::lane));
        return sorted;
    }

    private TypicalLine line(TypicalPlayer typical, LaneInPlay lane, OilPattern pattern) {
        String key = lane.number() + "/" + pattern.id() + "/" + typical.style() + "/" + typical.hand();
        Line near = lastLines.getOrDefault(key, lines.on(pattern).of(typical.player()));
        Optional<ExitWindow> window =
                finder.orElseThrow().movedWindow(typical.player(), lane.film(), near, pattern.lengthM());
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
