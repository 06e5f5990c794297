package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.pocket.PinCarry;

/**
 * Looks for the line that strikes most often among those whose average shot meets the pocket: over all launch angles a
 * player could learn, or within reach of the line he plays. The landscape is flat, so lines far apart may be nearly as
 * good; of equally good ones the first looked at is taken, which is the nearest to home. One object serves one thread.
 */
public final class LineSearch {
    /** How far from his natural angle a player could go (assumption). */
    private static final int REACH_STEPS = 12;

    private static final double STEP_RAD = StrictMath.toRadians(0.25);
    private static final double FINEST_STEP_RAD = StrictMath.toRadians(0.06);
    /** Lines of the first look that are looked at more closely. */
    private static final int FINALISTS = 5;

    /** Boards that the feet move without a new line to learn: the trade's small moves (assumption). */
    private static final int[] SMALL_MOVES = {0, -1, 1, -2, 2};

    private static final double TURN_RAD = StrictMath.toRadians(0.25);
    /** Half a degree in all. */
    private static final int MAX_TURNS = 2;

    /** Quarter degrees to either side at which another track is looked for. */
    private static final int TRACK_STEPS = 4;
    /** Share of the played line's strikes below which another track is not told (assumption). */
    private static final double WORTH_TELLING = 0.5;

    private final LineFinder finder;

    /**
     * A search.
     *
     * @param finder finds the lines to the pocket
     */
    public LineSearch(LineFinder finder) {
        this.finder = finder;
    }

    /** A line and how often it strikes. */
    private record Rated(Line line, double strikeShare) {}

    /**
     * The best line at angles up to three degrees from the natural one. Every quarter degree is looked at over few
     * points of the scatter; the best five of these lines, and then neighbours an eighth and a sixteenth of a degree
     * away, are compared over many.
     *
     * @param player who throws
     * @param film the lane
     * @return that line; empty if none of these angles meets the pocket
     */
    public Optional<Line> free(Player player, OilFilm film) {
        List<Line> finalists = rated(everyAngle(player, film), coarse(player, film)).stream()
                .sorted(Comparator.comparingDouble(Rated::strikeShare).reversed())
                .limit(FINALISTS)
                .map(Rated::line)
                .toList();
        return best(rated(finalists, fine(player, film))).map(line -> refined(player, film, line));
    }

    /**
     * The best line within two boards of the feet and half a degree of the line he plays: for each whole board the
     * nearest angle that meets the pocket. Strikes are compared over few points of the scatter, so that a line two
     * strikes in a hundred better may be missed.
     *
     * @param player who throws
     * @param film the lane
     * @param present the line he plays
     * @return that line; empty if none of these meets the pocket
     */
    public Optional<Line> near(Player player, OilFilm film, Line present) {
        return best(rated(nearby(player, film, present), coarse(player, film))).map(Rated::line);
    }

    /** The same, compared over many points: dearer, and fair between balls. */
    Optional<Line> nearFinely(Player player, OilFilm film, Line present) {
        return best(rated(nearby(player, film, present), fine(player, film))).map(Rated::line);
    }

    /**
     * The best line on the other track. Where the film bends balls from both sides toward the pocket, one launch angle
     * has an outer and an inner line to it; the played line lies on one of them. Angles up to a degree from it are
     * looked at.
     *
     * @param player who throws
     * @param film the lane
     * @param played the line he plays
     * @return the best of the others, whichever side it lies on; empty if at these angles there is but one track, or
     *     none of the others strikes half as often as the played line
     */
    public Optional<Line> otherTrack(Player player, OilFilm film, Line played) {
        List<Line> others = new ArrayList<>();
        for (int step = -TRACK_STEPS; step <= TRACK_STEPS; step++) {
            List<Line> lines = finder.linesAtAngle(player, film, played.launchRad() + step * STEP_RAD);
            // Along a track the laydown follows the angle, so that of the lines at one angle the nearest is his own.
            Optional<Line> own = lines.stream().min(nearest(played));
            lines.stream().filter(line -> !line.equals(own.orElseThrow())).forEach(others::add);
        }
        double enough = WORTH_TELLING * coarse(player, film).applyAsDouble(played);
        return best(rated(others, coarse(player, film)))
                .filter(other -> other.strikeShare() >= enough)
                .map(Rated::line);
    }

    private static Comparator<Line> nearest(Line to) {
        return Comparator.comparingDouble(line -> Math.abs(line.laydownBoard() - to.laydownBoard()));
    }

    private ToDoubleFunction<Line> coarse(Player player, OilFilm film) {
        return line -> finder.quality(player, film, line).strikeShare();
    }

    private ToDoubleFunction<Line> fine(Player player, OilFilm film) {
        return line -> finder.fineQuality(player, film, line).strikeShare();
    }

    /** The lines to the pocket at all angles within reach, the natural angle first. */
    private List<Line> everyAngle(Player player, OilFilm film) {
        double naturalRad = player.style().naturalLaunchRad();
        List<Line> lines = new ArrayList<>(finder.linesAtAngle(player, film, naturalRad));
        for (int step = 1; step <= REACH_STEPS; step++) {
            lines.addAll(finder.linesAtAngle(player, film, naturalRad - step * STEP_RAD));
            lines.addAll(finder.linesAtAngle(player, film, naturalRad + step * STEP_RAD));
        }
        return lines;
    }

    private List<Line> nearby(Player player, OilFilm film, Line present) {
        List<Line> lines = new ArrayList<>();
        for (int feet : SMALL_MOVES) {
            double laydown = present.laydownBoard() + feet;
            if (laydown >= LineFinder.OUTERMOST_LAYDOWN && laydown <= LineFinder.INNERMOST_LAYDOWN) {
                turned(player, film, laydown, present.launchRad()).ifPresent(lines::add);
            }
        }
        return lines;
    }

    private static List<Rated> rated(List<Line> lines, ToDoubleFunction<Line> strikeShare) {
        return lines.stream()
                .map(line -> new Rated(line, strikeShare.applyAsDouble(line)))
                .toList();
    }

    private static Optional<Rated> best(List<Rated> rated) {
        return rated.stream().reduce((best, next) -> next.strikeShare() > best.strikeShare() ? next : best);
    }

    private Line refined(Player player, OilFilm film, Rated start) {
        Rated best = start;
        for (double step = STEP_RAD / 2; step > FINEST_STEP_RAD; step /= 2) {
            List<Line> neighbours = new ArrayList<>();
            neighbour(player, film, best.line(), -step).ifPresent(neighbours::add);
            neighbour(player, film, best.line(), step).ifPresent(neighbours::add);
            List<Rated> around = new ArrayList<>(List.of(best));
            around.addAll(rated(neighbours, fine(player, film)));
            best = best(around).orElseThrow();
        }
        return best.line();
    }

    /** Of the lines to the pocket at a neighbouring angle the one with the nearest laydown. */
    private Optional<Line> neighbour(Player player, OilFilm film, Line from, double turnRad) {
        return finder.linesAtAngle(player, film, from.launchRad() + turnRad).stream()
                .min(nearest(from));
    }

    /** The line from a laydown board that meets the pocket at the angle nearest to the present one. */
    private Optional<Line> turned(Player player, OilFilm film, double laydown, double launchRad) {
        DoubleUnaryOperator miss =
                angle -> finder.arrivalBoard(player, film, new Line(laydown, angle)) - PinCarry.POCKET_BOARD;
        double missAsIs = miss.applyAsDouble(launchRad);
        OptionalDouble angle =
                Crossing.first(miss, launchRad, missAsIs, missAsIs > 0 ? TURN_RAD : -TURN_RAD, MAX_TURNS);
        return angle.isPresent() ? Optional.of(new Line(laydown, angle.getAsDouble())) : Optional.empty();
    }
}
