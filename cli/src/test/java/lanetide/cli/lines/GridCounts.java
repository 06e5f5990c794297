package lanetide.cli.lines;

import static lanetide.cli.lines.CoachGrid.REACTIVE;
import static lanetide.cli.lines.CoachGrid.SMOOTH;

import java.util.List;
import java.util.Locale;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import lanetide.cli.lines.GridRow.Aim;
import lanetide.oilflow.line.PlayedLine;

/** What is counted in a grid: answers that a coach would not sign, and some that he wants to see. */
final class GridCounts {
    private static final double RULE_LESS_FT = 31;
    private static final double RULE_TO_RATIO = 5;

    private final CoachGrid grid;
    private final GridTally tally;

    private GridCounts(CoachGrid grid, List<GridAnswer> answers) {
        this.grid = grid;
        this.tally = new GridTally(answers);
    }

    /** The rows of a grid's table. Only fresh lanes have aims of their own for exits and steps of the ratio. */
    static List<GridRow> of(CoachGrid grid, List<GridAnswer> answers) {
        GridCounts counts = new GridCounts(grid, answers);
        counts.signs();
        counts.windows();
        counts.exits();
        if (grid.isFresh()) {
            counts.lengthRule();
            counts.stepsOfTheRatio();
            counts.house();
            counts.others();
        }
        return counts.tally.rows();
    }

    private void signs() {
        tally.pairs(
                "of two reactive balls the stronger nearer the gutter, by over half a board",
                Aim.NONE,
                point -> after(REACTIVE, point.cover()).map(point::withCover),
                isNearerBy(0.5));
        tally.pairs(
                "a urethane ball nearer the gutter than a plastic one, by over half a board",
                Aim.NONE,
                point -> after(SMOOTH, point.cover()).map(point::withCover),
                isNearerBy(0.5));
        tally.pairs(
                "of two volumes the larger deeper, by over half a board",
                Aim.NONE,
                point -> after(grid.volumesMl(), point.volumeMl()).map(point::withVolume),
                (less, more) -> laydown(more) > laydown(less) + 0.5);
        tally.pairs(
                "of two surfaces the one of more friction nearer the gutter, by over half a board",
                Aim.NONE,
                point -> after(grid.surfaces(), point.surface()).map(point::withSurface),
                isNearerBy(0.5));
        pairsByBall(
                "of neighbouring styles the one of more revs nearer the gutter, by over a board",
                grid.isFresh() ? Aim.HALF_A_PERCENT : Aim.TWO_PERCENT,
                point -> after(grid.styles(), point.style()).limit(1).map(point::withStyle),
                isNearerBy(1));
    }

    /** Counts pairs that share a ball: all, those with balls that flare, and those with balls that hardly do. */
    private void pairsByBall(
            String answer,
            Aim aim,
            Function<GridPoint, Stream<GridPoint>> partners,
            BiPredicate<PlayedLine, PlayedLine> told) {
        tally.pairs(answer, aim, partners, told);
        if (!grid.covers().equals(REACTIVE)) {
            tally.pairs(
                    answer + ", reactive balls",
                    aim,
                    point -> point.isReactive() ? partners.apply(point) : Stream.empty(),
                    told);
            tally.pairs(
                    answer + ", plastic and urethane balls",
                    aim,
                    point -> point.isReactive() ? Stream.empty() : partners.apply(point),
                    told);
        }
    }

    private void windows() {
        tally.lines("window of no width (under 0.05 board)", Aim.NONE, line -> width(line) < 0.05);
        tally.lines("exit outside its own window by over half a board", Aim.NONE, line -> outside(line) > 0.5);
        tally.lines("exit outside its own window by over 0.05 board", Aim.NONE, line -> outside(line) > 0.05);
        tally.lines(
                "more strikes than pocket hits",
                Aim.NONE,
                line -> line.quality().strikeShare() > line.quality().pocketShare());
    }

    private void exits() {
        tally.lines(
                "exit on board 3 or less, from 36 ft",
                grid.isFresh() ? Aim.HALF_A_PERCENT : Aim.NO_AIM,
                point -> point.feet() >= 36,
                (point, line) -> line.path().exitBoard() <= 3);
        tally.missing("no line, 35 to 45 ft", grid.isFresh() ? Aim.ONE_PERCENT : Aim.NO_AIM, GridPoint::isUsualLength);
        tally.missing("no line, shorter and longer", Aim.NO_AIM, point -> !point.isUsualLength());
    }

    private void lengthRule() {
        String rule = "exit within four boards of the length rule, 35 to 45 ft, ";
        Predicate<GridPoint> ruled = point -> point.isUsualLength() && point.ratio() <= RULE_TO_RATIO;
        ruled(rule + "up to 5:1", Aim.MOST, ruled);
        ruled(rule + "up to 5:1, reactive balls", Aim.MOST, ruled.and(GridPoint::isReactive));
        ruled(rule + "up to 5:1, plastic and urethane balls", Aim.MOST, ruled.and(point -> !point.isReactive()));
        for (double ratio : grid.ratios()) {
            Aim aim = ratio <= RULE_TO_RATIO ? Aim.MOST : Aim.NO_AIM;
            String at = String.format(Locale.ROOT, "%sat %.1f:1", rule, ratio);
            Predicate<GridPoint> here = point -> point.isUsualLength() && point.ratio() == ratio;
            ruled(at, aim, here);
            ruled(at + ", reactive balls", aim, here.and(GridPoint::isReactive));
        }
    }

    private void ruled(String answer, Aim aim, Predicate<GridPoint> asked) {
        tally.lines(
                answer,
                aim,
                asked,
                (point, line) -> Math.abs(line.path().exitBoard() - (point.feet() - RULE_LESS_FT)) <= 4);
    }

    private void stepsOfTheRatio() {
        Function<GridPoint, Stream<GridPoint>> next =
                point -> after(grid.ratios(), point.ratio()).limit(1).map(point::withRatio);
        pairsByBall("laydown over 8 boards away at the next ratio", Aim.NONE, next, isAwayBy(8));
        pairsByBall("laydown over 5 boards away at the next ratio", Aim.HALF_A_PERCENT, next, isAwayBy(5));
    }

    private void house() {
        Function<GridPoint, Stream<GridPoint>> house =
                point -> point.ratio() == 1.5 ? Stream.of(point.withRatio(8)) : Stream.empty();
        pairsByBall(
                "room to miss wider at 8:1 than at 1.5:1",
                Aim.NEARLY_ALL,
                house,
                (hard, easy) -> easy.missRoom().totalBoards() > hard.missRoom().totalBoards());
        pairsByBall(
                "window wider at 8:1 than at 1.5:1", Aim.NEARLY_ALL, house, (hard, easy) -> width(easy) > width(hard));
    }

    private void others() {
        tally.apart("`pattern` tells another exit or window", GridAnswer::patternApart);
        tally.apart("a left-hander is told another line", GridAnswer::leftApart);
        tally.apart("an elite or a casual bowler is told another line", GridAnswer::levelApart);
    }

    /** What comes after a value in a list; nothing if it is not there. */
    private static <T> Stream<T> after(List<T> values, T value) {
        int place = values.indexOf(value);
        return place < 0 ? Stream.empty() : values.subList(place + 1, values.size()).stream();
    }

    private static BiPredicate<PlayedLine, PlayedLine> isNearerBy(double boards) {
        return (first, second) -> laydown(second) < laydown(first) - boards;
    }

    private static BiPredicate<PlayedLine, PlayedLine> isAwayBy(double boards) {
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
}
