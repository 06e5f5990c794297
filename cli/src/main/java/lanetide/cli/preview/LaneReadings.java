package lanetide.cli.preview;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Event;
import lanetide.squads.unknown.PlayModel;

/**
 * What all readings of lanes in a study share: the laws, the fresh pattern, and the home lines on it of the kinds of
 * bowlers that are asked for. Immutable.
 */
final class LaneReadings {
    private final PlayModel model;
    private final Event event;
    private final Collection<Coverstock> anyBall;
    private final Physics physics;
    private final OilPattern pattern;
    private final OilFilm fresh;
    private final Map<Kind, Optional<Line>> homes = new HashMap<>();
    private final Map<Kind, Optional<ExitWindow>> freshWindows = new HashMap<>();
    private final Map<Kind, Anchor> anchors = new HashMap<>();

    /**
     * Finds the home lines.
     *
     * @param scenario the scenario
     * @param model the event under the values with which the lanes are played
     * @param squad a squad's place in the event
     * @param lane a lane that it finds with the pattern of all that will be read
     * @param kinds the kinds of bowlers for whom lanes will be read
     * @param usual the same under the usual values, from whose fresh pattern boards are told; empty for these
     */
    LaneReadings(
            Scenario scenario,
            PlayModel model,
            int squad,
            int lane,
            Collection<Kind> kinds,
            Optional<LaneReadings> usual) {
        this.model = model;
        this.event = model.event();
        this.anyBall = scenario.names().covers().values();
        this.physics = Physics.under(event.laws());
        this.pattern = event.pattern(squad, lane);
        this.fresh = OilFilm.fresh(pattern, physics.grid());
        HomeLines lines = physics.homeLines(finder(), pattern);
        kinds.forEach(kind -> homes.computeIfAbsent(kind, each -> lines.home(player(each))));
        homes.forEach((kind, home) -> freshWindows.put(kind, window(finder(), kind, fresh)));
        usual.ifPresent(known -> homes.keySet()
                .forEach(kind -> known.freshWindows
                        .get(kind)
                        .flatMap(window -> freshWindows.get(kind).map(own -> Anchor.between(window, own)))
                        .ifPresent(anchor -> anchors.put(kind, anchor))));
    }

    /** A reading for one of the kinds that compares no balls, for one thread. */
    LaneReading of(Kind kind) {
        return of(kind, List.of());
    }

    /** The same that compares the balls of a bag; those of an empty one are all there are. */
    LaneReading of(Kind kind, List<Coverstock> bag) {
        return new LaneReading(
                this,
                kind,
                (bag.isEmpty() ? anyBall : bag).stream().map(model.oil()::of).toList());
    }

    Event event() {
        return event;
    }

    Physics physics() {
        return physics;
    }

    OilPattern pattern() {
        return pattern;
    }

    OilFilm fresh() {
        return fresh;
    }

    /** The home line of one of the kinds; empty if it has none. */
    Optional<Line> home(Kind kind) {
        return homes.get(kind);
    }

    /** The line that one of the kinds starts with on the fresh pattern; empty if none meets the pocket. */
    Optional<Line> freshLine(Kind kind) {
        return freshWindows.get(kind).map(ExitWindow::played);
    }

    /** The window of the line that one of the kinds would start with; empty if none meets the pocket. */
    Optional<ExitWindow> window(LineFinder finder, Kind kind, OilFilm film) {
        return home(kind).flatMap(home -> finder.movedWindow(player(kind), film, home, pattern.lengthM()));
    }

    /** A window of one of the kinds as it is told. */
    ExitWindow told(Kind kind, ExitWindow window) {
        Anchor anchor = anchors.get(kind);
        return anchor == null ? window : anchor.told(window);
    }

    /** A bowler of a kind on the event's lanes. */
    Player player(Kind kind) {
        return new Player(
                model.oil().of(kind.style()),
                model.level(kind.level()).spread(),
                kind.hand(),
                physics.contact(model.oil().of(kind.cover()), event.centre().surface()));
    }

    /** A finder for one thread. */
    LineFinder finder() {
        return new LineFinder(new RowMarch(physics.grid()), physics.carry());
    }
}
