package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.PlayedLine;

/**
 * How a page names the kinds of bowlers: by style alone, if both hands play the same numbers everywhere and each style
 * has one ball.
 */
final class KindLabels {
    private final List<StartLine> lines;
    private final boolean handsDiffer;
    private final boolean ballsDiffer;

    KindLabels(List<StartLine> lines) {
        this.lines = lines;
        this.handsDiffer = differ(lines);
        this.ballsDiffer =
                lines.stream().map(KindLabels::withoutBall).distinct().count()
                        < lines.stream().map(KindLabels::key).distinct().count();
    }

    private static boolean differ(List<StartLine> lines) {
        Map<String, Optional<PlayedLine>> first = new LinkedHashMap<>();
        for (StartLine line : lines) {
            Optional<PlayedLine> known = first.putIfAbsent(key(line), line.line());
            if (known != null && !known.equals(line.line())) {
                return true;
            }
        }
        return false;
    }

    private static String withoutBall(StartLine line) {
        return line.surface().id() + "/" + line.kind().style().id() + "/" + line.basis();
    }

    private static String key(StartLine line) {
        return withoutBall(line) + "/" + line.kind().cover().id();
    }

    String of(Kind kind) {
        return ofBowler(kind) + (ballsDiffer ? ", " + kind.cover().id().substring(sameStart()) : "");
    }

    /** How many characters all balls' names begin with, to the end of a word: they need not stand in every row. */
    private int sameStart() {
        String same = lines.stream()
                .map(line -> line.kind().cover().id())
                .reduce(KindLabels::sameStart)
                .orElse("");
        return same.lastIndexOf(' ') + 1;
    }

    private static String sameStart(String one, String other) {
        int mismatch = Arrays.mismatch(one.toCharArray(), other.toCharArray());
        return mismatch < 0 ? one : one.substring(0, mismatch);
    }

    /** The name without the ball. */
    String ofBowler(Kind kind) {
        return kind.style().id() + (handsDiffer ? kind.hand() == Hand.RIGHT ? " (right)" : " (left)" : "");
    }

    /** The balls, if there are several for one style. */
    List<String> balls() {
        return ballsDiffer
                ? lines.stream()
                        .map(line -> line.kind().cover().id())
                        .distinct()
                        .toList()
                : List.of();
    }

    /** Whether somebody throws a ball that hardly flares. */
    boolean hasSmoothBalls() {
        return lines.stream().anyMatch(line -> !line.kind().cover().flares());
    }

    List<String> surfaces() {
        return lines.stream().map(line -> line.surface().id()).distinct().toList();
    }

    /** The lines that a page shows: of hands that are alike, one. */
    List<StartLine> shown(String surface, LineBasis basis) {
        Map<String, StartLine> shown = new LinkedHashMap<>();
        lines.stream()
                .filter(line -> line.surface().id().equals(surface) && line.basis() == basis)
                .forEach(line -> shown.putIfAbsent(of(line.kind()), line));
        return new ArrayList<>(shown.values());
    }

    /** The natural line of who plays another. */
    Optional<PlayedLine> natural(StartLine other) {
        return natural(other.surface().id(), other.kind());
    }

    Optional<PlayedLine> natural(String surface, Kind kind) {
        return lines.stream()
                .filter(line -> line.surface().id().equals(surface)
                        && line.kind().equals(kind)
                        && line.basis() == LineBasis.NATURAL)
                .findFirst()
                .flatMap(StartLine::line);
    }
}
