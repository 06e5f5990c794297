package lanetide.cli.lines;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Prints the counts of a grid while the model is worked on. Arguments are names of grids, {@code sample}, {@code full}
 * or {@code worn}, and first, if wanted, a number: so many conditions are then shown for each open row, evenly out of
 * all.
 */
public final class CoachGridMain {
    private final int shown;

    private CoachGridMain(int shown) {
        this.shown = shown;
    }

    /**
     * Runs the grids named.
     *
     * @param args a number of conditions or none, and names of grids
     */
    public static void main(String[] args) {
        boolean isNumber = args.length > 0 && args[0].matches("\\d+");
        CoachGridMain main = new CoachGridMain(isNumber ? Integer.parseInt(args[0]) : 0);
        for (String name : List.of(args).subList(isNumber ? 1 : 0, args.length)) {
            main.grids(name).forEach(main::print);
        }
    }

    private List<CoachGrid> grids(String name) {
        return switch (name) {
            case "sample" -> List.of(CoachGrid.sample());
            case "full" -> List.of(CoachGrid.full());
            case "worn" -> List.of(CoachGrid.worn(8), CoachGrid.worn(24));
            default -> throw new IllegalArgumentException("grid is " + name + "; it must be sample, full or worn");
        };
    }

    private void print(CoachGrid grid) {
        long start = System.nanoTime();
        List<GridAnswer> answers = grid.answers();
        double seconds = (System.nanoTime() - start) / 1e9;
        say("%d lines, %d games, %.1f s", answers.size(), grid.games(), seconds);
        Map<GridPoint, GridAnswer> byPoint =
                answers.stream().collect(Collectors.toMap(GridAnswer::point, answer -> answer));
        for (GridRow row : GridCounts.of(grid, answers)) {
            say("%-102s %-24s %-14s %s", row.answer(), row.now(), row.aimed(), row.standing());
            if (row.isOpen()) {
                List<GridPoint> points = row.offending();
                int step = Math.max(1, points.size() / Math.max(1, shown));
                for (int i = 0; i < Math.min(shown, points.size()); i++) {
                    print(byPoint.get(points.get(i * step)));
                }
            }
        }
        say("%s", MissingLines.markdown(grid, answers));
    }

    private static void print(GridAnswer answer) {
        say("    %s", answer.point());
        answer.line()
                .ifPresent(line -> say(
                        "        laydown %.2f, arrows %.2f, exit %.2f, window %.2f to %.2f, room %.2f and %.2f, strikes %.3f, pocket %.3f",
                        line.line().laydownBoard(),
                        line.line().arrowsBoard(),
                        line.path().exitBoard(),
                        line.window().lowBoard(),
                        line.window().highBoard(),
                        line.missRoom().outsideBoards(),
                        line.missRoom().insideBoards(),
                        line.quality().strikeShare(),
                        line.quality().pocketShare()));
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }
}
