package lanetide.squads.fit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.study.Playable;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Balls as they may have been thrown in one playing. What nobody noted of a ball is drawn: who threw it on which lane
 * among those who bowl on the lanes in that game, his line among those near the one of his kind whose average shot
 * meets the pocket there, since a bowler finds it, with a miss of his own. Each draw has a stream of its own, so that a
 * ball is the same whenever it is asked for.
 */
final class BallDraws {
    /** Spread of a bowler's own speed and revs about those of his style (shares, assumption). */
    private static final double SPEED_SHARE = 0.04;

    private static final double SPIN_SHARE = 0.1;

    /**
     * How far a bowler's board at the arrows lies from that of his kind, and how far apart his boards there and at the
     * foul line lie from theirs (boards, standard deviations, assumption).
     */
    private static final double HABIT_BOARDS = Reading.Played.HABIT_BOARDS;

    private final Playable playable;
    private final Event event;
    private final RandomStreams streams;
    private final LineFinder finder;
    private final Map<BallThrown, Seat> seats = new HashMap<>();

    /** Who may have thrown a ball, and where. */
    private record Seat(int lane, Bowler bowler) {}

    /** For balls of a day in an event under a set, with the luck of a playing. */
    BallDraws(Playable playable, RandomStreams streams) {
        this.playable = playable;
        this.event = playable.event();
        this.streams = streams;
        this.finder = new LineFinder(
                new RowMarch(playable.physics().grid()), playable.physics().carry());
    }

    /** The lane it was thrown on. */
    int lane(BallThrown ball) {
        return seat(ball).lane();
    }

    /** The board on which it passes a distance on its lane. */
    double passed(BallThrown ball, OilFilm film, double distanceM) {
        Seat seat = seat(ball);
        Player player = player(ball, seat.bowler());
        return finder.exitBoard(player, film, line(ball, seat, player, film), distanceM);
    }

    /** The board on which it meets the pins of its lane. */
    double met(BallThrown ball, OilFilm film) {
        Seat seat = seat(ball);
        Player player = player(ball, seat.bowler());
        return finder.arrivalBoard(player, film, line(ball, seat, player, film));
    }

    private Seat seat(BallThrown ball) {
        return seats.computeIfAbsent(ball, this::drawnSeat);
    }

    private Seat drawnSeat(BallThrown ball) {
        int s = event.squad(ball.when().squad());
        Squad squad = event.squads().get(s);
        Stream<Seat> seats = ball.lane().isPresent()
                ? onLane(
                        ball.lane().getAsInt(),
                        ball.when().afterGame(),
                        squad,
                        event.rotations().get(s),
                        ball.bowler())
                : inGame(ball.when().afterGame(), squad, event.rotations().get(s), ball.bowler());
        List<Seat> possible = seats.toList();
        return possible.size() == 1
                ? possible.get(0)
                : possible.get(stream(ball, "seat").nextInt(possible.size()));
    }

    /** Whoever bowls on a lane when so many games of its squad are done there; after the last those who have. */
    private Stream<Seat> onLane(int lane, int done, Squad squad, Rotation rotation, Optional<String> bowler) {
        if (bowler.isPresent()) {
            return squad.bowler(bowler.get()).map(he -> new Seat(lane, he)).stream();
        }
        List<Integer> groups = IntStream.range(0, rotation.games())
                .mapToObj(game -> rotation.groupOn(game, pairOf(lane)))
                .flatMapToInt(OptionalInt::stream)
                .boxed()
                .toList();
        Stream<Bowler> there = groups.isEmpty()
                ? squad.everybody().stream()
                : squad.groups().get(groups.get(Math.min(done, groups.size() - 1))).bowlers().stream();
        return there.map(one -> new Seat(lane, one));
    }

    /** Whoever bowls, on either lane of his pair, when so many games are done. */
    private Stream<Seat> inGame(int done, Squad squad, Rotation rotation, Optional<String> bowler) {
        int game = Math.min(done, rotation.games() - 1);
        List<Seat> seats = IntStream.range(0, squad.groups().size())
                .boxed()
                .flatMap(group -> squad.groups().get(group).bowlers().stream()
                        .filter(one -> bowler.isEmpty() || bowler.get().equals(one.id()))
                        .flatMap(one -> onBothLanes(rotation.pairOf(game, group), one)))
                .toList();
        // A substitute may come in on any pair.
        return !seats.isEmpty()
                ? seats.stream()
                : squad.bowler(bowler.orElseThrow()).stream()
                        .flatMap(he -> IntStream.range(0, rotation.pairs())
                                .filter(rotation::visits)
                                .boxed()
                                .flatMap(pair -> onBothLanes(pair, he)));
    }

    private Stream<Seat> onBothLanes(int pair, Bowler bowler) {
        LanePair lanes = event.centre().pairs().get(pair);
        return Stream.of(new Seat(lanes.left(), bowler), new Seat(lanes.right(), bowler));
    }

    private int pairOf(int lane) {
        List<LanePair> pairs = event.centre().pairs();
        return IntStream.range(0, pairs.size())
                .filter(p -> pairs.get(p).holds(lane))
                .findFirst()
                .orElseThrow();
    }

    private Player player(BallThrown ball, Bowler bowler) {
        Player usual = StartingLines.player(bowler, event, playable.physics());
        Release release = usual.style().release();
        Release own = release.scaled(
                factor(ball.speedMps(), release.speedMps(), SPEED_SHARE, stream(ball, bowler, "speed")),
                factor(ball.spinRadps(), release.spinRadps(), SPIN_SHARE, stream(ball, bowler, "spin")));
        PlayingStyle style = new PlayingStyle(
                usual.style().id(),
                own,
                usual.style().naturalLaunchRad(),
                usual.style().source());
        return new Player(style, usual.spread(), usual.hand(), usual.contact());
    }

    /** By what his release is scaled: to what was measured, or by a draw of what is not known of him. */
    private static double factor(OptionalDouble measured, double usual, double share, UniformRandomProvider luck) {
        if (measured.isPresent()) {
            return usual == 0 ? 1 : measured.getAsDouble() / usual;
        }
        return 1 + share * gaussian(luck);
    }

    private Line line(BallThrown ball, Seat seat, Player player, OilFilm film) {
        OptionalDouble laydown = ball.seen().laydownBoard();
        OptionalDouble arrows = ball.seen().arrowsBoard();
        if (laydown.isPresent() && arrows.isPresent()) {
            return Line.through(laydown.getAsDouble(), arrows.getAsDouble());
        }
        Line own = habitual(ball, seat);
        ReleaseSpread spread = player.spread();
        double missedBoards = StrictMath.tan(spread.launchRad())
                * LaneGeometry.ARROWS_M
                / LaneGeometry.BOARD_M
                * gaussian(stream(ball, "launch"));
        if (laydown.isPresent()) {
            Line stood = Line.through(laydown.getAsDouble(), laydown.getAsDouble() - across(own));
            Line meant = finder.aimToPocket(player, film, stood).orElse(stood);
            return Line.through(meant.laydownBoard(), meant.arrowsBoard() + missedBoards);
        }
        if (arrows.isPresent()) {
            Line aimed = Line.through(arrows.getAsDouble() + across(own), arrows.getAsDouble());
            Line meant = finder.moveFeetToPocket(player, film, aimed).orElse(aimed);
            return Line.through(meant.laydownBoard() - missedBoards, meant.arrowsBoard());
        }
        Line meant = finder.moveToPocket(player, film, own).orElse(own);
        double laidBoards = spread.laydownM() / LaneGeometry.BOARD_M * gaussian(stream(ball, "laydown"));
        return Line.through(meant.laydownBoard() + laidBoards, meant.arrowsBoard() + laidBoards + missedBoards);
    }

    private static double across(Line line) {
        return line.laydownBoard() - line.arrowsBoard();
    }

    /** The line that his kind brings for the pattern, off by his habits. */
    private Line habitual(BallThrown ball, Seat seat) {
        Line home = playable.lines()
                .on(event.pattern(event.squad(ball.when().squad()), seat.lane()))
                .of(StartingLines.player(seat.bowler(), event, playable.physics()));
        double arrows = home.arrowsBoard() + HABIT_BOARDS * gaussian(stream(ball, seat.bowler(), "arrows"));
        double across = across(home) + HABIT_BOARDS * gaussian(stream(ball, seat.bowler(), "across"));
        return Line.through(arrows + across, arrows);
    }

    /** What is drawn once for all balls of a bowler. */
    private UniformRandomProvider stream(BallThrown ball, Bowler bowler, String what) {
        return streams.stream("fit/squad/" + ball.when().squad() + "/bowler/" + bowler.id() + "/" + what);
    }

    private UniformRandomProvider stream(BallThrown ball, String what) {
        return streams.stream("fit/ball/" + ball.place() + "/" + what);
    }

    private static double gaussian(UniformRandomProvider luck) {
        return ZigguratSampler.NormalizedGaussian.of(luck).sample();
    }
}
