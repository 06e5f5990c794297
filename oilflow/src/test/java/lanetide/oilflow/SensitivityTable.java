package lanetide.oilflow;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.ForwardRollSplit;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.friction.MixedLubrication;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneSurface;
import lanetide.oilflow.lane.LaneSurvey;
import lanetide.oilflow.lane.LaneSurvey.Station;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;

/**
 * What the uncertain values of the model do to what it says: each moved over its range by itself, the others as usual.
 */
final class SensitivityTable {
    private static final int GAMES = 15;
    private static final int BLOCKS = 3;
    private static final double THOUSANDTH_M = 0.001 * 0.0254;
    private static final LaneSurface SURFACE = Lanes.CATALOGUE.surfaces().get(Lanes.DEFAULT_SURFACE);
    private static final Coverstock COVER = Lanes.CATALOGUE.covers().get(Lanes.DEFAULT_COVER);

    private SensitivityTable() {}

    static String markdown() {
        Effect usual = new Model(Uncertain.DRY, Uncertain.DRY.usual).effect();
        String head = String.format(
                Locale.ROOT,
                "| Value | Usual | Range | Exit board, mean of four styles | Head film lost in %d games | Oil past the end |%n"
                        + "|---|---|---|---|---|---|%n| all as usual | | | %.1f | %.0f %% | %.3f mL |%n",
                GAMES,
                usual.exitBoard,
                usual.headLossPercent,
                usual.carrydownMl);
        return head + Arrays.stream(Uncertain.values()).map(Uncertain::row).collect(Collectors.joining());
    }

    /**
     * A value that is not known well, with the range it may lie in: published where the README names a source, else
     * assumed.
     */
    private enum Uncertain {
        DRY("dry friction", SURFACE.dryFriction(), 0.19, 0.27),
        FLUID("friction under a thick film", MixedLubrication.DEFAULT_FLUID, 0.002, 0.01),
        ROUGHNESS("share of the roughness that stands up", MixedLubrication.LOADED_ROUGHNESS_SHARE, 0.03, 0.1),
        COVERAGE("coverage (1/um)", ForwardRollSplit.DEFAULT_COVERAGE_PER_UM, 2, 8),
        OVERLAP("flare overlap", COVER.flareOverlap(), 0.06, 0.23),
        TOWEL("film left by the towel, share of the roughness", BallOil.DEFAULT_TOWEL_SHARE, 0, 0.1),
        DECAY("lengthwise decay", OilPattern.DEFAULT_DECAY, 5, 6),
        FLOOR("lengthwise floor", OilPattern.DEFAULT_FLOOR, 0.04, 0.1),
        LAUNCH("natural launch, degrees more", 0, -0.5, 0.5),
        ROTATION("axis rotation, degrees more", 0, -10, 10),
        TILT("cross tilt up to the left, thousandths of an inch", 0, -40, 40),
        CROWN("crown, thousandths of an inch", 0, -40, 40);

        private final String words;
        private final double usual;
        private final double low;
        private final double high;

        Uncertain(String words, double usual, double low, double high) {
            this.words = words;
            this.usual = usual;
            this.low = low;
            this.high = high;
        }

        String row() {
            Effect atLow = new Model(this, low).effect();
            Effect atHigh = new Model(this, high).effect();
            return String.format(
                    Locale.ROOT,
                    "| %s | %s | %s to %s | %.1f to %.1f | %.0f to %.0f %% | %.3f to %.3f mL |%n",
                    words,
                    usual,
                    low,
                    high,
                    atLow.exitBoard,
                    atHigh.exitBoard,
                    atLow.headLossPercent,
                    atHigh.headLossPercent,
                    atLow.carrydownMl,
                    atHigh.carrydownMl);
        }
    }

    /** What the model says under some values. */
    private record Effect(double exitBoard, double headLossPercent, double carrydownMl) {}

    /** The usual model with one value moved. */
    private record Model(Uncertain moved, double to) {
        double value(Uncertain wanted) {
            return wanted == moved ? to : wanted.usual;
        }

        Effect effect() {
            OilPattern pattern = Lanes.pattern(39).falling(value(Uncertain.DECAY), value(Uncertain.FLOOR));
            OilFilm fresh = Lanes.fresh(pattern);
            OilFilm shaped = fresh.on(new LaneSurvey(List.of(
                    new Station(0, THOUSANDTH_M * value(Uncertain.TILT), THOUSANDTH_M * value(Uncertain.CROWN)))));
            List<Player> field = Lanes.STYLES.stream().map(this::player).toList();
            HomeLines homes = new HomeLines(Lanes.finder(), pattern, own -> List.of(contact()));
            List<Line> starts = field.stream()
                    .map(player -> homes.start(player, fresh).orElseThrow())
                    .toList();
            double exit = IntStream.range(0, field.size())
                    .mapToDouble(i -> Lanes.finder().exitBoard(field.get(i), shaped, starts.get(i), pattern.lengthM()))
                    .average()
                    .orElseThrow();
            double lost = 0;
            double carried = 0;
            for (long seed = 1; seed <= BLOCKS; seed++) {
                OilFilm film = new Block(field, starts, shaped.copy(), seed, value(Uncertain.TOWEL)).play(GAMES).film;
                lost += 100 * (1 - TransitionRows.leastLeft(film, fresh, 0, 20)) / BLOCKS;
                carried += film.volumePastMl(pattern.lengthM()) / BLOCKS;
            }
            return new Effect(exit, lost, carried);
        }

        private Player player(String name) {
            PlayingStyle style = Lanes.CATALOGUE.styles().get(name);
            Release release = style.release();
            PlayingStyle changed = new PlayingStyle(
                    style.id(),
                    new Release(
                            release.speedMps(),
                            release.spinRadps(),
                            release.axisRotationRad() + Math.toRadians(value(Uncertain.ROTATION)),
                            release.axisTiltRad()),
                    style.naturalLaunchRad() + Math.toRadians(value(Uncertain.LAUNCH)),
                    style.source());
            return new Player(changed, Lanes.GOOD_SPREAD, Hand.RIGHT, contact());
        }

        private Contact contact() {
            Coverstock cover = new Coverstock(
                    COVER.id(),
                    COVER.frictionFactor(),
                    COVER.roughnessUm(),
                    value(Uncertain.OVERLAP),
                    COVER.absorptionS(),
                    COVER.source());
            double roughnessUm = Math.hypot(SURFACE.roughnessUm(), COVER.roughnessUm());
            return new Contact(
                    BallSpec.of(cover),
                    new MixedLubrication(
                            value(Uncertain.DRY), value(Uncertain.FLUID), value(Uncertain.ROUGHNESS) * roughnessUm),
                    new ForwardRollSplit(value(Uncertain.COVERAGE)));
        }
    }
}
