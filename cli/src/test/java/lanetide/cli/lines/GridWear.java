package lanetide.cli.lines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.PlayedLine;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.squads.equipment.Physics;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Wears a lane: right-handers of the four styles take turns, each from his natural line on the fresh pattern, and move
 * two and one before every game. Every lane has the same luck, so that lanes differ by what they are alone.
 */
final class GridWear {
    /** First balls that a game of one bowler leaves on the two lanes of a pair, as in the oil model's own rows. */
    private static final int FIRST_BALLS_A_GAME = 12;

    private static final double BETWEEN_SHOTS_S = 120;

    private final Physics physics;
    private final LaneSurface surface;
    private final Function<String, Kind> kinds;
    private final Function<Kind, Optional<PlayedLine>> lines;
    private final RowMarch march;
    private final LineFinder finder;

    /**
     * Wear of one lane.
     *
     * @param physics its laws
     * @param surface what it is made of
     * @param kinds the bowler of a style
     * @param lines his natural line on it
     */
    GridWear(
            Physics physics,
            LaneSurface surface,
            Function<String, Kind> kinds,
            Function<Kind, Optional<PlayedLine>> lines) {
        this.physics = physics;
        this.surface = surface;
        this.kinds = kinds;
        this.lines = lines;
        this.march = new RowMarch(physics.grid());
        this.finder = new LineFinder(march, physics.carry());
    }

    /** One who takes turns. */
    private static final class Bowler {
        final Player player;
        final BallOil oil;
        final NormalizedGaussianSampler luck;
        Line line;

        Bowler(Player player, Line line) {
            this.player = player;
            this.line = line;
            this.oil = player.contact().cleanBall();
            this.luck = ZigguratSampler.NormalizedGaussian.of(
                    new RandomStreams(1).stream("grid/" + player.style().id() + "/release"));
        }
    }

    /** Games by one bowler's worth of first balls each, shared by all who have a line; all move before each. */
    void play(int games, OilFilm film) {
        List<Bowler> field = field();
        int turn = 0;
        for (int game = 0; game < games; game++) {
            field.forEach(bowler -> bowler.line =
                    finder.moveToPocket(bowler.player, film, bowler.line).orElse(bowler.line));
            for (int ball = 0; ball < FIRST_BALLS_A_GAME; ball++) {
                shoot(field.get(turn++ % field.size()), film);
            }
        }
    }

    private List<Bowler> field() {
        List<Bowler> field = new ArrayList<>();
        for (String style : CoachGrid.STYLES) {
            Kind kind = kinds.apply(style);
            Player player = new Player(
                    kind.style(), kind.level().spread(), kind.hand(), physics.contact(kind.cover(), surface));
            lines.apply(kind).ifPresent(line -> field.add(new Bowler(player, line.line())));
        }
        return field;
    }

    private void shoot(Bowler bowler, OilFilm film) {
        Player player = bowler.player;
        ReleaseSpread spread = player.spread();
        Release release = player.style()
                .release()
                .scaled(1 + spread.speedShare() * bowler.luck.sample(), 1 + spread.spinShare() * bowler.luck.sample());
        double laydownM =
                LaneGeometry.boardToMetres(bowler.line.laydownBoard()) + spread.laydownM() * bowler.luck.sample();
        double launchRad = bowler.line.launchRad() + spread.launchRad() * bowler.luck.sample();
        Delivery delivery = Delivery.of(release, player.contact().ball().radiusM(), laydownM, launchRad);
        march.wear(delivery, player.hand(), player.contact(), film, bowler.oil);
        bowler.oil.rest(BETWEEN_SHOTS_S);
    }
}
