package lanetide.squads.study;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.result.TypicalLine;
import lanetide.squads.watch.LaneMoment;
import lanetide.squads.watch.LaneObserver;

/**
 * Looks at some lanes of one playing as every squad meets them before its first and before its last game: what each
 * stretch of them does to all kinds of bowlers.
 */
final class WearEye implements LaneObserver {
    private static final double HUNDRED_BALLS = 100;

    private final Playable playable;
    private final List<Integer> lanes;
    private final List<TypicalPlayer> kinds;
    private final LineFinder finder;
    private final Map<Integer, OilFilm> laid = new HashMap<>();
    private final Map<Key, List<Seen>> seen = new HashMap<>();

    private record Key(String squad, int kind) {}

    /**
     * What wear does to a kind of bowler.
     *
     * @param boards at the pins, on his line of the fresh pattern (boards)
     * @param strikes of 100 first balls, after moving
     */
    record Seen(ByStretch boards, ByStretch strikes) {}

    WearEye(Playable playable, List<Integer> lanes) {
        this.playable = playable;
        this.lanes = lanes;
        this.kinds = TypicalPlayer.of(playable.event(), playable.physics(), playable.lines());
        this.finder = new LineFinder(
                new RowMarch(playable.physics().grid()), playable.physics().carry());
    }

    @Override
    public void onLane(LaneMoment at, OilFilm film, List<TypicalLine> lines) {
        if (!lanes.contains(at.lane())) {
            return;
        }
        if (at.gamesOnOil() == 0) {
            laid.put(at.lane(), film.copy());
        }
        if (at.afterGame() == 0 || at.afterGame() == playable.event().games(at.squad()) - 1) {
            OilFilm asLaid = laid.get(at.lane());
            OilPattern pattern = playable.event().pattern(playable.event().squad(at.squad()), at.lane());
            for (int kind = 0; kind < kinds.size(); kind++) {
                seen.computeIfAbsent(new Key(at.squad(), kind), key -> new ArrayList<>())
                        .add(seen(kinds.get(kind), film, asLaid, pattern));
            }
        }
    }

    private Seen seen(TypicalPlayer kind, OilFilm film, OilFilm asLaid, OilPattern pattern) {
        Player player = kind.player();
        Line start = playable.lines().on(pattern).of(player);
        double lengthM = pattern.lengthM();
        return new Seen(
                ByStretch.of(lane -> finder.arrivalBoard(player, lane, start), film, asLaid, lengthM),
                ByStretch.of(lane -> HUNDRED_BALLS * strikeShare(player, lane, start), film, asLaid, lengthM));
    }

    /** On the line that is moved to; on the old one where no move meets the pocket. */
    private double strikeShare(Player player, OilFilm film, Line start) {
        return finder.fineQuality(
                        player, film, finder.moveToPocket(player, film, start).orElse(start))
                .strikeShare();
    }

    /** What all kinds of bowlers met. */
    WearStudy.Seen seen() {
        return new WearStudy.Seen(IntStream.range(0, kinds.size())
                .mapToObj(kind -> new WearStudy.OfKind(
                        kinds.get(kind).style(),
                        kinds.get(kind).hand(),
                        playable.event().squads().stream()
                                .map(squad -> seen(squad.id(), kind))
                                .toList()))
                .toList());
    }

    /** Mean over the lanes and the two games of a squad; empty if it met none of the lanes. */
    private Optional<Seen> seen(String squad, int kind) {
        return Optional.ofNullable(seen.get(new Key(squad, kind)))
                .map(all -> new Seen(
                        ByStretch.mean(all.stream().map(Seen::boards).toList()),
                        ByStretch.mean(all.stream().map(Seen::strikes).toList())));
    }
}
