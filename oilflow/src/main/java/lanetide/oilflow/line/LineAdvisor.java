package lanetide.oilflow.line;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.motion.Contact;

/**
 * Says where a player would start on a lane, where he could start if he were free to change his angle, where the best
 * line within his reach is, and when another ball would help more than a move.
 *
 * <p>One object serves one thread.
 */
public final class LineAdvisor {
    /**
     * Gain in the share of strikes from which a change of ball is advised: a third of a strike in a game of eleven
     * first balls, three to four pins (assumption).
     */
    public static final double MIN_GAIN = 0.03;

    private static final Comparator<Contact> BY_FRICTION = Comparator.comparingDouble(LineAdvisor::friction);

    private final LineFinder finder;
    private final LineSearch search;
    private final HomeLines homes;
    private final double patternEndM;

    /**
     * An advisor for lanes under one pattern.
     *
     * @param finder finds the lines
     * @param homes the home lines on the pattern
     * @param patternEndM where the pattern ends (m)
     */
    public LineAdvisor(LineFinder finder, HomeLines homes, double patternEndM) {
        this.finder = finder;
        this.search = new LineSearch(finder);
        this.homes = homes;
        this.patternEndM = patternEndM;
    }

    /**
     * Where a player would start: his home line on the pattern, moved two and one until it meets the pocket here.
     *
     * @param player who throws, with his ball on the lane at hand
     * @param film the lane at hand
     * @return that line; empty if he has no home line, or no move brings it to the pocket here
     */
    public Optional<PlayedLine> natural(Player player, OilFilm film) {
        return homes.start(player, film).map(line -> described(player, film, LineBasis.NATURAL, line));
    }

    /**
     * What comes nearest to the pocket for a player who finds no natural line: of the moves from his home line, or,
     * where he has none, of the lines at his style's own angle.
     *
     * @param player who throws
     * @param film the lane at hand
     * @return that line
     */
    public NearestLine nearest(Player player, OilFilm film) {
        return homes.home(player)
                .map(home -> finder.nearestMove(player, film, home))
                .orElseGet(
                        () -> finder.nearestAtAngle(player, film, player.style().naturalLaunchRad()));
    }

    /**
     * The line that strikes most often at launch angles up to three degrees from the style's natural one.
     *
     * @param player who throws
     * @param film the lane
     * @return that line; empty if none of these angles meets the pocket
     */
    public Optional<PlayedLine> free(Player player, OilFilm film) {
        return search.free(player, film).map(line -> described(player, film, LineBasis.FREE, line));
    }

    /**
     * The best line on the other track, where there is one worth telling.
     *
     * @param player who throws
     * @param film the lane
     * @param played the line he plays
     * @return that line; empty as for {@link LineSearch#otherTrack}
     */
    public Optional<PlayedLine> otherTrack(Player player, OilFilm film, Line played) {
        return search.otherTrack(player, film, played)
                .map(line -> described(player, film, LineBasis.OTHER_TRACK, line));
    }

    /**
     * Whether another ball would help more than a move. Each ball is moved two and one from the present line to the
     * pocket and then played on the best line within two boards of there, and so is the present one. Only balls that
     * flare as the present one does are compared: the pins of this model do not know what hits them, and the gain it
     * sees in balls that do not flare is larger than the 7.2 pins a game that a choice of balls was worth to elite
     * players (World Bowling, limited-ball test, 2014; see the module's README).
     *
     * @param player who throws, with his present ball
     * @param film the lane
     * @param present the line he plays
     * @param others the other balls on this lane; of those that flare alike, the next weaker and the next stronger are
     *     tried, so that nobody is sent from the weakest ball to the strongest
     * @return the best of them, if it gains at least {@link #MIN_GAIN} on the best line of the present one, or on no
     *     strikes at all where that finds no line to the pocket; empty if none does
     */
    public Optional<BallChange> ballChange(Player player, OilFilm film, Line present, List<Contact> others) {
        double byMoving = movedBest(player, film, present)
                .map(line -> finder.fineQuality(player, film, line).strikeShare())
                .orElse(0.0);
        return oneStepEitherWay(player.contact(), others)
                .flatMap(ball -> change(player, film, present, ball, byMoving).stream())
                .filter(change -> change.gain() >= MIN_GAIN)
                .reduce((most, next) -> next.gain() > most.gain() ? next : most);
    }

    /** Of the balls that flare as the present one does the next weaker and the next stronger. */
    private static Stream<Contact> oneStepEitherWay(Contact present, List<Contact> others) {
        List<Contact> alike = others.stream()
                .filter(ball ->
                        ball.ball().cover().flares() == present.ball().cover().flares())
                .toList();
        double friction = friction(present);
        return Stream.concat(
                alike.stream().filter(ball -> friction(ball) <= friction).max(BY_FRICTION).stream(),
                alike.stream().filter(ball -> friction(ball) > friction).min(BY_FRICTION).stream());
    }

    private static double friction(Contact ball) {
        return ball.ball().cover().frictionFactor();
    }

    private Optional<BallChange> change(Player player, OilFilm film, Line present, Contact ball, double byMoving) {
        Player changed = new Player(player.style(), player.spread(), player.hand(), ball);
        boolean stronger = friction(ball) > friction(player.contact());
        return movedBest(changed, film, present).map(line -> {
            double share = finder.fineQuality(changed, film, line).strikeShare();
            return new BallChange(ball.ball().cover(), stronger, line, share, share - byMoving);
        });
    }

    private Optional<Line> movedBest(Player player, OilFilm film, Line present) {
        return finder.moveToPocket(player, film, present).flatMap(line -> search.nearFinely(player, film, line));
    }

    private PlayedLine described(Player player, OilFilm film, LineBasis basis, Line line) {
        MissRoom room = finder.missRoom(player, film, line);
        return new PlayedLine(
                basis,
                line,
                finder.path(player, film, line, patternEndM),
                finder.window(player, film, line, room, patternEndM),
                finder.fineQuality(player, film, line),
                room);
    }
}
