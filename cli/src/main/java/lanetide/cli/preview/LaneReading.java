package lanetide.cli.preview;

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

    /** A lane as it is met, read in full, and what wear does there. */
    PreviewStudy.Met told(MetFilms.LaneMet lane, Optional<LineAdvisor> advisor) {
        return told(lane.film(), advisor, why(lane));
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

    LineAdvisor advisor() {
        return new LineAdvisor(
                finder, shared.physics().homeLines(finder, pattern()), pattern().lengthM());
    }

    private OilPattern pattern() {
        return shared.pattern();
    }

    /** Where a line meets the pins on a film, past the best hit (boards). */
    double boardsHigh(OilFilm film, Line played) {
        return finder.arrivalBoard(player, film, played) - PinCarry.POCKET_BOARD;
    }

    OilFilm freshFilm() {
        return shared.fresh();
    }
}
