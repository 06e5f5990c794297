package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;

/** Follows the valley of lines that meet the pocket from one launch angle to the next, for one player on one lane. */
final class ValleyFinder {
    private static final int STEPS = 3;
    private static final double STEP_RAD = StrictMath.toRadians(0.3);
    private static final int SCANS_TO_NEIGHBOUR = 4;

    /**
     * How far the laydown moves for each change of angle along the valley: sixty feet of angle, of which a board of
     * laydown takes back about 0.8. It only says where a search starts.
     */
    private static final double BOARDS_PER_RAD = LaneGeometry.HEAD_PIN_M / LaneGeometry.BOARD_M / 0.8;

    private final LineFinder finder;
    private final Player player;
    private final OilFilm film;

    ValleyFinder(LineFinder finder, Player player, OilFilm film) {
        this.finder = finder;
        this.player = player;
        this.film = film;
    }

    /** The lines to the pocket over angles around a played one, as far as there are any. */
    Valley around(Line played, double patternEndM) {
        List<Line> lines = new ArrayList<>();
        follow(played, -STEP_RAD, lines);
        Collections.reverse(lines);
        lines.add(played);
        follow(played, STEP_RAD, lines);
        List<Valley.ValleyLine> valley = lines.stream()
                .map(line -> new Valley.ValleyLine(
                        line,
                        finder.quality(player, film, line).strikeShare(),
                        finder.exitBoard(player, film, line, patternEndM)))
                .toList();
        return new Valley(valley, played);
    }

    private void follow(Line played, double turnRad, List<Line> found) {
        Optional<Line> line = neighbour(played, turnRad);
        for (int i = 1; i <= STEPS && line.isPresent(); i++) {
            found.add(line.get());
            line = i < STEPS ? neighbour(line.get(), turnRad) : Optional.empty();
        }
    }

    /** The line to the pocket at a neighbouring angle, near where the valley leads. */
    Optional<Line> neighbour(Line from, double turnRad) {
        double launchRad = from.launchRad() + turnRad;
        DoubleUnaryOperator miss = finder.missByLaydown(player, film, launchRad);
        double guess = from.laydownBoard() + turnRad * BOARDS_PER_RAD;
        double start = Math.max(LineFinder.OUTERMOST_LAYDOWN, Math.min(LineFinder.INNERMOST_LAYDOWN, guess));
        boolean outward = miss.applyAsDouble(start) > 0;
        double room = outward ? start - LineFinder.OUTERMOST_LAYDOWN : LineFinder.INNERMOST_LAYDOWN - start;
        int steps = Math.min(SCANS_TO_NEIGHBOUR, (int) (room / LineFinder.SCAN_BOARDS));
        OptionalDouble laydown =
                Crossing.first(miss, start, outward ? -LineFinder.SCAN_BOARDS : LineFinder.SCAN_BOARDS, steps);
        return laydown.isPresent() ? Optional.of(new Line(laydown.getAsDouble(), launchRad)) : Optional.empty();
    }
}
