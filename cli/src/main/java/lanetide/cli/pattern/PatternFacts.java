package lanetide.cli.pattern;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import lanetide.cli.report.JsonAnswer;
import lanetide.cli.report.LengthRule;
import lanetide.cli.scenario.Scenario;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.film.FilmTapes;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;
import lanetide.oilflow.film.PatternMeasures;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.film.TapeReading;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import lanetide.squads.model.Levels;

/**
 * All there is to say about a fresh pattern on a surface.
 *
 * @param pattern the pattern
 * @param surface the surface it lies on
 * @param bands the limits it is sorted by
 * @param measures what an inspector would measure
 * @param tapes what tapes would read, by distance, then board
 * @param shape the same at 8, 15, 22 and 35 ft, as far as there is oil
 * @param exits where each style leaves it
 */
public record PatternFacts(
        OilPattern pattern,
        LaneSurface surface,
        PatternBands bands,
        PatternMeasures measures,
        List<TapeReading> tapes,
        List<TapeReading> shape,
        List<StyleExit> exits) {
    /** Cover the styles are looked at with. */
    static final String COVER = "medium-reactive";

    /** Level of skill whose scatter the windows are for. */
    static final String LEVEL = "scratch";

    /** Copies the lists. */
    public PatternFacts {
        tapes = List.copyOf(tapes);
        shape = List.copyOf(shape);
        exits = List.copyOf(exits);
    }

    /**
     * Where a style leaves the fresh pattern.
     *
     * @param style its name
     * @param hand delivery side
     * @param window the exit window around the line it starts with; empty if it finds none to the pocket
     */
    public record StyleExit(String style, Hand hand, Optional<ExitWindow> window) {}

    /**
     * Works everything out.
     *
     * @param scenario the scenario
     * @return the facts of its pattern
     */
    public static PatternFacts of(Scenario scenario) {
        Physics physics = Physics.under(scenario.event().laws());
        OilPattern pattern = scenario.event().pattern();
        OilFilm film = OilFilm.fresh(pattern, physics.grid());
        LineFinder finder = new LineFinder(new RowMarch(physics.grid()), physics.carry());
        HomeLines homes = physics.homeLines(finder, pattern);
        List<Hand> hands = pattern.isSymmetric() ? List.of(Hand.RIGHT) : List.of(Hand.values());
        List<StyleExit> exits = new ArrayList<>();
        for (PlayingStyle style : byRevRate(scenario)) {
            for (Hand hand : hands) {
                exits.add(exit(player(style, hand, scenario, physics), film, finder, homes, pattern.lengthM()));
            }
        }
        return new PatternFacts(
                pattern,
                scenario.event().centre().surface(),
                scenario.bands(),
                PatternMeasures.of(film),
                FilmTapes.read(film, FilmTapes.positionsM(pattern.lengthM())),
                FilmTapes.read(film, shapeReadM(pattern)),
                exits);
    }

    private static List<Double> shapeReadM(OilPattern pattern) {
        return Stream.of(8, 15, 22, 35)
                .map(feet -> feet * LaneGeometry.FOOT_M)
                .filter(distanceM -> distanceM < pattern.lengthM())
                .toList();
    }

    private static List<PlayingStyle> byRevRate(Scenario scenario) {
        return scenario.names().styles().values().stream()
                .sorted(Comparator.comparingDouble(style -> style.release().spinRadps()))
                .toList();
    }

    private static Player player(PlayingStyle style, Hand hand, Scenario scenario, Physics physics) {
        return new Player(
                style,
                Levels.shipped().get(LEVEL).spread(),
                hand,
                physics.contact(
                        scenario.names().covers().get(COVER),
                        scenario.event().centre().surface()));
    }

    private static StyleExit exit(Player player, OilFilm film, LineFinder finder, HomeLines homes, double lengthM) {
        return new StyleExit(
                player.style().id(),
                player.hand(),
                homes.start(player, film).map(line -> finder.windowOf(player, film, line, lengthM)));
    }

    /**
     * The ratio by the sport rule: as the sheet states it, or as it is measured on a film made of tapes.
     *
     * @return inside over outside, to two decimals, as an inspector would write it
     */
    double ratio() {
        double exact = pattern instanceof SheetPattern sheet ? sheet.ratio() : measures.ratio();
        return Double.isInfinite(exact) ? exact : JsonAnswer.rounded(exact, 2);
    }

    /** The exit board by the length rule; empty where it names none on the lane's outer half. */
    OptionalDouble exitBoardByRule() {
        return LengthRule.exitBoard(pattern);
    }

    PatternBands.Length lengthBand() {
        return bands.lengthBand(pattern.lengthM());
    }

    PatternBands.Volume volumeBand() {
        return bands.volumeBand(pattern.volumeMl());
    }

    /** The ratio of one half, to two decimals. */
    double ratio(Hand half) {
        double measured = half == Hand.RIGHT ? measures.ratioRight() : measures.ratioLeft();
        double exact = pattern instanceof SheetPattern sheet
                ? (half == Hand.RIGHT ? sheet.right() : sheet.left()).ratio()
                : measured;
        return Double.isInfinite(exact) ? exact : JsonAnswer.rounded(exact, 2);
    }

    /** The tier of one half. */
    PatternBands.Tier tier(Hand half) {
        return bands.tier(ratio(half));
    }

    /** The tier of the pattern: that of its easier half, since a pattern is hard only if both halves are. */
    PatternBands.Tier tier() {
        PatternBands.Tier right = tier(Hand.RIGHT);
        PatternBands.Tier left = tier(Hand.LEFT);
        return right.compareTo(left) > 0 ? right : left;
    }
}
