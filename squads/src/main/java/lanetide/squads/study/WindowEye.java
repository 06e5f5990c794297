package lanetide.squads.study;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lanetide.des.stats.Tally;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
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
    private final Playable playable;
    /** Where each kind's line leaves a fresh pattern (boards); empty if there is none. */
    private final Map<OilPattern, List<OptionalDouble>> freshBoards = new HashMap<>();

    private final Map<String, Line> lastLines = new HashMap<>();
    private final Map<Moment, List<Seen>> seen = new HashMap<>();

    /** Where a kind's line leaves lanes, and where it left them when they were fresh (boards). */
    private record Seen(Tally now, Tally fresh) {}

    WindowEye(Playable playable, List<Integer> lanes, List<Moment> moments) {
        this.lanes = lanes;
        this.moments = moments;
        this.kinds = TypicalPlayer.of(playable.event(), playable.physics(), playable.lines());
        this.finder = new LineFinder(
                new RowMarch(playable.physics().grid()), playable.physics().carry());
        this.playable = playable;
    }

    private List<OptionalDouble> freshBoards(OilPattern pattern) {
        OilFilm fresh = OilFilm.fresh(pattern, playable.physics().grid());
        return kinds.stream()
                .map(kind -> window(kind, fresh, start(kind, pattern), pattern.lengthM())
                        .map(start -> OptionalDouble.of(start.exitBoard()))
                        .orElse(OptionalDouble.empty()))
                .toList();
    }

    private Line start(TypicalPlayer kind, OilPattern pattern) {
        return playable.lines().on(pattern).of(kind.player());
    }

    @Override
    public void onLane(LaneMoment at, OilFilm film, List<TypicalLine> lines) {
        Moment moment = new Moment(at.squad(), at.afterGame());
        if (!lanes.contains(at.lane()) || !moments.contains(moment)) {
            return;
        }
        OilPattern pattern = playable.event().pattern(playable.event().squad(at.squad()), at.lane());
        List<OptionalDouble> fresh = freshBoards.computeIfAbsent(pattern, this::freshBoards);
        List<Seen> boards = seen.computeIfAbsent(
                moment,
                key -> kinds.stream()
                        .map(kind -> new Seen(new Tally(), new Tally()))
                        .toList());
        for (int kind = 0; kind < kinds.size(); kind++) {
            TypicalPlayer typical = kinds.get(kind);
            Seen ofKind = boards.get(kind);
            OptionalDouble start = fresh.get(kind);
            // The line on this lane goes on from where it was last.
            String key = at.lane() + "/" + pattern.id() + "/" + kind;
            Line near = lastLines.getOrDefault(key, start(typical, pattern));
            window(typical, film, near, pattern.lengthM()).ifPresent(window -> {
                lastLines.put(key, window.played());
                start.ifPresent(board -> {
                    ofKind.now().add(window.exitBoard());
                    ofKind.fresh().add(board);
                });
            });
        }
    }

    private Optional<ExitWindow> window(TypicalPlayer typical, OilFilm film, Line near, double lengthM) {
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
        List<Seen> boards = seen.get(moment);
        return boards == null || boards.get(kind).now().count() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        boards.get(kind).now().mean() - boards.get(kind).fresh().mean());
    }
}
