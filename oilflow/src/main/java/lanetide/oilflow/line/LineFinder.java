package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.Arrays;
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

    private static final int NODES = 48;
    private static final double OUTERMOST_LAYDOWN = 2;
    private static final double INNERMOST_LAYDOWN = 38;
    private static final double SCAN_BOARDS = 2;
    private static final double TOLERANCE_BOARDS = 0.02;
    private static final double[] WINDOW_ANGLES_DEG = {-1.2, -0.6, 0, 0.6, 1.2};
    private static final double[] NATURAL_ANGLES_DEG = {0, -0.5, 0.5, -1, 1, -1.5, 1.5, -2, 2};
    /** A bowler leaves his natural angle for one that is twice as good (assumption). */
    private static final double WORKABLE_SHARE = 0.5;

    /** How far from his natural angle a bowler likes to be: standard deviation of the comfort weight (rad). Assumption. */
    private static final double COMFORT_RAD = StrictMath.toRadians(1);

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
     * The window of exit boards: over launch angles within 1.2 degrees of the angle he plays, all lines that meet the pocket
     * and are good enough.
     *
     * @param player who throws
     * @param film the lane
     * @param near a line he has been playing; the search starts from it
     * @param patternEndM where the pattern ends (m)
     * @return the window; empty if no line meets the pocket
     */
    public Optional<ExitWindow> window(Player player, OilFilm film, Line near, double patternEndM) {
        Optional<Line> present = moveToPocket(player, film, near);
        Line centre = present.orElse(near);
        Line[] lines = new Line[WINDOW_ANGLES_DEG.length];
        LineQuality[] qualities = new LineQuality[lines.length];
        double bestChoice = -1;
        int best = -1;
        for (int i = 0; i < lines.length; i++) {
            double launchRad = centre.launchRad() + StrictMath.toRadians(WINDOW_ANGLES_DEG[i]);
            lines[i] = nearestAtAngle(player, film, launchRad, centre);
            if (lines[i] == null) {
                continue;
            }
            qualities[i] = quality(player, film, lines[i]);
            double choice = qualities[i].strikeShare() * comfort(launchRad - centre.launchRad());
            if (choice > bestChoice) {
                bestChoice = choice;
                best = i;
            }
        }
        return best < 0 ? Optional.empty() : Optional.of(span(player, film, patternEndM, lines, qualities, best));
    }

    private ExitWindow span(
            Player player, OilFilm film, double patternEndM, Line[] lines, LineQuality[] qualities, int best) {
        double top = 0;
        for (LineQuality quality : qualities) {
            top = quality == null ? top : Math.max(top, quality.strikeShare());
        }
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < lines.length; i++) {
            if (lines[i] != null && (i == best || qualities[i].strikeShare() >= GOOD_SHARE * top)) {
                double exit = exitBoard(player, film, lines[i], patternEndM);
                low = Math.min(low, exit);
                high = Math.max(high, exit);
            }
        }
        double bestExit = exitBoard(player, film, lines[best], patternEndM);
        return new ExitWindow(low, high, bestExit, lines[best], qualities[best]);
    }

    /** The root in laydown nearest to where a line of the neighbouring angle would put it, or null. */
    private Line nearestAtAngle(Player player, OilFilm film, double launchRad, Line neighbour) {
        DoubleUnaryOperator miss =
                laydown -> arrivalBoard(player, film, new Line(laydown, launchRad)) - PinCarry.POCKET_BOARD;
        double guess = neighbour.laydownBoard()
                + 2 * (new Line(0, neighbour.launchRad()).arrowsBoard() - new Line(0, launchRad).arrowsBoard());
        double near = Math.max(OUTERMOST_LAYDOWN, Math.min(INNERMOST_LAYDOWN, guess));
        double missNear = miss.applyAsDouble(near);
        double step = missNear > 0 ? -SCAN_BOARDS : SCAN_BOARDS;
        for (int i = 0; i < 8; i++) {
            double far = near + step;
            if (far < OUTERMOST_LAYDOWN || far > INNERMOST_LAYDOWN) {
                return null;
            }
            double missFar = miss.applyAsDouble(far);
            if (missNear <= 0 != missFar <= 0) {
                double laydown = root(miss, near, missNear, far, missFar);
                if (!Double.isNaN(laydown)) {
                    return new Line(laydown, launchRad);
                }
            }
            near = far;
            missNear = missFar;
        }
        return null;
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

    private static double comfort(double offRad) {
        double z = offRad / COMFORT_RAD;
        return StrictMath.exp(-z * z / 2);
    }

    private void roll(Player player, OilFilm film, Line line) {
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard());
        roll(player, film, player.style().release(), laydownM, line.launchRad());
    }

    private void roll(Player player, OilFilm film, Release release, double laydownM, double launchRad) {
        double radiusM = player.contact().ball().radiusM();
        march.read(Delivery.of(release, radiusM, laydownM, launchRad), player.hand(), player.contact(), film);
    }
}
