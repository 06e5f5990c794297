package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;

/**
 * The figures of the module's README: where the four styles lay the ball down and leave the pattern, as one thing at a
 * time is changed. All else is as in the tables: 39 ft, 26 mL, 3:1, medium reactive, hard synthetic, fresh.
 */
final class Figures {
    private static final double FEET = 39;
    private static final long SEED = 1;

    private final LineFinder finder = Lanes.finder();

    private Figures() {}

    static String markdown() {
        Figures figures = new Figures();
        return String.join(
                "\n",
                figures.numbered(1, "length (ft)", feet -> Lanes.pattern(feet), 33, 36, 39, 42, 45, 48),
                figures.numbered(2, "ratio", ratio -> Lanes.pattern(FEET, 26, ratio), 1.5, 2.5, 3, 4, 5, 6, 8, 10),
                figures.numbered(3, "volume (mL)", ml -> Lanes.pattern(FEET, ml, 3), 18, 20, 22, 24, 26, 28, 30, 32),
                figures.named(
                        4,
                        "cover",
                        List.of("plastic", "urethane", "weak-reactive", "medium-reactive", "strong-reactive"),
                        cover -> figures.fresh(Lanes.pattern(FEET), cover, Lanes.DEFAULT_SURFACE)),
                figures.named(
                        5,
                        "surface",
                        List.of("hard-synthetic", "textured-synthetic", "worn-synthetic", "wood"),
                        surface -> figures.fresh(Lanes.pattern(FEET), Lanes.DEFAULT_COVER, surface)),
                figures.worn());
    }

    /** Where one style lays the ball down and where it leaves the pattern. */
    private record Place(double laydown, double exit) {}

    private String numbered(int number, String what, DoubleFunction<OilPattern> pattern, double... values) {
        List<String> names = DoubleStream.of(values)
                .mapToObj(value -> value == Math.rint(value) ? String.valueOf((int) value) : String.valueOf(value))
                .toList();
        List<List<Place>> places = DoubleStream.of(values)
                .mapToObj(value -> fresh(pattern.apply(value), Lanes.DEFAULT_COVER, Lanes.DEFAULT_SURFACE))
                .toList();
        return figure(number, what, names, places);
    }

    private String named(int number, String what, List<String> names, Function<String, List<Place>> places) {
        return figure(number, what, names, names.stream().map(places).toList());
    }

    /** The four styles take turns and move before every game. */
    private String worn() {
        Block block = new Block(Lanes.field(Lanes.DEFAULT_COVER), Lanes.pattern(FEET), SEED);
        List<String> names = new ArrayList<>();
        List<List<Place>> places = new ArrayList<>();
        for (int games = 0; games <= 24; games += 4) {
            block.moveAll();
            names.add(String.valueOf(games));
            places.add(IntStream.range(0, block.players.size())
                    .mapToObj(i -> place(block.players.get(i), block.film, block.lines.get(i), FEET * FOOT_M))
                    .toList());
            block.play(4);
        }
        return figure(6, "games on the lane", names, places);
    }

    private List<Place> fresh(OilPattern pattern, String cover, String surface) {
        OilFilm film = Lanes.fresh(pattern);
        HomeLines homes = Lanes.homes(finder, pattern);
        return Lanes.STYLES.stream()
                .map(style -> Lanes.player(style, cover, surface))
                .map(player -> place(player, film, homes.start(player, film).orElseThrow(), pattern.lengthM()))
                .toList();
    }

    private Place place(Player player, OilFilm film, Line line, double endM) {
        return new Place(line.laydownBoard(), finder.exitBoard(player, film, line, endM));
    }

    /** A chart of the means of the four styles, and what each does in a table. */
    private static String figure(int number, String what, List<String> names, List<List<Place>> places) {
        String head = names.stream().map(name -> " " + name + " |").collect(Collectors.joining());
        return String.format(
                Locale.ROOT,
                """
                **Figure %d.** Laydown (upper line) and exit board (lower line) by %s, mean of four styles.

                ```mermaid
                xychart-beta
                    x-axis "%s" [%s]
                    y-axis "board" 0 --> 30
                    line [%s]
                    line [%s]
                ```

                | laydown / exit, by %s |%s
                |---|%s
                %s""",
                number,
                what,
                what,
                names.stream().map(name -> '"' + name + '"').collect(Collectors.joining(", ")),
                means(places, Place::laydown),
                means(places, Place::exit),
                what,
                head,
                "---|".repeat(names.size()),
                IntStream.range(0, Lanes.STYLES.size())
                        .mapToObj(style -> row(style, places))
                        .collect(Collectors.joining()));
    }

    private static String means(List<List<Place>> places, Function<Place, Double> of) {
        return places.stream()
                .map(styles -> styles.stream().mapToDouble(of::apply).average().orElseThrow())
                .map(mean -> String.format(Locale.ROOT, "%.1f", mean))
                .collect(Collectors.joining(", "));
    }

    private static String row(int style, List<List<Place>> places) {
        return "| " + Lanes.STYLES.get(style) + " |"
                + places.stream()
                        .map(styles -> styles.get(style))
                        .map(place -> String.format(Locale.ROOT, " %.1f / %.1f |", place.laydown(), place.exit()))
                        .collect(Collectors.joining())
                + "\n";
    }
}
