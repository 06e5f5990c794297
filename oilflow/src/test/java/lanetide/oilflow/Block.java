package lanetide.oilflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** First balls of a few players who take turns on one lane, and move by "two and one" before every game. */
final class Block {
    /**
     * First balls of one bowler in a game of ten frames, half of them on each lane of a pair; twelve with the fill
     * balls.
     */
    static final int FIRST_BALLS_A_GAME = 12;

    private static final double BETWEEN_SHOTS_S = 120;

    final OilFilm film;
    final List<Player> players;
    final List<Line> lines = new ArrayList<>();
    /** Balls that crossed each board (index, from the right) ten feet down the lane. */
    final int[] ballsAtTenFeet = new int[LaneGeometry.BOARDS + 1];

    private final List<BallOil> oils = new ArrayList<>();
    private final RowMarch march = new RowMarch(LaneGrid.DEFAULT);
    private final LineFinder finder = new LineFinder(march, new PinCarry());
    private final RandomGenerator random;

    /** Players who start from home on a pattern freshly laid. */
    Block(List<Player> players, OilPattern pattern, long seed) {
        this(
                players,
                players.stream().map(player -> Lanes.start(player, pattern)).toList(),
                Lanes.fresh(pattern),
                seed,
                BallOil.DEFAULT_TOWEL_SHARE);
    }

    Block(List<Player> players, List<Line> starts, OilFilm film, long seed, double towelShare) {
        this.players = players;
        this.film = film;
        this.random = new Well19937c(seed);
        lines.addAll(starts);
        for (Player player : players) {
            oils.add(new BallOil(player.contact().ball(), towelShare));
        }
    }

    /** Games by one bowler's worth of first balls each, shared by the players in turn; all move before each. */
    Block play(int games) {
        for (int game = 0; game < games; game++) {
            moveAll();
            for (int ball = 0; ball < FIRST_BALLS_A_GAME; ball++) {
                shoot(ball % players.size());
            }
        }
        return this;
    }

    /** Everyone moves to where an average shot meets the pocket; who finds no such line stays. */
    void moveAll() {
        for (int i = 0; i < players.size(); i++) {
            Optional<Line> moved = finder.moveToPocket(players.get(i), film, lines.get(i));
            if (moved.isPresent()) {
                lines.set(i, moved.get());
            }
        }
    }

    private void shoot(int i) {
        Player player = players.get(i);
        ReleaseSpread spread = player.spread();
        Release release = player.style()
                .release()
                .scaled(
                        1 + spread.speedShare() * random.nextGaussian(),
                        1 + spread.spinShare() * random.nextGaussian());
        Line line = lines.get(i);
        double laydownM = LaneGeometry.boardToMetres(line.laydownBoard()) + spread.laydownM() * random.nextGaussian();
        double launchRad = line.launchRad() + spread.launchRad() * random.nextGaussian();
        Delivery delivery = Delivery.of(release, player.contact().ball().radiusM(), laydownM, launchRad);
        march.wear(delivery, player.hand(), player.contact(), film, oils.get(i));
        ballsAtTenFeet[(int) Math.round(LaneGeometry.metresToBoard(march.positionM(10 * LaneGeometry.FOOT_M)))]++;
        oils.get(i).rest(BETWEEN_SHOTS_S);
    }
}
