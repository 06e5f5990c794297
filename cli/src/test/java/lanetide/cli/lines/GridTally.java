package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lanetide.cli.lines.GridRow.Aim;
import lanetide.oilflow.line.PlayedLine;

/** Counts answers of a grid, one by one or in pairs. What was asked nowhere gets no row. */
final class GridTally {
    private final List<GridAnswer> answers;
    private final Map<GridPoint, PlayedLine> lines = new LinkedHashMap<>();
    private final List<GridRow> rows = new ArrayList<>();

    /** Nothing counted yet. */
    GridTally(List<GridAnswer> answers) {
        this.answers = answers;
        answers.forEach(answer -> answer.line().ifPresent(line -> lines.put(answer.point(), line)));
    }

    List<GridRow> rows() {
        return List.copyOf(rows);
    }

    /** Counts conditions by whether there is a line. */
    void missing(String answer, Aim aim, Predicate<GridPoint> asked) {
        List<GridPoint> points =
                answers.stream().map(GridAnswer::point).filter(asked).toList();
        add(answer, aim, points, point -> !lines.containsKey(point), point -> point);
    }

    /** Counts all lines of which something is true. */
    void lines(String answer, Aim aim, Predicate<PlayedLine> told) {
        lines(answer, aim, point -> true, (point, line) -> told.test(line));
    }

    /** Counts the lines under some of the conditions. */
    void lines(String answer, Aim aim, Predicate<GridPoint> asked, BiPredicate<GridPoint, PlayedLine> told) {
        List<GridPoint> points = lines.keySet().stream().filter(asked).toList();
        add(answer, aim, points, point -> told.test(point, lines.get(point)), point -> point);
    }

    /** A condition and another that differs from it in one thing. */
    private record Pair(GridPoint first, GridPoint second) {}

    /** Counts pairs of lines; a condition comes before its partners. */
    void pairs(
            String answer,
            Aim aim,
            Function<GridPoint, Stream<GridPoint>> partners,
            BiPredicate<PlayedLine, PlayedLine> told) {
        List<Pair> pairs = lines.keySet().stream()
                .flatMap(point -> partners.apply(point).map(partner -> new Pair(point, partner)))
                .filter(pair -> lines.containsKey(pair.second()))
                .toList();
        add(answer, aim, pairs, pair -> told.test(lines.get(pair.first()), lines.get(pair.second())), Pair::first);
    }

    /** Counts what others tell, where they were asked. */
    void apart(String answer, Function<GridAnswer, Optional<Boolean>> told) {
        List<GridAnswer> asked =
                answers.stream().filter(point -> told.apply(point).isPresent()).toList();
        add(answer, Aim.NONE, asked, point -> told.apply(point).orElseThrow(), GridAnswer::point);
    }

    private <T> void add(String answer, Aim aim, List<T> asked, Predicate<T> told, Function<T, GridPoint> point) {
        if (!asked.isEmpty()) {
            List<GridPoint> counted = asked.stream().filter(told).map(point).toList();
            List<GridPoint> others =
                    asked.stream().filter(told.negate()).map(point).toList();
            rows.add(new GridRow(answer, counted, others, aim));
        }
    }
}
