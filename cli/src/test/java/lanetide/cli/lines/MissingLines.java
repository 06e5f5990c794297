package lanetide.cli.lines;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Names the conditions of a grid that ought to have a line and have none. */
final class MissingLines {
    private final CoachGrid grid;
    private final List<GridPoint> missing;

    private MissingLines(CoachGrid grid, List<GridPoint> missing) {
        this.grid = grid;
        this.missing = missing;
    }

    /** A table with one row for each style, ball and surface. */
    static String markdown(CoachGrid grid, List<GridAnswer> answers) {
        List<GridPoint> missing = answers.stream()
                .filter(answer -> answer.line().isEmpty())
                .map(GridAnswer::point)
                .filter(GridPoint::isUsualLength)
                .toList();
        return new MissingLines(grid, missing).table();
    }

    private String table() {
        Map<String, List<GridPoint>> byKind = missing.stream()
                .collect(Collectors.groupingBy(
                        point -> point.style() + " | " + point.cover() + " | " + point.surface(),
                        TreeMap::new,
                        Collectors.toList()));
        StringBuilder table = new StringBuilder("| Style | Ball | Surface | No line at |\n|---|---|---|---|\n");
        byKind.forEach((kind, points) -> table.append("| " + kind + " | "
                + points.stream().map(this::pattern).distinct().collect(Collectors.joining("; ")) + " |\n"));
        return table + (missing.isEmpty() ? "| none | | | |\n" : "");
    }

    /** A pattern, with its volumes unless none of them has a line. */
    private String pattern(GridPoint point) {
        List<Integer> volumesMl = grid.volumesMl().stream()
                .filter(volumeMl -> missing.contains(point.withVolume(volumeMl)))
                .toList();
        String pattern = point.feet() + " ft " + ratio(point.ratio());
        return volumesMl.equals(grid.volumesMl()) ? pattern : pattern + " " + volumes(volumesMl);
    }

    private static String ratio(double ratio) {
        return (ratio == Math.rint(ratio) ? String.valueOf((int) ratio) : String.valueOf(ratio)) + ":1";
    }

    private static String volumes(List<Integer> volumesMl) {
        return volumesMl.stream().map(String::valueOf).collect(Collectors.joining(" and ")) + " mL";
    }
}
