package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.pocket.PinCarry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineFinderTest {
    private static final double POCKET = 17.5;
    private static final double TOLERANCE = 0.0201;
    private static final double END_M = 39 * FOOT_M;

    private final LineFinder finder = Lanes.finder();
    private final OilPattern pattern = Lanes.pattern(39);
    private final OilFilm film = Lanes.fresh(pattern);

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void aStartingLineMeetsThePocketWithinTwoDegreesOfTheStylesOwnAngle(String style) {
        Player player = Lanes.player(style);
        Line line = Lanes.start(player, pattern);
        assertThat(finder.arrivalBoard(player, film, line)).isCloseTo(POCKET, within(TOLERANCE));
        assertThat(line.launchRad()).isCloseTo(player.style().naturalLaunchRad(), within(Math.toRadians(2)));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void aMoveGoesTwoBoardsWithTheFeetForOneAtTheArrows(String style) {
        Player player = Lanes.player(style, Lanes.DEFAULT_COVER, "wood");
        Line from = Lanes.start(Lanes.player(style), pattern);
        Line to = finder.moveToPocket(player, film, from).orElseThrow();
        assertThat(finder.arrivalBoard(player, film, to)).isCloseTo(POCKET, within(TOLERANCE));
        double feet = to.laydownBoard() - from.laydownBoard();
        assertThat(to.arrowsBoard() - from.arrowsBoard()).isCloseTo(feet / 2, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void feetAloneOrAimAloneFindThePocketToo(String style) {
        Player player = Lanes.player(style, Lanes.DEFAULT_COVER, "wood");
        Line from = Lanes.start(Lanes.player(style), pattern);
        Line feet = finder.moveFeetToPocket(player, film, from).orElseThrow();
        assertThat(finder.arrivalBoard(player, film, feet)).isCloseTo(POCKET, within(TOLERANCE));
        assertThat(feet.arrowsBoard()).isCloseTo(from.arrowsBoard(), within(1e-9));
        Line aim = finder.aimToPocket(player, film, from).orElseThrow();
        assertThat(finder.arrivalBoard(player, film, aim)).isCloseTo(POCKET, within(TOLERANCE));
        assertThat(aim.laydownBoard()).isEqualTo(from.laydownBoard());
        // More friction asks for feet further in, or a target further out.
        assertThat(feet.laydownBoard()).isGreaterThan(from.laydownBoard());
        assertThat(aim.arrowsBoard()).isLessThan(from.arrowsBoard());
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void aLeftHandersLineIsTheSameNumbersOnASymmetricLane(String style) {
        Player right = Lanes.player(style);
        Player left = new Player(right.style(), right.spread(), Hand.LEFT, right.contact());
        assertThat(Lanes.start(left, pattern)).isEqualTo(Lanes.start(right, pattern));
        Line line = Lanes.start(right, pattern);
        assertThat(finder.quality(left, film, line)).isEqualTo(finder.quality(right, film, line));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void theEdgesOfTheWindowAreTheExitsOfTheFarthestMissesThatHit(String style) {
        Player player = Lanes.player(style);
        Line start = Lanes.start(player, pattern);
        ExitWindow window = finder.movedWindow(player, film, start, END_M).orElseThrow();
        assertThat(finder.arrivalBoard(player, film, window.played())).isCloseTo(POCKET, within(TOLERANCE));
        assertThat(window.exitBoard()).isEqualTo(finder.exitBoard(player, film, window.played(), END_M));
        assertThat(window.exitBoard()).isBetween(window.lowBoard(), window.highBoard());
        for (double share = 0.02; share < 1; share += 0.02) {
            assertThat(hitsThroughExit(player, window, window.lowBoard(), share))
                    .isTrue();
            assertThat(hitsThroughExit(player, window, window.highBoard(), share))
                    .isTrue();
        }
        assertThat(hitsThroughExit(player, window, window.lowBoard(), 1.05)).isFalse();
        assertThat(hitsThroughExit(player, window, window.highBoard(), 1.05)).isFalse();
    }

    /** Whether a shot from the same laydown hits that leaves a share of the way to an edge of the window. */
    private boolean hitsThroughExit(Player player, ExitWindow window, double edgeBoard, double share) {
        double wanted = window.exitBoard() + share * (edgeBoard - window.exitBoard());
        Line line = window.played();
        double low = -10;
        double high = 10;
        while (high - low > 1e-6) {
            double middle = (low + high) / 2;
            Line missed = Line.through(line.laydownBoard(), line.arrowsBoard() + middle);
            if (finder.exitBoard(player, film, missed, END_M) < wanted) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return PinCarry.isPocket(
                finder.arrivalBoard(player, film, Line.through(line.laydownBoard(), line.arrowsBoard() + low)));
    }

    @Test
    void withoutSpinNoLineMeetsThePocketFromTheOutside() {
        PlayingStyle dead = new PlayingStyle("dead", new Release(8, 0, 0, 0), 0.05, "test");
        Player player = Lanes.player(dead, Lanes.DEFAULT_COVER, Lanes.DEFAULT_SURFACE);
        Line far = new Line(5, 0.05);
        assertThat(finder.moveToPocket(player, film, far)).isEmpty();
    }

    /** Between a ball that falls into the gutter and one that does not the arrival jumps: that is no pocket line. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"plastic", "urethane", "strong-reactive"})
    void onABareLaneAGutterBallIsNoPocketLine(String cover) {
        OilFilm bare = OilFilm.bare(LaneGrid.DEFAULT);
        for (String style : Lanes.STYLES) {
            Player player = Lanes.player(style, cover, Lanes.DEFAULT_SURFACE);
            for (double deg = -3; deg <= 6; deg += 0.5) {
                finder.moveToPocket(player, bare, new Line(20, Math.toRadians(deg)))
                        .ifPresent(line -> assertThat(finder.arrivalBoard(player, bare, line))
                                .isCloseTo(POCKET, within(TOLERANCE)));
            }
        }
    }

    @Test
    void theArrowsAreWhereTheLineAims() {
        Line line = Line.through(20, 14);
        assertThat(line.arrowsBoard()).isCloseTo(14, within(1e-12));
        assertThat(line.moved(2).laydownBoard()).isEqualTo(22);
        assertThat(line.moved(2).arrowsBoard()).isCloseTo(15, within(1e-12));
        // One board at 15 ft is 0.339 degrees (computed).
        assertThat(Math.toDegrees(Line.through(10, 9).launchRad())).isCloseTo(0.339, within(0.0005));
    }
}
