package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.cli.lines.Kind;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.ByStretch;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.pocket.PinCarry;

/** Reads lanes for one kind of bowler: what would he start with there? One object serves one thread. */
final class LaneReading {
    private final LaneReadings shared;
    private final Kind kind;
    private final List<Coverstock> balls;
    private final Player player;
    private final LineFinder finder;

    /** A reading for one of the kinds, who may change to one of the balls. */
    LaneReading(LaneReadings shared, Kind kind, List<Coverstock> balls) {
        this.shared = shared;
        this.kind = kind;
        this.balls = balls;
        this.player = shared.player(kind);
        this.finder = shared.finder();
    }

    /** What one playing tells, from both lanes before each game. */
    PreviewStudy.PlayingMet playing(List<List<MetFilms.LaneMet>> lanes, boolean withBalls) {
        Optional<LineAdvisor> advisor = withBalls ? Optional.of(advisor()) : Optional.empty();
        List<List<PreviewStudy.Met>> games = new ArrayList<>();
        for (List<MetFilms.LaneMet> pair : lanes) {
            games.add(pair.stream()
                    .map(lane -> told(lane.film(), advisor, why(lane)))
                    .toList());
        }
        return new PreviewStudy.PlayingMet(games, tried(lanes, games));
    }

    /** The fresh pattern, read in full. */
    PreviewStudy.Met freshTold() {
        return told(shared.fresh(), Optional.of(advisor()), Optional.empty());
    }

    /** The fresh pattern, read for the line and its window alone. */
    PreviewStudy.Met fresh() {
        return met(shared.fresh());
    }

    /** A lane, read for the line and its window alone. */
    PreviewStudy.Met met(OilFilm film) {
        Optional<ExitWindow> window = window(film);
        return new PreviewStudy.Met(
                window.map(found -> shared.told(kind, found)),
                window.map(ExitWindow::played),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    /** A lane, read in full: how good the line is too, and with an advisor whether another ball would help more. */
    private PreviewStudy.Met told(OilFilm film, Optional<LineAdvisor> advisor, Optional<ByStretch> why) {
        Optional<ExitWindow> window = window(film);
        return new PreviewStudy.Met(
                window.map(found -> shared.told(kind, found)),
                window.map(ExitWindow::played),
                window.map(found -> finder.fineQuality(player, film, found.played())),
                window.flatMap(found -> advisor.flatMap(who -> change(who, film, found.played()))),
                advisor.isPresent(),
                why);
    }

    private Optional<ByStretch> why(MetFilms.LaneMet lane) {
        return shared.freshLine(kind)
                .map(line -> ByStretch.of(
                        film -> finder.arrivalBoard(player, film, line),
                        lane.film(),
                        lane.laid(),
                        pattern().lengthM()));
    }

    private Optional<ExitWindow> window(OilFilm film) {
        return shared.window(finder, kind, film);
    }

    private Optional<BallChange> change(LineAdvisor advisor, OilFilm film, Line played) {
        List<Contact> others = balls.stream()
                .filter(cover -> !cover.id().equals(kind.cover().id()))
                .map(cover ->
                        shared.physics().contact(cover, shared.event().centre().surface()))
                .toList();
        return others.isEmpty() ? Optional.empty() : advisor.ballChange(player, film, played, others);
    }

    private LineAdvisor advisor() {
        return new LineAdvisor(
                finder, shared.physics().homeLines(finder, pattern()), pattern().lengthM());
    }

    private OilPattern pattern() {
        return shared.event().pattern();
    }

    /** What the line of the first game, that moved in, and those of the other games do on other films. */
    private List<PreviewStudy.Tried> tried(List<List<MetFilms.LaneMet>> lanes, List<List<PreviewStudy.Met>> games) {
        List<PreviewStudy.Tried> tried = new ArrayList<>();
        for (int lane = 0; lane < lanes.get(0).size(); lane++) {
            Optional<Line> first = games.get(0).get(lane).played();
            if (first.isPresent()) {
                OilFilm before = lanes.get(0).get(lane).film();
                tried.add(tried(1, 0, shared.fresh(), first.get()));
                tried.add(tried(Practice.DEEPER, 0, shared.fresh(), Practice.deeper(first.get())));
                tried.add(tried(Practice.DEEPER, 1, before, Practice.deeper(first.get())));
                for (int game = 1; game < lanes.size(); game++) {
                    tried.add(tried(1, game + 1, lanes.get(game).get(lane).film(), first.get()));
                    Optional<Line> later = games.get(game).get(lane).played();
                    if (later.isPresent()) {
                        tried.add(tried(game + 1, 0, shared.fresh(), later.get()));
                        tried.add(tried(game + 1, 1, before, later.get()));
                    }
                }
            }
        }
        return tried;
    }

    private PreviewStudy.Tried tried(int line, int lanes, OilFilm film, Line played) {
        return new PreviewStudy.Tried(
                new PreviewStudy.Trial(line, lanes), finder.arrivalBoard(player, film, played) - PinCarry.POCKET_BOARD);
    }
}
