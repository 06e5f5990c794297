package lanetide.cli.preview;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import lanetide.cli.lines.Kind;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.PlayedLine;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Event;

/** Reads lanes for one kind of bowler: what would he start with there? One object serves one thread. */
final class LaneReading {
    private final Scenario scenario;
    private final Event event;
    private final Physics physics;
    private final Kind kind;
    private final List<Coverstock> bag;
    private final OilFilm fresh;
    private final Player player;
    private final LineFinder finder;
    private final LineAdvisor advisor;

    /** A reading for one who may change to any ball. */
    LaneReading(Scenario scenario, Physics physics, Kind kind) {
        this(scenario, physics, kind, List.of());
    }

    /** A reading for one who has these balls in his bag; none if he may change to any. */
    LaneReading(Scenario scenario, Physics physics, Kind kind, List<Coverstock> bag) {
        this.scenario = scenario;
        this.event = scenario.event();
        this.physics = physics;
        this.kind = kind;
        this.bag = bag;
        this.fresh = OilFilm.fresh(event.pattern(), physics.grid());
        this.player = new Player(
                kind.style(),
                kind.level().spread(),
                kind.hand(),
                physics.contact(kind.cover(), event.centre().surface()));
        this.finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        this.advisor = new LineAdvisor(
                finder,
                physics.homeLines(finder, event.pattern()),
                event.pattern().lengthM());
    }

    /** What one playing tells, from the films of both lanes before each game. */
    PreviewStudy.PlayingMet playing(List<List<OilFilm>> films, boolean withBalls) {
        List<List<PreviewStudy.Met>> games = new ArrayList<>();
        for (List<OilFilm> pair : films) {
            games.add(pair.stream().map(film -> met(film, withBalls)).toList());
        }
        return new PreviewStudy.PlayingMet(games, signs(films, games.get(0)));
    }

    /** The fresh pattern, read. */
    PreviewStudy.Met fresh(boolean withBalls) {
        return met(fresh, withBalls);
    }

    /** A lane, read. */
    PreviewStudy.Met met(OilFilm film, boolean withBalls) {
        Optional<PlayedLine> line = advisor.natural(player, film);
        return new PreviewStudy.Met(
                line, withBalls ? line.flatMap(played -> change(film, played)) : Optional.empty(), withBalls);
    }

    private Optional<BallChange> change(OilFilm film, PlayedLine played) {
        Collection<Coverstock> balls = bag.isEmpty() ? scenario.names().covers().values() : bag;
        List<Contact> others = balls.stream()
                .filter(cover -> !cover.id().equals(kind.cover().id()))
                .map(cover -> physics.contact(cover, event.centre().surface()))
                .toList();
        return advisor.ballChange(player, film, played.line(), others);
    }

    private List<Preview.Sign> signs(List<List<OilFilm>> films, List<PreviewStudy.Met> first) {
        List<Preview.Sign> signs = new ArrayList<>();
        for (int lane = 0; lane < first.size(); lane++) {
            if (first.get(lane).line().isPresent()) {
                PlayedLine start = first.get(lane).line().get();
                signs.add(sign(0, fresh, start));
                for (int game = 1; game < films.size(); game++) {
                    signs.add(sign(game + 1, films.get(game).get(lane), start));
                }
            }
        }
        return signs;
    }

    private Preview.Sign sign(int asGame, OilFilm film, PlayedLine start) {
        return new Preview.Sign(asGame, finder.arrivalBoard(player, film, start.line()) - PinCarry.POCKET_BOARD);
    }
}
