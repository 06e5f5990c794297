package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.motion.BallPath;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;

/**
 * Finds lines that meet the pocket and says how good they are.
 *
 * <p>The landscape of lines is a long flat valley: many pairs of laydown and launch angle are within a few per cent of
 * the best. Which one a bowler plays is decided by habit ({@link HomeLines}) and by moves of two boards with the feet
 * to one at the arrows (common practice, no source). One object serves one thread.
 */
public final class LineFinder {
    static final double OUTERMOST_LAYDOWN = 2;
    static final double INNERMOST_LAYDOWN = 38;
    /** Boards from one trial to the next. */
    static final double SCAN_BOARDS = 2;

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

    /** The grid of the films it reads. */
    LaneGrid grid() {
        return march.grid();
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
     * Moves along "two with the feet, one at the arrows" until an average shot meets the pocket.
     *
     * @param player who throws
     * @param film the lane
     * @param from the line to move from
     * @return the nearest such line; empty if there is none on the lane
     */
    public Optional<Line> moveToPocket(Player player, OilFilm film, Line from) {
        return toPocket(player, film, from::moved, roomInside(from.laydownBoard()), roomOutside(from.laydownBoard()));
    }

    /**
     * Moves the feet alone until an average shot meets the pocket; the board at the arrows stays.
     *
     * @param player who throws
     * @param film the lane
     * @param from the line to move from
     * @return the nearest such line; empty if there is none on the lane
     */
    public Optional<Line> moveFeetToPocket(Player player, OilFilm film, Line from) {
        DoubleFunction<Line> moved = feet -> Line.through(from.laydownBoard() + feet, from.arrowsBoard());
        return toPocket(player, film, moved, roomInside(from.laydownBoard()), roomOutside(from.laydownBoard()));
    }

    /**
     * Moves the target at the arrows alone until an average shot meets the pocket; the feet stay.
     *
     * @param player who throws
     * @param film the lane
     * @param from the line to move from
     * @return the nearest such line; empty if there is none on the lane
     */
    public Optional<Line> aimToPocket(Player player, OilFilm film, Line from) {
        DoubleFunction<Line> moved = outward -> Line.through(from.laydownBoard(), from.arrowsBoard() - outward);
        return toPocket(player, film, moved, roomOutside(from.arrowsBoard()), roomInside(from.arrowsBoard()));
    }

    private static int roomInside(double board) {
        return (int) (INNERMOST_LAYDOWN - board);
    }

    private static int roomOutside(double board) {
        return (int) (board - OUTERMOST_LAYDOWN);
    }

    /**
     * Moves by boards, of which more than none bring the ball back toward the gutter, as feet away from the gutter do
     * and a target nearer to it: a ball that hits high asks for them.
     */
    private Optional<Line> toPocket(Player player, OilFilm film, DoubleFunction<Line> moved, int most, int mostBack) {
        DoubleUnaryOperator miss = boards -> arrivalBoard(player, film, moved.apply(boards)) - PinCarry.POCKET_BOARD;
        double missAsIs = miss.applyAsDouble(0);
        boolean isHigh = missAsIs > 0;
        OptionalDouble boards = Crossing.first(miss, 0, missAsIs, isHigh ? 1 : -1, isHigh ? most : mostBack);
        return boards.isPresent() ? Optional.of(moved.apply(boards.getAsDouble())) : Optional.empty();
    }

    /**
     * The line nearest to the pocket among the moves of two and one from a line, by whole boards.
     *
     * @param player who throws
     * @param film the lane
     * @param from the line to move from
     * @return the first of those with the smallest miss, from the outermost
     */
    NearestLine nearestMove(Player player, OilFilm film, Line from) {
        int outward = (int) (from.laydownBoard() - OUTERMOST_LAYDOWN);
        int inward = (int) (INNERMOST_LAYDOWN - from.laydownBoard());
        return nearest(
                player,
                film,
                IntStream.rangeClosed(-outward, inward).mapToObj(from::moved).toList());
    }

    /** The same among all lines at an angle, by whole boards. */
    NearestLine nearestAtAngle(Player player, OilFilm film, double launchRad) {
        return nearest(
                player,
                film,
                IntStream.rangeClosed((int) OUTERMOST_LAYDOWN, (int) INNERMOST_LAYDOWN)
                        .mapToObj(laydown -> new Line(laydown, launchRad))
                        .toList());
    }

    private NearestLine nearest(Player player, OilFilm film, List<Line> lines) {
        List<Double> misses = lines.stream()
                .map(line -> arrivalBoard(player, film, line) - PinCarry.POCKET_BOARD)
                .toList();
        int nearest = IntStream.range(0, lines.size())
                .reduce((best, next) -> Math.abs(misses.get(next)) < Math.abs(misses.get(best)) ? next : best)
                .orElseThrow();
        boolean bothSides =
                misses.stream().anyMatch(miss -> miss > 0) && misses.stream().anyMatch(miss -> miss <= 0);
        return new NearestLine(lines.get(nearest), misses.get(nearest), bothSides);
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
     * The same over four times as many points of the scatter, for a choice between lines near each other.
     *
     * @param player who throws
     * @param film the lane
     * @param line the line
     * @return shares of strikes and of pocket hits
     */
    public LineQuality choiceQuality(Player player, OilFilm film, Line line) {
        return scatter.quality(player, film, line, LineScatter.CHOICE);
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
     * The share of strikes that {@link #fineQuality} tells, if it is more than a least one; quicker where it is not.
     */
    OptionalDouble strikeShareAbove(double least, Player player, OilFilm film, Line line) {
        return scatter.strikeShareAbove(least, player, film, line);
    }

    /**
     * The window of exit boards of the line that a move from the last one gives.
     *
     * @param player who throws
     * @param film the lane
     * @param near a line he has been playing; he moves from it to the pocket first
     * @param patternEndM where the pattern ends (m)
     * @return the window; empty if moving does not bring his average shot to the pocket
     */
    public Optional<ExitWindow> movedWindow(Player player, OilFilm film, Line near, double patternEndM) {
        return moveToPocket(player, film, near).map(played -> windowOf(player, film, played, patternEndM));
    }

    /**
     * The window of exit boards of a line.
     *
     * @param player who throws
     * @param film the lane
     * @param played the line; its average shot meets the pocket
     * @param patternEndM where the pattern ends (m)
     * @return the window
     */
    public ExitWindow windowOf(Player player, OilFilm film, Line played, double patternEndM) {
        return window(player, film, played, missRoom(player, film, played), patternEndM);
    }

    /** The window of a line by its room to miss. */
    ExitWindow window(Player player, OilFilm film, Line played, MissRoom room, double patternEndM) {
        double outerBoard = exitBoard(player, film, played.missed(-room.outsideBoards()), patternEndM);
        double ownBoard = exitBoard(player, film, played, patternEndM);
        double innerBoard = exitBoard(player, film, played.missed(room.insideBoards()), patternEndM);
        return new ExitWindow(
                Math.min(ownBoard, Math.min(outerBoard, innerBoard)),
                Math.max(ownBoard, Math.max(outerBoard, innerBoard)),
                ownBoard,
                played);
    }

    /** How far an average shot on a line may miss at the arrows. */
    MissRoom missRoom(Player player, OilFilm film, Line line) {
        return MissRoom.around(line, missed -> PinCarry.isPocket(arrivalBoard(player, film, missed)));
    }

    /** How far the average shots at an angle come in beyond the pocket (boards), by where they are laid down. */
    DoubleUnaryOperator missByLaydown(Player player, OilFilm film, double launchRad) {
        return laydown -> arrivalBoard(player, film, new Line(laydown, launchRad)) - PinCarry.POCKET_BOARD;
    }

    private void roll(Player player, OilFilm film, Line line) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        double radiusM = player.contact().ball().radiusM();
        Delivery delivery = Delivery.of(player.style().release(), radiusM, laydownM, line.launchRad());
        march.readInPlay(delivery, player.hand(), player.contact(), film);
    }
}
