package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.motion.BallPath;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;

/**
 * Finds lines that meet the pocket and says how good they are.
 *
 * <p>The landscape of lines is a long flat valley: many pairs of laydown and launch angle are within a few per cent of
 * the best. Which one a bowler plays is decided by habit and by moves, so the finder starts from the style's natural
 * launch angle and moves two boards with the feet to one at the arrows (common practice, no source). One object serves
 * one thread.
 */
public final class LineFinder {
    /** A line belongs to the window if it is at least this share as good as the best. */
    public static final double GOOD_SHARE = 0.9;

    static final double OUTERMOST_LAYDOWN = 2;
    static final double INNERMOST_LAYDOWN = 38;
    /** Boards from one trial to the next. */
    static final double SCAN_BOARDS = 2;

    private static final double[] NATURAL_ANGLES_DEG = {0, -0.5, 0.5, -1, 1, -1.5, 1.5, -2, 2};
    /** A bowler leaves his natural angle for one that is twice as good (assumption). */
    private static final double WORKABLE_SHARE = 0.5;

    private final RowMarch march;
    private final LineScatter scatter;

    /**
     * A finder.
     *
     * @param march rolls the balls
     * @param carry says what the pins do
     */
    public LineFinder(RowMarch march, PinCarry carry) {
        this.march = march;
        this.scatter = new LineScatter(march.grid(), carry);
    }

    /**
     * Where an average shot on a line meets the pins.
     *
     * @param player who throws
     * @param film the lane
     * @param line the line
     * @return board from the gutter on the delivery side
     */
    public double arrivalBoard(Player player, OilFilm film, Line line) {
        roll(player, film, line);
        return march.arrivalBoard();
    }

    /**
     * Where an average shot on a line leaves the pattern.
     *
     * @param player who throws
     * @param film the lane
     * @param line the line
     * @param patternEndM where the pattern ends (m)
     * @return board from the gutter on the delivery side
     */
    public double exitBoard(Player player, OilFilm film, Line line, double patternEndM) {
        roll(player, film, line);
        return LaneGeometry.metresToBoard(march.positionM(patternEndM));
    }

    /**
     * The whole way of an average shot on a line.
     *
     * @param player who throws
     * @param film the lane
     * @param line the line
     * @param patternEndM where the pattern ends (m)
     * @return its path
     */
    public BallPath path(Player player, OilFilm film, Line line, double patternEndM) {
        roll(player, film, line);
        return march.path(patternEndM);
    }

    /**
     * The line at one launch angle that meets the pocket. Where several do, a bowler keeps away from the gutter: it is
     * the innermost of those at least {@link #GOOD_SHARE} times as good as the best (assumption).
     *
     * @param player who throws
     * @param film the lane
     * @param launchRad launch angle (rad)
     * @return that line; empty if no average shot meets board 17.5
     */
    public Optional<Line> atAngle(Player player, OilFilm film, double launchRad) {
        List<Line> lines = linesAtAngle(player, film, launchRad);
        if (lines.size() < 2) {
            return lines.stream().findFirst();
        }
        double[] shares = lines.stream()
                .mapToDouble(line -> quality(player, film, line).strikeShare())
                .toArray();
        double best = Arrays.stream(shares).max().orElseThrow();
        int innermost = lines.size() - 1;
        while (shares[innermost] < GOOD_SHARE * best) {
            innermost--;
        }
        return Optional.of(lines.get(innermost));
    }

    /** All lines at an angle whose average shot meets the pocket, from the outermost. */
    List<Line> linesAtAngle(Player player, OilFilm film, double launchRad) {
        DoubleUnaryOperator miss = missByLaydown(player, film, launchRad);
        List<Line> lines = new ArrayList<>();
        double low = OUTERMOST_LAYDOWN;
        double missLow = miss.applyAsDouble(low);
        for (double high = low + SCAN_BOARDS; high <= INNERMOST_LAYDOWN; high += SCAN_BOARDS) {
            double missHigh = miss.applyAsDouble(high);
            Crossing.between(miss, low, missLow, high, missHigh)
                    .ifPresent(laydown -> lines.add(new Line(laydown, launchRad)));
            low = high;
            missLow = missHigh;
        }
        return lines;
    }

    /**
     * The line a bowler starts with on the lane he expects. He plays his natural angle; only if its line is not half as
     * good as the best at angles up to two degrees from his own does he take the nearest angle that is.
     *
     * @param player who throws
     * @param film the lane he expects
     * @return the line; empty if none of these angles meets the pocket
     */
    public Optional<Line> natural(Player player, OilFilm film) {
        List<Line> lines = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        double best = 0;
        for (double offDeg : NATURAL_ANGLES_DEG) {
            double launchRad = player.style().naturalLaunchRad() + StrictMath.toRadians(offDeg);
            Optional<Line> line = atAngle(player, film, launchRad);
            if (line.isPresent()) {
                double share = quality(player, film, line.get()).strikeShare();
                lines.add(line.get());
                shares.add(share);
                best = Math.max(best, share);
            }
        }
        for (int i = 0; i < lines.size(); i++) {
            if (shares.get(i) >= WORKABLE_SHARE * best) {
                return Optional.of(lines.get(i));
            }
        }
        return Optional.empty();
    }

    /**
     * Moves along "two with the feet, one at the arrows" until an average shot meets the pocket.
     *
     * @param player who throws
     * @param film the lane
     * @param from the line to move from
     * @return the nearest such line; empty if there is none on the lane
     */
    public Optional<Line> moveToPocket(Player player, OilFilm film, Line from) {
        DoubleUnaryOperator miss = feet -> arrivalBoard(player, film, from.moved(feet)) - PinCarry.POCKET_BOARD;
        // Moving the feet away from the gutter brings the ball back toward it: a ball that hits high asks for a move
        // inward.
        boolean inward = miss.applyAsDouble(0) > 0;
        double room = inward ? INNERMOST_LAYDOWN - from.laydownBoard() : from.laydownBoard() - OUTERMOST_LAYDOWN;
        OptionalDouble feet = Crossing.first(miss, 0, inward ? 1 : -1, (int) room);
        return feet.isPresent() ? Optional.of(from.moved(feet.getAsDouble())) : Optional.empty();
    }

    /**
     * How good a line is under the player's scatter.
     *
     * @param player who throws
     * @param film the lane
     * @param line the line
     * @return shares of strikes and of pocket hits
     */
    public LineQuality quality(Player player, OilFilm film, Line line) {
        return scatter.quality(player, film, line, LineScatter.COARSE);
    }

    /**
     * The same over eight times as many points of the scatter, for lines that are told to people.
     *
     * @param player who throws
     * @param film the lane
     * @param line the line
     * @return shares of strikes and of pocket hits
     */
    public LineQuality fineQuality(Player player, OilFilm film, Line line) {
        return scatter.quality(player, film, line, LineScatter.FINE);
    }

    /**
     * The window of exit boards: along the valley of lines that meet the pocket, the stretch around the bowler's own
     * angle on which lines are at least {@link #GOOD_SHARE} times as good as the best within 0.9 degrees.
     *
     * @param player who throws
     * @param film the lane
     * @param near a line he has been playing; he moves from it to the pocket first
     * @param patternEndM where the pattern ends (m)
     * @return the window; empty if moving does not bring his average shot to the pocket
     */
    public Optional<ExitWindow> window(Player player, OilFilm film, Line near, double patternEndM) {
        return moveToPocket(player, film, near).map(played -> windowAround(player, film, played, patternEndM));
    }

    /** The same around a line that meets the pocket. */
    ExitWindow windowAround(Player player, OilFilm film, Line played, double patternEndM) {
        return new ValleyFinder(this, player, film).around(played, patternEndM).window(GOOD_SHARE);
    }

    /** How far the average shots at an angle come in beyond the pocket (boards), by where they are laid down. */
    DoubleUnaryOperator missByLaydown(Player player, OilFilm film, double launchRad) {
        return laydown -> arrivalBoard(player, film, new Line(laydown, launchRad)) - PinCarry.POCKET_BOARD;
    }

    private void roll(Player player, OilFilm film, Line line) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        double radiusM = player.contact().ball().radiusM();
        Delivery delivery = Delivery.of(player.style().release(), radiusM, laydownM, line.launchRad());
        march.read(delivery, player.hand(), player.contact(), film);
    }
}
