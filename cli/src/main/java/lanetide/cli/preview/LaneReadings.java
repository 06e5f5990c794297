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
    private final Collection<Coverstock> balls;
    private final Physics physics;
    private final OilFilm fresh;
    private final Map<Kind, Optional<Line>> homes = new HashMap<>();

    /**
     * Finds the home lines.
     *
     * @param scenario the scenario
     * @param model the event under the values with which the lanes are played
     * @param kinds the kinds of bowlers for whom lanes will be read
     * @param bag the balls they may change to; none if any
     */
    LaneReadings(Scenario scenario, PlayModel model, Collection<Kind> kinds, List<Coverstock> bag) {
        this.model = model;
        this.event = model.event();
        this.balls = (bag.isEmpty() ? scenario.names().covers().values() : bag)
                .stream().map(model.oil()::of).toList();
        this.physics = Physics.under(event.laws());
        this.fresh = OilFilm.fresh(event.pattern(), physics.grid());
        HomeLines lines = physics.homeLines(finder(), event.pattern());
        kinds.forEach(kind -> homes.computeIfAbsent(kind, each -> lines.home(player(each))));
    }

    /** A reading for one of the kinds, for one thread. */
    LaneReading of(Kind kind) {
        return new LaneReading(this, kind);
    }

    Event event() {
        return event;
    }

    Collection<Coverstock> balls() {
        return balls;
    }

    Physics physics() {
        return physics;
    }

    OilFilm fresh() {
        return fresh;
    }

    /** The home line of one of the kinds; empty if it has none. */
    Optional<Line> home(Kind kind) {
        return homes.get(kind);
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
