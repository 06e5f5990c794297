package lanetide.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.lines.Kind;
import lanetide.cli.lines.StartLine;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Basis;
import lanetide.oilflow.line.PlayedLine;

/** How a page names the kinds of bowlers: by style alone, if both hands play the same numbers everywhere. */
final class KindLabels {
    private final List<StartLine> lines;
    private final boolean handsDiffer;

    KindLabels(List<StartLine> lines) {
        this.lines = lines;
        this.handsDiffer = differ(lines);
    }

    private static boolean differ(List<StartLine> lines) {
        Map<String, Optional<PlayedLine>> first = new LinkedHashMap<>();
        for (StartLine line : lines) {
            String key = line.surface().id() + "/" + line.kind().style().id() + "/" + line.basis();
            Optional<PlayedLine> known = first.putIfAbsent(key, line.line());
            if (known != null && !known.equals(line.line())) {
                return true;
            }
        }
        return false;
    }

    String of(Kind kind) {
        return kind.style().id() + (handsDiffer ? kind.hand() == Hand.RIGHT ? " (right)" : " (left)" : "");
    }

    List<String> surfaces() {
        return lines.stream().map(line -> line.surface().id()).distinct().toList();
    }

    /** The lines that a page shows: of hands that are alike, one. */
    List<StartLine> shown(String surface, Basis basis) {
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
                        && line.basis() == Basis.NATURAL)
                .findFirst()
                .flatMap(StartLine::line);
    }
}
