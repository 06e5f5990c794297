package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.pocket.PinCarry;

/**
 * Looks for the line that strikes most often among those whose average shot meets the pocket: over all launch angles a player
 * could learn, or within reach of the line he plays. The landscape is flat, so lines far apart may be nearly as good; of
 * equally good ones the first looked at is taken, which is the nearest to home. One object serves one thread.
 */
public final class LineSearch {
    /** How far from his natural angle a player could go (assumption). */
    private static final int REACH_STEPS = 12;

    private static final double STEP_RAD = StrictMath.toRadians(0.25);
    private static final double FINEST_STEP_RAD = StrictMath.toRadians(0.03);

    /** Boards that the feet move without a new line to learn: the trade's small moves (assumption). */
    private static final int[] SMALL_MOVES = {0, -1, 1, -2, 2};

    private static final double TURN_RAD = StrictMath.toRadians(0.25);
    /** Half a degree in all. */
    private static final int MOST_TURNS = 2;

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
     * The best line at angles up to three degrees from the natural one: every quarter degree is looked at, then the step is
     * halved around the best. Strikes are compared over 32 points of the scatter, so a better line may be missed by up to one
     * strike in a hundred.
     *
     * @param player who throws
     * @param film the lane
     * @return that line; empty if none of these angles meets the pocket
     */
    public Optional<Line> free(Player player, OilFilm film) {
        List<Rated> rated = new ArrayList<>();
        rate(player, film, outward(player, film, 0), rated);
        for (int step = 1; step <= REACH_STEPS; step++) {
            rate(player, film, outward(player, film, -step), rated);
            rate(player, film, outward(player, film, step), rated);
        }
        return best(rated).map(coarse -> refined(player, film, coarse));
    }

    /**
     * The best line within two boards of the feet and half a degree of the line he plays: for each whole board the nearest
     * angle that meets the pocket.
     *
     * @param player who throws
     * @param film the lane
     * @param present the line he plays
     * @return that line; empty if none of these meets the pocket
     */
    public Optional<Line> near(Player player, OilFilm film, Line present) {
        List<Rated> rated = new ArrayList<>();
        for (int feet : SMALL_MOVES) {
            double laydown = present.laydownBoard() + feet;
            if (laydown >= LineFinder.OUTERMOST_LAYDOWN && laydown <= LineFinder.INNERMOST_LAYDOWN) {
                turned(player, film, laydown, present.launchRad())
                        .ifPresent(line -> rate(player, film, List.of(line), rated));
            }
        }
        return best(rated).map(Rated::line);
    }

    private List<Line> outward(Player player, OilFilm film, int steps) {
        return finder.linesAtAngle(player, film, player.style().naturalLaunchRad() + steps * STEP_RAD);
    }

    private void rate(Player player, OilFilm film, List<Line> lines, List<Rated> rated) {
        for (Line line : lines) {
            rated.add(new Rated(line, finder.quality(player, film, line).strikeShare()));
        }
    }

    private static Optional<Rated> best(List<Rated> rated) {
        return rated.stream().reduce((best, next) -> next.strikeShare() > best.strikeShare() ? next : best);
    }

    private Line refined(Player player, OilFilm film, Rated coarse) {
        Rated best = coarse;
        for (double step = STEP_RAD / 2; step > FINEST_STEP_RAD; step /= 2) {
            List<Rated> around = new ArrayList<>(List.of(best));
            finder.neighbour(player, film, best.line(), -step)
                    .ifPresent(line -> rate(player, film, List.of(line), around));
            finder.neighbour(player, film, best.line(), step)
                    .ifPresent(line -> rate(player, film, List.of(line), around));
            best = best(around).orElseThrow();
        }
        return best.line();
    }

    /** The line from a laydown board that meets the pocket at the angle nearest to the present one. */
    private Optional<Line> turned(Player player, OilFilm film, double laydown, double launchRad) {
        DoubleUnaryOperator miss =
                angle -> finder.arrivalBoard(player, film, new Line(laydown, angle)) - PinCarry.POCKET_BOARD;
        boolean high = miss.applyAsDouble(launchRad) > 0;
        OptionalDouble angle = Crossing.first(miss, launchRad, high ? TURN_RAD : -TURN_RAD, MOST_TURNS);
        return angle.isPresent() ? Optional.of(new Line(laydown, angle.getAsDouble())) : Optional.empty();
    }
}
