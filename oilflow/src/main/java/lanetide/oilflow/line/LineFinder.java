package lanetide.oilflow.line;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;

/**
 * Finds lines that meet the pocket and says how good they are.
 *
 * <p>The landscape of lines is a long flat valley: many pairs of laydown and launch angle are within a few per cent of the
 * best. Which one a bowler plays is decided by habit and by moves, so the finder starts from the style's natural launch
 * angle and moves two boards with the feet to one at the arrows (common practice, no source). One object serves one thread.
 */
public final class LineFinder {
    /** A line belongs to the window if it is at least this share as good as the best. */
    public static final double GOOD_SHARE = 0.9;

    private static final int NODES = 32;
    private static final double OUTERMOST_LAYDOWN = 2;
    private static final double INNERMOST_LAYDOWN = 38;
    private static final double SCAN_BOARDS = 2;
    private static final double TOLERANCE_BOARDS = 0.02;
    private static final double[] NATURAL_ANGLES_DEG = {0, -0.5, 0.5, -1, 1, -1.5, 1.5, -2, 2};
    /** A bowler leaves his natural angle for one that is twice as good (assumption). */
    private static final double WORKABLE_SHARE = 0.5;

    private static final int VALLEY_STEPS = 3;
    private static final double VALLEY_STEP_RAD = StrictMath.toRadians(0.3);
    private static final int SCANS_TO_NEIGHBOUR = 4;

    /**
     * How far the laydown moves for each change of angle along the valley: sixty feet of angle, of which a board of laydown
     * takes back about 0.8. It only says where a search starts.
     */
    private static final double VALLEY_BOARDS_PER_RAD = LaneGeometry.HEAD_PIN_M / LaneGeometry.BOARD_M / 0.8;

    private final RowMarch march;
    private final PinCarry carry;
    private final ReleaseNodes nodes = new ReleaseNodes(NODES);

    /**
     * A finder.
     *
     * @param march rolls the balls
     * @param carry says what the pins do
     */
    public LineFinder(RowMarch march, PinCarry carry) {
        this.march = march;
        this.carry = carry;
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
     * The line at one launch angle that meets the pocket. Where several do, a bowler keeps away from the gutter: it is the
     * innermost of those at least {@link #GOOD_SHARE} times as good as the best (assumption).
     *
     * @param player who throws
     * @param film the lane
     * @param launchRad launch angle (rad)
     * @return that line; empty if no average shot meets board 17.5
     */
    public Optional<Line> atAngle(Player player, OilFilm film, double launchRad) {
        List<Line> lines = listAtAngle(player, film, launchRad);
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
    private List<Line> listAtAngle(Player player, OilFilm film, double launchRad) {
        DoubleUnaryOperator miss =
                laydown -> arrivalBoard(player, film, new Line(laydown, launchRad)) - PinCarry.POCKET_BOARD;
        List<Line> lines = new ArrayList<>();
        double low = OUTERMOST_LAYDOWN;
        double missLow = miss.applyAsDouble(low);
        for (double high = low + SCAN_BOARDS; high <= INNERMOST_LAYDOWN; high += SCAN_BOARDS) {
            double missHigh = miss.applyAsDouble(high);
            if (missLow <= 0 != missHigh <= 0) {
                double laydown = root(miss, low, missLow, high, missHigh);
                if (!Double.isNaN(laydown)) {
                    lines.add(new Line(laydown, launchRad));
                }
            }
            low = high;
            missLow = missHigh;
        }
        return lines;
    }

    /**
     * The line a bowler starts with on the lane he expects. He plays his natural angle; only if its line is not half as good
     * as the best at angles up to two degrees from his own does he take the nearest angle that is.
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
        // Moving the feet away from the gutter brings the ball back toward it, so the miss falls with the move.
        DoubleUnaryOperator miss = feet -> PinCarry.POCKET_BOARD - arrivalBoard(player, film, from.moved(feet));
        double missHere = miss.applyAsDouble(0);
        double side = missHere <= 0 ? 1 : -1;
        double near = 0;
        double missNear = missHere;
        for (double far = side; Math.abs(far) <= INNERMOST_LAYDOWN; far += side) {
            double laydown = from.laydownBoard() + far;
            if (laydown < OUTERMOST_LAYDOWN || laydown > INNERMOST_LAYDOWN) {
                return Optional.empty();
            }
            double missFar = miss.applyAsDouble(far);
            if (missNear <= 0 != missFar <= 0) {
                double feet = root(miss, near, missNear, far, missFar);
                if (!Double.isNaN(feet)) {
                    return Optional.of(from.moved(feet));
                }
            }
            near = far;
            missNear = missFar;
        }
        return Optional.empty();
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
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        double strikes = 0;
        int pockets = 0;
        for (int node = 0; node < nodes.count(); node++) {
            Release release = player.style()
                    .release()
                    .scaled(
                            1 + player.spread().speedShare() * nodes.at(node, 2),
                            1 + player.spread().spinShare() * nodes.at(node, 3));
            double atM = laydownM + player.spread().laydownM() * nodes.at(node, 0);
            double launchRad = line.launchRad() + player.spread().launchRad() * nodes.at(node, 1);
            roll(player, film, release, atM, launchRad);
            strikes += carry.strikeChance(march.arrivalBoard(), march.entryAngleRad());
            pockets += PinCarry.isPocket(march.arrivalBoard()) ? 1 : 0;
        }
        return new LineQuality(strikes / nodes.count(), (double) pockets / nodes.count());
    }

    /**
     * The window of exit boards: along the valley of lines that meet the pocket, the stretch around the bowler's own angle on
     * which lines are at least {@link #GOOD_SHARE} times as good as the best within 0.9 degrees.
     *
     * @param player who throws
     * @param film the lane
     * @param near a line he has been playing; he moves from it to the pocket first
     * @param patternEndM where the pattern ends (m)
     * @return the window; empty if moving does not bring his average shot to the pocket
     */
    public Optional<ExitWindow> window(Player player, OilFilm film, Line near, double patternEndM) {
        return moveToPocket(player, film, near).map(played -> {
            List<ValleyLine> valley = valley(player, film, played, patternEndM);
            return windowIn(valley, played);
        });
    }

    /** Lines to the pocket at angles around the played one, from the outermost exit; the valley may end on either side. */
    private List<ValleyLine> valley(Player player, OilFilm film, Line played, double patternEndM) {
        Deque<ValleyLine> valley = new ArrayDeque<>();
        valley.add(valleyLine(player, film, played, patternEndM));
        for (int side = -1; side <= 1; side += 2) {
            Optional<Line> line = Optional.of(played);
            for (int i = 1; i <= VALLEY_STEPS && line.isPresent(); i++) {
                line = neighbour(player, film, line.get(), side * VALLEY_STEP_RAD);
                if (line.isPresent()) {
                    ValleyLine found = valleyLine(player, film, line.get(), patternEndM);
                    addAtEnd(valley, found, side);
                }
            }
        }
        return List.copyOf(valley);
    }

    private static void addAtEnd(Deque<ValleyLine> valley, ValleyLine line, int side) {
        if (side < 0) {
            valley.addFirst(line);
        } else {
            valley.addLast(line);
        }
    }

    private ValleyLine valleyLine(Player player, OilFilm film, Line line, double patternEndM) {
        double share = quality(player, film, line).strikeShare();
        return new ValleyLine(line, share, exitBoard(player, film, line, patternEndM));
    }

    private static ExitWindow windowIn(List<ValleyLine> valley, Line played) {
        double enough = GOOD_SHARE
                * valley.stream().mapToDouble(ValleyLine::strikeShare).max().orElseThrow();
        int best = -1;
        for (int i = 0; i < valley.size(); i++) {
            boolean nearer =
                    best < 0 || valley.get(i).offRad(played) < valley.get(best).offRad(played);
            if (valley.get(i).strikeShare() >= enough && nearer) {
                best = i;
            }
        }
        int first = best;
        while (first > 0 && valley.get(first - 1).strikeShare() >= enough) {
            first--;
        }
        int last = best;
        while (last < valley.size() - 1 && valley.get(last + 1).strikeShare() >= enough) {
            last++;
        }
        double lower = first == 0 ? valley.get(0).exit() : edge(valley.get(first), valley.get(first - 1), enough);
        double upper = last == valley.size() - 1
                ? valley.get(last).exit()
                : edge(valley.get(last), valley.get(last + 1), enough);
        ValleyLine chosen = valley.get(best);
        return new ExitWindow(
                Math.min(lower, upper),
                Math.max(lower, upper),
                chosen.exit(),
                chosen.line(),
                played,
                chosen.strikeShare());
    }

    /** Exit board at which the strike share falls to the limit between a good line and its worse neighbour. */
    private static double edge(ValleyLine good, ValleyLine poor, double enough) {
        double way = (good.strikeShare() - enough) / (good.strikeShare() - poor.strikeShare());
        return good.exit() + way * (poor.exit() - good.exit());
    }

    /** The line to the pocket at a neighbouring angle, near where the valley leads. */
    private Optional<Line> neighbour(Player player, OilFilm film, Line from, double turnRad) {
        double launchRad = from.launchRad() + turnRad;
        DoubleUnaryOperator miss =
                laydown -> arrivalBoard(player, film, new Line(laydown, launchRad)) - PinCarry.POCKET_BOARD;
        double near = from.laydownBoard() + turnRad * VALLEY_BOARDS_PER_RAD;
        near = Math.max(OUTERMOST_LAYDOWN, Math.min(INNERMOST_LAYDOWN, near));
        double missNear = miss.applyAsDouble(near);
        double step = missNear > 0 ? -SCAN_BOARDS : SCAN_BOARDS;
        for (int i = 0; i < SCANS_TO_NEIGHBOUR; i++) {
            double far = near + step;
            if (far < OUTERMOST_LAYDOWN || far > INNERMOST_LAYDOWN) {
                return Optional.empty();
            }
            double missFar = miss.applyAsDouble(far);
            if (missNear <= 0 != missFar <= 0) {
                double laydown = root(miss, near, missNear, far, missFar);
                if (!Double.isNaN(laydown)) {
                    return Optional.of(new Line(laydown, launchRad));
                }
            }
            near = far;
            missNear = missFar;
        }
        return Optional.empty();
    }

    /**
     * Illinois false position: bracketed like bisection, fast like the secant. NaN where the sign changes by a jump, as
     * between a ball that falls into one gutter and its neighbour that does not.
     */
    private static double root(DoubleUnaryOperator f, double a, double fa, double b, double fb) {
        double from = a;
        double fFrom = fa;
        double to = b;
        double fTo = fb;
        for (int i = 0; i < 30; i++) {
            double mid = (from * fTo - to * fFrom) / (fTo - fFrom);
            double fMid = f.applyAsDouble(mid);
            if (Math.abs(fMid) < TOLERANCE_BOARDS) {
                return mid;
            }
            if (fMid <= 0 != fTo <= 0) {
                from = to;
                fFrom = fTo;
            } else {
                fFrom = fFrom / 2;
            }
            to = mid;
            fTo = fMid;
        }
        return Double.NaN;
    }

    private void roll(Player player, OilFilm film, Line line) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        roll(player, film, player.style().release(), laydownM, line.launchRad());
    }

    private void roll(Player player, OilFilm film, Release release, double laydownM, double launchRad) {
        double radiusM = player.contact().ball().radiusM();
        march.read(Delivery.of(release, radiusM, laydownM, launchRad), player.hand(), player.contact(), film);
    }

    /** A line of the valley, how good it is, and where it leaves the pattern. */
    private record ValleyLine(Line line, double strikeShare, double exit) {
        double offRad(Line other) {
            return Math.abs(line.launchRad() - other.launchRad());
        }
    }
}
