package lanetide.oilflow;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.catalogue.Catalogue;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.SheetPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.HomeLines;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;

/** Players, patterns and lines that several tests and the validation table use. */
final class Lanes {
    static final Catalogue CATALOGUE = Catalogue.shipped();
    static final double FOOT_M = LaneGeometry.FOOT_M;
    static final List<String> STYLES = List.of("straight", "stroker", "tweener", "power");
    static final String DEFAULT_COVER = "medium-reactive";
    static final String DEFAULT_SURFACE = "hard-synthetic";

    /**
     * Scatter of a good player: half a board at the foul line and 0.17 degrees are 0.65 boards at the arrows, the
     * spread of averages above 220 (O'Keefe, US Bowler, July 2012: ten shots within two boards); the parts are
     * assumptions.
     */
    static final ReleaseSpread GOOD_SPREAD =
            new ReleaseSpread(0.5 * LaneGeometry.BOARD_M, Math.toRadians(0.17), 0.012, 0.03);

    /** Scatter of an elite bowler: 0.65 boards at the arrows as above; speed and revs as the level of that name. */
    static final ReleaseSpread ELITE_SPREAD = new ReleaseSpread(
            0.65 / Math.sqrt(2) * LaneGeometry.BOARD_M,
            0.65 / Math.sqrt(2) * LaneGeometry.BOARD_M / LaneGeometry.ARROWS_M,
            0.015,
            0.04);

    private static final Map<Coverstock, Contact> KNOWN_BALLS = new ConcurrentHashMap<>();

    private Lanes() {}

    static Player player(String style) {
        return player(style, DEFAULT_COVER, DEFAULT_SURFACE);
    }

    static Player player(String style, String cover, String surface) {
        return player(CATALOGUE.styles().get(style), cover, surface);
    }

    static Player player(PlayingStyle style, String cover, String surface) {
        BallSpec ball = BallSpec.of(CATALOGUE.covers().get(cover));
        Contact contact = Contact.between(ball, CATALOGUE.surfaces().get(surface));
        return new Player(style, GOOD_SPREAD, Hand.RIGHT, contact);
    }

    static Player elite(String style, String cover, String surface) {
        Player good = player(style, cover, surface);
        return new Player(good.style(), ELITE_SPREAD, good.hand(), good.contact());
    }

    static List<Player> field(String cover) {
        List<Player> field = new ArrayList<>();
        STYLES.forEach(style -> field.add(player(style, cover, DEFAULT_SURFACE)));
        return field;
    }

    /** The pattern of the length rule's rows. */
    static SheetPattern pattern(double feet) {
        return pattern(feet, 26, 3);
    }

    static SheetPattern pattern(double feet, double volumeMl, double ratio) {
        return OilPattern.of("test", feet * FOOT_M, volumeMl, ratio);
    }

    static OilFilm fresh(OilPattern pattern) {
        return OilFilm.fresh(pattern, LaneGrid.DEFAULT);
    }

    static LineFinder finder() {
        return new LineFinder(new RowMarch(LaneGrid.DEFAULT), new PinCarry());
    }

    static HomeLines homes(LineFinder finder, OilPattern pattern) {
        return new HomeLines(finder, pattern, Lanes::knownBalls);
    }

    /** Contacts are made once, so that home lines know them again. */
    static List<Contact> knownBalls(Coverstock own) {
        return CATALOGUE.knownCovers(own).stream()
                .map(cover -> KNOWN_BALLS.computeIfAbsent(cover, Lanes::onKnownSurface))
                .toList();
    }

    private static Contact onKnownSurface(Coverstock cover) {
        return Contact.between(BallSpec.of(cover), CATALOGUE.surfaces().get(DEFAULT_SURFACE));
    }

    /** Where a player starts on a fresh pattern. */
    static Line start(Player player, OilPattern pattern) {
        return homes(finder(), pattern)
                .start(player, fresh(pattern))
                .orElseThrow(() -> new AssertionError(player.style().id() + " finds no line"));
    }
}
