package lanetide.cli.lines;

import static lanetide.cli.lines.CoachGrid.REACTIVE;
import static lanetide.cli.lines.CoachGrid.SMOOTH;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lanetide.cli.lines.GridRow.Aim;
import lanetide.oilflow.line.PlayedLine;

/** Counts the answers of a grid that a coach would not sign, and those that he wants to see. */
final class GridCounts {
    /** Lengths and the highest ratio that the length rule is for. */
    private static final int RULE_FROM_FT = 35;

    private static final int RULE_TO_FT = 45;
    private static final double RULE_TO_RATIO = 5;
    private static final double RULE_LESS_FT = 31;

    private final CoachGrid grid;
    private final List<GridAnswer> answers;
    private final Map<GridPoint, PlayedLine> lines = new LinkedHashMap<>();
    private final List<GridRow> rows = new ArrayList<>();

    GridCounts(CoachGrid grid, List<GridAnswer> answers) {
        this.grid = grid;
        this.answers = answers;
        answers.forEach(answer -> answer.line().ifPresent(line -> lines.put(answer.point(), line)));
    }

    List<GridRow> rows() {
        signs();
        windows();
        exits();
        ratios();
        others();
        return List.copyOf(rows);
    }

    private void signs() {
        pairs(
                "of two reactive balls the stronger nearer the gutter, over half a board",
                Aim.NONE,
                balls(REACTIVE),
                nearer(0.5));
        pairs("urethane nearer the gutter than plastic, over half a board", Aim.NONE, balls(SMOOTH), nearer(0.5));
        pairs(
                "of two volumes the larger deeper, over half a board",
                Aim.NONE,
                point -> after(grid.volumesMl(), point.volumeMl()).map(point::withVolume),
                deeper(0.5));
        pairs(
                "of two surfaces the one of more friction nearer the gutter, over half a board",
                Aim.NONE,
                point -> after(grid.surfaces(), point.surface()).map(point::withSurface),
                nearer(0.5));
        pairs(
                "of two neighbouring styles the one with more revs nearer the gutter, over a board",
                grid.games() == 0 ? Aim.HALF_A_PERCENT : Aim.TWO_PERCENT,
                point -> after(grid.styles(), point.style()).limit(1).map(point::withStyle),
                nearer(1));
    }

    private void windows() {
        lines("window of no width (under 0.05 board)", Aim.NONE, line -> width(line) < 0.05);
        lines("exit outside its own window, over half a board", Aim.NONE, line -> outside(line) > 0.5);
        lines("exit outside its own window, over 0.05 board", Aim.NONE, line -> outside(line) > 0.05);
        lines(
                "more strikes than pocket hits",
                Aim.NONE,
                line -> line.quality().strikeShare() > line.quality().pocketShare());
    }

    private void exits() {
        count(
                "exit on board 3 or less, from 36 ft",
                Aim.HALF_A_PERCENT,
                stream().filter(answer -> answer.point().feet() >= 36 && hasLine(answer)),
                answer -> exit(answer) <= 3);
        count(
                "exit within four boards of the length rule, 35 to 45 ft, to 5:1",
                Aim.MOST,
                ruled().filter(answer -> answer.point().ratio() <= RULE_TO_RATIO),
                GridCounts::followsRule);
        for (double ratio : grid.ratios()) {
            count(
                    String.format(Locale.ROOT, "the same at %.1f:1", ratio),
                    ratio <= RULE_TO_RATIO ? Aim.MOST : Aim.NO_AIM,
                    ruled().filter(answer -> answer.point().ratio() == ratio),
                    GridCounts::followsRule);
        }
        count(
                "no line, 35 to 45 ft",
                Aim.ONE_PERCENT,
                stream().filter(GridCounts::isUsual),
                answer -> !hasLine(answer));
        count(
                "no line, other lengths",
                Aim.NO_AIM,
                stream().filter(answer -> !isUsual(answer)),
                answer -> !hasLine(answer));
    }

    private void ratios() {
        Function<GridPoint, Stream<GridPoint>> next =
                point -> after(grid.ratios(), point.ratio()).limit(1).map(point::withRatio);
        pairs("laydown over 8 boards away at the next ratio", Aim.NONE, next, away(8));
        pairs("laydown over 5 boards away at the next ratio", Aim.HALF_A_PERCENT, next, away(5));
        Function<GridPoint, Stream<GridPoint>> house =
                point -> point.ratio() == 1.5 ? Stream.of(point.withRatio(8)) : Stream.empty();
        pairs(
                "room to miss wider at 8:1 than at 1.5:1",
                Aim.NEARLY_ALL,
                house,
                (sport, easy) ->
                        easy.missRoom().totalBoards() > sport.missRoom().totalBoards());
        pairs("window wider at 8:1 than at 1.5:1", Aim.NEARLY_ALL, house, (sport, easy) -> width(easy) > width(sport));
    }

    private void others() {
        asked("`pattern` tells another exit or window", GridAnswer::patternApart);
        asked("a left-hander starts elsewhere", GridAnswer::leftApart);
        asked("a better or poorer bowler starts elsewhere", GridAnswer::levelApart);
    }

    /** The questions without a line that ought to have one. */
    List<GridPoint> withoutLine() {
        return stream()
                .filter(answer -> isUsual(answer) && !hasLine(answer))
                .map(GridAnswer::point)
                .toList();
    }

    private void lines(String what, Aim aim, Predicate<PlayedLine> told) {
        count(
                what,
                aim,
                stream().filter(GridCounts::hasLine),
                answer -> told.test(answer.line().orElseThrow()));
    }

    private void asked(String what, Function<GridAnswer, Optional<Boolean>> told) {
        count(
                what,
                Aim.NONE,
                stream().filter(answer -> told.apply(answer).isPresent()),
                answer -> told.apply(answer).orElseThrow());
    }

    private void count(String what, Aim aim, Stream<GridAnswer> asked, Predicate<GridAnswer> told) {
        List<GridAnswer> all = asked.toList();
        add(what, (int) all.stream().filter(told).count(), all.size(), aim);
    }

    /** Counts over pairs of lines that differ in one condition, the first line being at the lower of its values. */
    private void pairs(
            String what,
            Aim aim,
            Function<GridPoint, Stream<GridPoint>> partners,
            BiPredicate<PlayedLine, PlayedLine> told) {
        int number = 0;
        int of = 0;
        for (Map.Entry<GridPoint, PlayedLine> first : lines.entrySet()) {
            for (GridPoint partner : partners.apply(first.getKey()).toList()) {
                PlayedLine second = lines.get(partner);
                of += second != null ? 1 : 0;
                number += second != null && told.test(first.getValue(), second) ? 1 : 0;
            }
        }
        add(what, number, of, aim);
    }

    /** What a grid has no question for has no row. */
    private void add(String what, int number, int of, Aim aim) {
        if (of > 0) {
            rows.add(new GridRow(what, number, of, aim));
        }
    }

    private Stream<GridAnswer> stream() {
        return answers.stream();
    }

    private Stream<GridAnswer> ruled() {
        return stream().filter(answer -> isUsual(answer) && hasLine(answer));
    }

    private Function<GridPoint, Stream<GridPoint>> balls(List<String> alike) {
        return point -> after(alike, point.cover()).map(point::withCover);
    }

    /** What comes after a value in a list; nothing if it is not there. */
    private static <T> Stream<T> after(List<T> values, T value) {
        int place = values.indexOf(value);
        return place < 0 ? Stream.empty() : values.subList(place + 1, values.size()).stream();
    }

    private static BiPredicate<PlayedLine, PlayedLine> nearer(double boards) {
        return (first, second) -> laydown(second) < laydown(first) - boards;
    }

    private static BiPredicate<PlayedLine, PlayedLine> deeper(double boards) {
        return (first, second) -> laydown(second) > laydown(first) + boards;
    }

    private static BiPredicate<PlayedLine, PlayedLine> away(double boards) {
        return (first, second) -> Math.abs(laydown(second) - laydown(first)) > boards;
    }

    private static double laydown(PlayedLine line) {
        return line.line().laydownBoard();
    }

    private static double width(PlayedLine line) {
        return line.window().highBoard() - line.window().lowBoard();
    }

    private static double outside(PlayedLine line) {
        double exit = line.path().exitBoard();
        return Math.max(line.window().lowBoard() - exit, exit - line.window().highBoard());
    }

    private static boolean hasLine(GridAnswer answer) {
        return answer.line().isPresent();
    }

    private static double exit(GridAnswer answer) {
        return answer.line().orElseThrow().path().exitBoard();
    }

    private static boolean isUsual(GridAnswer answer) {
        return answer.point().feet() >= RULE_FROM_FT && answer.point().feet() <= RULE_TO_FT;
    }

    private static boolean followsRule(GridAnswer answer) {
        return Math.abs(exit(answer) - (answer.point().feet() - RULE_LESS_FT)) <= 4;
    }
}
