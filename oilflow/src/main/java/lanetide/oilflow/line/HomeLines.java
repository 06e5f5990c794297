package lanetide.oilflow.line;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.PriorityQueue;
import java.util.function.Function;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.motion.Contact;

/**
 * The lines players are at home with on a pattern, and from there the lines they start with on the lane at hand. This
 * is the one place where a home line is found.
 *
 * <p>A home line is known under one condition: the pattern freshly laid with {@link #KNOWN_ML}, a known surface and a
 * known ball. Of all lines that meet the pocket there at up to two degrees from the style's own launch angle, it is the
 * one with the largest product of three: how often it strikes; how near its angle lies to the style's own (a bell curve
 * of 0.45 degrees); how near it leaves the pattern to the length rule's board, length in feet less 31 (a bell curve of
 * four boards). A line nearer the gutter than board 5 at the arrows or where it leaves the pattern (on patterns under
 * 36 ft the rule's board, on those under 34 ft board 3) is taken only if there is no other. Widths and limits are
 * assumptions, chosen so that a grid of conditions is answered as a coach would (see the README of the commands).
 *
 * <p>From home a player moves two boards with the feet to one at the arrows until his average shot meets the pocket.
 * Ball, surface, volume and wear enter through that move only, so that no stronger ball, dryer surface or thinner film
 * can put his feet nearer the gutter: the first crossing of a ball that hits higher everywhere is never further out.
 * The level of skill does not change the line: strikes are counted under one fixed scatter. One object serves one
 * thread.
 */
public final class HomeLines {
    /** Oil on the lane that home lines are known for (mL): a middling volume (assumption). */
    public static final double KNOWN_ML = 25;

    /** More than a bowler knows (mL, assumption). */
    private static final double MUCH_ML = 30;

    private static final double STEP_RAD = StrictMath.toRadians(0.125);
    private static final int STEPS_TO_A_SIDE = 16;
    private static final double COMFORT_RAD = StrictMath.toRadians(0.45);
    private static final double RULE_BOARDS = 4;
    private static final double RULE_LESS_FT = 31;
    private static final double NEAREST_BOARD = 3;
    private static final double USUAL_NEAREST_BOARD = 5;

    /**
     * A good bowler's scatter: 0.97 boards at the arrows (O'Keefe, US Bowler, July 2012: averages above 200), shared
     * equally by laydown and launch angle; speed and revs are assumptions.
     */
    static final ReleaseSpread SCATTER = spread(0.97, 0.022, 0.06);

    private final LineFinder finder;
    private final Function<Coverstock, List<Contact>> knownBalls;
    private final OilFilm known;
    private final OilFilm heavy;
    private final double ruleWidthBoards;
    private final double patternEndM;
    private final double ruleBoard;
    private final double nearestBoard;
    private final Map<Known, Optional<Line>> lines = new LinkedHashMap<>();

    /**
     * The home lines on a pattern.
     *
     * @param finder finds the lines to the pocket
     * @param pattern the pattern; its own volume does not matter
     * @param knownBalls the balls that a player with such a cover knows, on the surface he knows, the best known first;
     *     at least one
     */
    public HomeLines(LineFinder finder, OilPattern pattern, Function<Coverstock, List<Contact>> knownBalls) {
        this(finder, pattern, knownBalls, RULE_BOARDS);
    }

    /** The same with another width of the bell curve about the length rule's board (boards); infinite for none. */
    HomeLines(
            LineFinder finder,
            OilPattern pattern,
            Function<Coverstock, List<Contact>> knownBalls,
            double ruleWidthBoards) {
        this.finder = finder;
        this.knownBalls = knownBalls;
        this.known = OilFilm.holding(KNOWN_ML, pattern, finder.grid());
        this.heavy = OilFilm.holding(MUCH_ML, pattern, finder.grid());
        this.ruleWidthBoards = ruleWidthBoards;
        this.patternEndM = pattern.lengthM();
        this.ruleBoard = Math.max(NEAREST_BOARD, patternEndM / LaneGeometry.FOOT_M - RULE_LESS_FT);
        this.nearestBoard = Math.min(USUAL_NEAREST_BOARD, ruleBoard);
    }

    private static ReleaseSpread spread(double arrowsBoards, double speedShare, double spinShare) {
        double eachM = arrowsBoards / Math.sqrt(2) * LaneGeometry.BOARD_M;
        return new ReleaseSpread(eachM, eachM / LaneGeometry.ARROWS_M, speedShare, spinShare);
    }

    /** Who shares a home line. */
    private record Known(PlayingStyle style, Hand hand, Contact ball) {}

    /**
     * A player's home line. It is that of the ball he knows best; of the next one if, with more oil than he knows, no
     * move from the first brings that next one to the pocket.
     *
     * @param player the player; neither his ball's strength nor his scatter matter
     * @return the line; empty if no line at these angles meets the pocket under the known condition
     */
    public Optional<Line> home(Player player) {
        List<Contact> balls = knownBalls.apply(player.contact().ball().cover());
        Optional<Line> line = known(player, balls.get(0));
        for (Contact ball : balls.subList(1, balls.size())) {
            Player other = new Player(player.style(), SCATTER, player.hand(), ball);
            if (line.flatMap(home -> finder.moveToPocket(other, heavy, home)).isEmpty()) {
                line = known(player, ball);
            }
        }
        return line;
    }

    private Optional<Line> known(Player player, Contact ball) {
        return lines.computeIfAbsent(
                new Known(player.style(), player.hand(), ball),
                who -> search(new Player(who.style(), SCATTER, who.hand(), who.ball())));
    }

    /**
     * Where a player starts: his home line, moved two and one until his average shot meets the pocket.
     *
     * @param player the player, with his ball on the lane at hand
     * @param film the lane at hand
     * @return that line; empty if he has no home line, or no move brings it to the pocket
     */
    public Optional<Line> start(Player player, OilFilm film) {
        return home(player).flatMap(line -> finder.moveToPocket(player, film, line));
    }

    private Optional<Line> search(Player player) {
        return new Search(player).best();
    }

    private static double bell(double off) {
        return StrictMath.exp(-0.5 * off * off);
    }

    /**
     * A line that meets the pocket.
     *
     * @param line the line
     * @param wanted how much it is wanted, apart from its strikes; no merit is above it
     * @param number how many were found before it
     */
    private record Candidate(Line line, double wanted, int number) {
        static final Comparator<Candidate> MOST_WANTED_FIRST =
                Comparator.comparingDouble(Candidate::wanted).reversed().thenComparingInt(Candidate::number);
    }

    /**
     * Looks at angles from the style's own outward, and counts strikes on the most wanted line of those found as soon
     * as no angle further off can have one that is wanted more. So as few lines as can be are played; it is the strikes
     * that take the time.
     */
    private final class Search {
        private final Player player;
        private final PriorityQueue<Candidate> away = new PriorityQueue<>(Candidate.MOST_WANTED_FIRST);
        private final PriorityQueue<Candidate> near = new PriorityQueue<>(Candidate.MOST_WANTED_FIRST);
        private final List<Line> found = new ArrayList<>();
        private int angles;

        Search(Player player) {
            this.player = player;
        }

        /** The best of the lines that keep away from the gutter; of the others if none of those ever strikes. */
        Optional<Line> best() {
            return bestOf(away).or(() -> bestOf(near)).or(() -> found.stream().findFirst());
        }

        private Optional<Line> bestOf(PriorityQueue<Candidate> candidates) {
            Optional<Line> best = Optional.empty();
            double merit = 0;
            while (true) {
                double further = comfort();
                double mostWanted =
                        candidates.isEmpty() ? 0 : candidates.element().wanted();
                if (Math.max(further, mostWanted) <= merit) {
                    return best;
                }
                if (further >= mostWanted) {
                    lookAtNextAngle();
                    continue;
                }
                Candidate next = candidates.remove();
                OptionalDouble strikes = finder.strikeShareAbove(merit / next.wanted(), player, known, next.line());
                if (strikes.isPresent()) {
                    best = Optional.of(next.line());
                    merit = next.wanted() * strikes.getAsDouble();
                }
            }
        }

        private double offRad() {
            return (angles % 2 == 0 ? 1 : -1) * ((angles + 1) / 2) * STEP_RAD;
        }

        /** How much a line at the next angle can be wanted at the most; 0 beyond the last angle. */
        private double comfort() {
            return angles > 2 * STEPS_TO_A_SIDE ? 0 : bell(offRad() / COMFORT_RAD);
        }

        private void lookAtNextAngle() {
            double comfort = comfort();
            for (Line line : finder.linesAtAngle(player, known, player.style().naturalLaunchRad() + offRad())) {
                double exitBoard = finder.exitBoard(player, known, line, patternEndM);
                boolean isAway = Math.min(line.arrowsBoard(), exitBoard) >= nearestBoard;
                double wanted = comfort * bell((exitBoard - ruleBoard) / ruleWidthBoards);
                (isAway ? away : near).add(new Candidate(line, wanted, found.size()));
                found.add(line);
            }
            angles++;
        }
    }
}
