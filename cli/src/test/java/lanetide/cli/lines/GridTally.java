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
        add(answer, points.stream().filter(point -> !lines.containsKey(point)), points.size(), aim);
    }

    /** Counts all lines of which something is true. */
    void lines(String answer, Aim aim, Predicate<PlayedLine> told) {
        lines(answer, aim, point -> true, (point, line) -> told.test(line));
    }

    /** Counts the lines under some of the conditions. */
    void lines(String answer, Aim aim, Predicate<GridPoint> asked, BiPredicate<GridPoint, PlayedLine> told) {
        List<GridPoint> points = lines.keySet().stream().filter(asked).toList();
        add(answer, points.stream().filter(point -> told.test(point, lines.get(point))), points.size(), aim);
    }

    /** Counts pairs of lines; a condition comes before its partners. */
    void pairs(
            String answer,
            Aim aim,
            Function<GridPoint, Stream<GridPoint>> partners,
            BiPredicate<PlayedLine, PlayedLine> told) {
        List<List<PlayedLine>> pairs = lines.keySet().stream()
                .flatMap(point -> partners.apply(point)
                        .filter(lines::containsKey)
                        .map(partner -> List.of(lines.get(point), lines.get(partner))))
                .toList();
        add(answer, pairs.stream().filter(pair -> told.test(pair.get(0), pair.get(1))), pairs.size(), aim);
    }

    /** Counts what others tell, where they were asked. */
    void apart(String answer, Function<GridAnswer, Optional<Boolean>> told) {
        List<Boolean> asked =
                answers.stream().flatMap(point -> told.apply(point).stream()).toList();
        add(answer, asked.stream().filter(isApart -> isApart), asked.size(), Aim.NONE);
    }

    private void add(String answer, Stream<?> told, int of, Aim aim) {
        if (of > 0) {
            rows.add(new GridRow(answer, (int) told.count(), of, aim));
        }
    }
}
