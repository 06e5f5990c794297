package lanetide.cli.lines;

import java.util.List;

/** Prints the counts of a grid while the model is worked on: {@code sample}, {@code full} or {@code worn}. */
public final class CoachGridMain {
    private CoachGridMain() {}

    /**
     * Runs the grids named.
     *
     * @param args names of grids
     */
    public static void main(String[] args) {
        for (String name : args) {
            switch (name) {
                case "sample" -> print(CoachGrid.sample());
                case "full" -> print(CoachGrid.full());
                case "worn" -> {
                    print(CoachGrid.worn(8));
                    print(CoachGrid.worn(24));
                }
                default -> throw new IllegalArgumentException("grid is " + name + "; it must be sample, full or worn");
            }
        }
    }

    private static void print(CoachGrid grid) {
        long start = System.nanoTime();
        List<GridAnswer> answers = grid.answers();
        System.out.printf(
                "%d lines, %d games, %.1f s%n", answers.size(), grid.games(), (System.nanoTime() - start) / 1e9);
        for (GridRow row : GridCounts.of(grid, answers)) {
            System.out.printf("%-102s %-24s %-14s %s%n", row.answer(), row.now(), row.aimed(), row.standing());
        }
        System.out.println(MissingLines.markdown(grid, answers));
    }
}
