package lanetide.squads.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lanetide.des.stats.Tally;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.study.WindowStudy.Moment;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;

/** Looks at some lanes at some moments of one playing: how far the lines of all kinds of bowlers have gone. */
final class WindowEye implements LaneObserver {
    private final List<Integer> lanes;
    private final List<Moment> moments;
    private final List<TypicalPlayer> kinds;
    private final LineFinder finder;
    private final double lengthM;
    /** Where each kind's line leaves the fresh pattern (boards); empty if there is none. */
    private final List<OptionalDouble> freshBoards;

    private final Map<String, Line> lastLines = new HashMap<>();
    private final Map<Moment, List<Tally>> seen = new HashMap<>();

    WindowEye(Playable playable, List<Integer> lanes, List<Moment> moments) {
        this.lanes = lanes;
        this.moments = moments;
        this.kinds = TypicalPlayer.of(playable.event(), playable.physics(), playable.lines());
        this.finder = new LineFinder(
                new RowMarch(playable.physics().grid()), playable.physics().carry());
        this.lengthM = playable.event().pattern().lengthM();
        OilFilm fresh =
                OilFilm.fresh(playable.event().pattern(), playable.physics().grid());
        this.freshBoards = kinds.stream()
                .map(kind -> window(kind, fresh, kind.start())
                        .map(start -> OptionalDouble.of(start.exitBoard()))
                        .orElse(OptionalDouble.empty()))
                .toList();
    }

    @Override
    public void onLane(LaneMoment at, OilFilm film, List<TypicalLine> lines) {
        Moment moment = new Moment(at.squad(), at.afterGame());
        if (!lanes.contains(at.lane()) || !moments.contains(moment)) {
            return;
        }
        List<Tally> boards = seen.computeIfAbsent(
                moment, key -> kinds.stream().map(kind -> new Tally()).toList());
        for (int kind = 0; kind < kinds.size(); kind++) {
            TypicalPlayer typical = kinds.get(kind);
            Tally ofKind = boards.get(kind);
            // The line on this lane goes on from where it was last.
            String key = at.lane() + "/" + kind;
            window(typical, film, lastLines.getOrDefault(key, typical.start())).ifPresent(window -> {
                lastLines.put(key, window.played());
                ofKind.add(window.exitBoard());
            });
        }
    }

    private Optional<ExitWindow> window(TypicalPlayer typical, OilFilm film, Line near) {
        return finder.movedWindow(typical.player(), film, near, lengthM);
    }

    /** How far the lines of all kinds have gone. */
    WindowStudy.Seen seen() {
        return new WindowStudy.Seen(IntStream.range(0, kinds.size())
                .mapToObj(kind -> new WindowStudy.OfKind(
                        kinds.get(kind).style(),
                        kinds.get(kind).hand(),
                        moments.stream().map(moment -> moved(moment, kind)).toList()))
                .toList());
    }

    /** Mean over the lanes on which there is a line (boards); empty if there is none, or none on the fresh pattern. */
    private OptionalDouble moved(Moment moment, int kind) {
        List<Tally> boards = seen.get(moment);
        OptionalDouble start = freshBoards.get(kind);
        return boards == null || boards.get(kind).count() == 0 || start.isEmpty()
                ? OptionalDouble.empty()
                : OptionalDouble.of(boards.get(kind).mean() - start.getAsDouble());
    }
}
