package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.NearestLine;
import lanetide.oilflow.line.PlayedLine;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;

/** Finds where each kind of bowler starts on the fresh pattern, surface by surface. */
public final class FreshLines {
    private final Scenario scenario;
    private final Question question;
    private final Physics physics;
    private final OilFilm fresh;
    private final LineAdvisor advisor;

    FreshLines(Scenario scenario, Question question) {
        this.scenario = scenario;
        this.question = question;
        this.physics = Physics.under(scenario.event().laws());
        this.fresh = OilFilm.fresh(scenario.event().pattern(), physics.grid());
        OilPattern pattern = scenario.event().pattern();
        LineFinder finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        this.advisor = new LineAdvisor(finder, physics.homeLines(finder, pattern), pattern.lengthM());
    }

    /**
     * Finds the lines.
     *
     * @param scenario the scenario
     * @param question whose lines
     * @return by surface, the scenario's own first; then by style, from the fewest revs to the most; then by hand; the
     *     natural line before the free one, and last, where there is one, that on the other track
     */
    public static List<StartLine> of(Scenario scenario, Question question) {
        return new FreshLines(scenario, question).list();
    }

    private List<StartLine> list() {
        List<StartLine> lines = new ArrayList<>();
        for (LaneSurface surface : surfaces()) {
            for (Kind kind : Kinds.of(scenario.event(), question)) {
                Player player = player(kind, surface);
                Optional<PlayedLine> natural = natural(kind, surface, fresh);
                Optional<PlayedLine> other =
                        natural.flatMap(played -> advisor.otherTrack(player, fresh, played.line()));
                add(lines, surface, kind, LineBasis.NATURAL, natural);
                add(lines, surface, kind, LineBasis.FREE, best(List.of(natural, advisor.free(player, fresh), other)));
                if (other.isPresent()) {
                    add(lines, surface, kind, LineBasis.OTHER_TRACK, other);
                }
            }
        }
        return lines;
    }

    /** The best line known: the search over all angles may miss one that is told anyway. */
    private static Optional<PlayedLine> best(List<Optional<PlayedLine>> known) {
        return known.stream()
                .flatMap(Optional::stream)
                .reduce((best, next) ->
                        next.quality().strikeShare() > best.quality().strikeShare() ? next : best)
                .map(FreshLines::asFree);
    }

    private static PlayedLine asFree(PlayedLine line) {
        return new PlayedLine(LineBasis.FREE, line.line(), line.path(), line.window(), line.quality(), line.missRoom());
    }

    /** The natural line on a lane in any state, for one who knows the fresh pattern. */
    Optional<PlayedLine> natural(Kind kind, LaneSurface surface, OilFilm lane) {
        return advisor.natural(player(kind, surface), lane);
    }

    /** The scenario's surface, then the others from the least friction to the most. */
    private List<LaneSurface> surfaces() {
        Map<String, LaneSurface> surfaces = new LinkedHashMap<>();
        if (question.surfaces().isEmpty()) {
            LaneSurface own = scenario.event().centre().surface();
            surfaces.put(own.id(), own);
            scenario.names().surfaces().values().stream()
                    .sorted(Comparator.comparingDouble(LaneSurface::dryFriction).thenComparing(LaneSurface::id))
                    .forEach(surface -> surfaces.putIfAbsent(surface.id(), surface));
        }
        question.surfaces().forEach(surface -> surfaces.putIfAbsent(surface.id(), surface));
        return List.copyOf(surfaces.values());
    }

    private void add(
            List<StartLine> lines, LaneSurface surface, Kind kind, LineBasis basis, Optional<PlayedLine> line) {
        Optional<NearestLine> nearest = line.isEmpty() && basis == LineBasis.NATURAL
                ? Optional.of(advisor.nearest(player(kind, surface), fresh))
                : Optional.empty();
        lines.add(new StartLine(
                surface, kind, basis, line, line.flatMap(played -> change(kind, surface, played)), nearest));
    }

    private Optional<BallChange> change(Kind kind, LaneSurface surface, PlayedLine played) {
        List<Contact> others = scenario.names().covers().values().stream()
                .filter(cover -> !cover.id().equals(kind.cover().id()))
                .map(cover -> physics.contact(cover, surface))
                .toList();
        return advisor.ballChange(player(kind, surface), fresh, played.line(), others);
    }

    private Player player(Kind kind, LaneSurface surface) {
        return new Player(kind.style(), kind.level().spread(), kind.hand(), physics.contact(kind.cover(), surface));
    }
}
