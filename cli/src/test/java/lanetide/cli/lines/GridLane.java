package lanetide.cli.lines;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.cli.pattern.PatternFacts;
import lanetide.cli.pattern.PatternFacts.StyleExit;
import lanetide.cli.scenario.Scenario;
import lanetide.cli.scenario.Scenarios;
import lanetide.cli.scenario.key.Names;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.PlayedLine;
import lanetide.squads.equipment.Physics;

/** A lane of the coach's grid: its scenario is read as a file would be, and asked as the command asks. */
final class GridLane {
    /** Lines and exits that differ by more are told as two (boards). */
    private static final double SAME_BOARDS = 0.05;

    private static final String LEVEL = "scratch";
    private static final List<String> OTHER_LEVELS = List.of("elite", "casual");
    /** Cover that {@code pattern} tells exits for. */
    private static final String PATTERN_COVER = "medium-reactive";
    /** Every so many questions the other hand and levels are asked too. */
    private static final int SAMPLED = 9;

    private final List<GridPoint> points;
    private final int number;
    private final boolean isFresh;
    private final Names names;
    private final LaneSurface surface;
    private final FreshLines lines;
    private final OilFilm film;
    private final List<StyleExit> patternExits;

    /**
     * Makes the lane ready.
     *
     * @param points what is asked on it
     * @param number its place among the lanes
     * @param games games that have worn it
     */
    GridLane(List<GridPoint> points, int number, int games) {
        this.points = points;
        this.number = number;
        this.isFresh = games == 0;
        Scenario scenario = scenario(points.get(0));
        this.names = scenario.names();
        this.surface = scenario.event().centre().surface();
        this.lines = new FreshLines(
                scenario, new Question(List.of(), List.of(), List.of(), List.of(), List.of(), Optional.empty()));
        Physics physics = Physics.under(scenario.event().laws());
        this.film = OilFilm.fresh(scenario.event().pattern(), physics.grid());
        this.patternExits = isFresh ? PatternFacts.of(scenario).exits() : List.of();
        if (!isFresh) {
            new GridWear(physics, surface, this::usualKind, this::line).play(games, film);
        }
    }

    private static Scenario scenario(GridPoint point) {
        String text = Scenarios.SOUND
                .replace("surface: hard-synthetic", "surface: " + point.surface())
                .replace("length: 39 ft", "length: " + point.feet() + " ft")
                .replace("volume: 23 mL", "volume: " + point.volumeMl() + " mL")
                .replace("ratio: 4:1", String.format(Locale.ROOT, "ratio: %.1f:1", point.ratio()));
        return Scenarios.read(text).scenario().orElseThrow();
    }

    List<GridAnswer> answers() {
        return IntStream.range(0, points.size()).mapToObj(this::answer).toList();
    }

    private GridAnswer answer(int i) {
        GridPoint point = points.get(i);
        Optional<PlayedLine> line = line(kind(point, Hand.RIGHT, LEVEL));
        boolean others = isFresh && (number * points.size() + i) % SAMPLED == 0;
        return new GridAnswer(
                point,
                line,
                others ? Optional.of(isApart(line, line(kind(point, Hand.LEFT, LEVEL)))) : Optional.empty(),
                others
                        ? Optional.of(OTHER_LEVELS.stream()
                                .anyMatch(level -> isApart(line, line(kind(point, Hand.RIGHT, level)))))
                        : Optional.empty(),
                isFresh && point.cover().equals(PATTERN_COVER)
                        ? Optional.of(isApart(line, patternExit(point.style())))
                        : Optional.empty());
    }

    private Optional<PlayedLine> line(Kind kind) {
        return lines.natural(kind, surface, film);
    }

    private Kind kind(GridPoint point, Hand hand, String level) {
        return new Kind(
                names.styles().get(point.style()),
                hand,
                names.covers().get(point.cover()),
                names.levels().get(level));
    }

    private Kind usualKind(String style) {
        return new Kind(
                names.styles().get(style),
                Hand.RIGHT,
                names.covers().get(PATTERN_COVER),
                names.levels().get(LEVEL));
    }

    private StyleExit patternExit(String style) {
        return patternExits.stream()
                .filter(exit -> exit.style().equals(style) && exit.hand() == Hand.RIGHT)
                .findFirst()
                .orElseThrow();
    }

    private static boolean isApart(Optional<PlayedLine> one, Optional<PlayedLine> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isPresent() != other.isPresent();
        }
        return isApart(one.get().line().laydownBoard(), other.get().line().laydownBoard())
                || isApart(one.get().path().exitBoard(), other.get().path().exitBoard());
    }

    private static boolean isApart(Optional<PlayedLine> line, StyleExit exit) {
        if (line.isEmpty() || exit.window().isEmpty()) {
            return line.isPresent() != exit.window().isPresent();
        }
        return isApart(line.get().path().exitBoard(), exit.window().get().exitBoard())
                || isApart(line.get().window().lowBoard(), exit.window().get().lowBoard())
                || isApart(line.get().window().highBoard(), exit.window().get().highBoard());
    }

    private static boolean isApart(double one, double other) {
        return Math.abs(one - other) > SAME_BOARDS;
    }
}
