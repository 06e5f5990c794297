package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.ExitWindow;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LineFinderTest {
    private static final double POCKET = 17.5;
    private static final double TOLERANCE = 0.0201;

    private final LineFinder finder = Lanes.finder();
    private final OilFilm film = Lanes.fresh(Lanes.pattern(39));

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void theNaturalLineMeetsThePocketAtTheNaturalAngle(String style) {
        Player player = Lanes.player(style);
        Line line = Lanes.natural(player, film);
        assertThat(finder.arrivalBoard(player, film, line)).isCloseTo(POCKET, within(TOLERANCE));
        assertThat(line.launchRad()).isEqualTo(player.style().naturalLaunchRad());
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void aMoveGoesTwoBoardsWithTheFeetForOneAtTheArrows(String style) {
        Player player = Lanes.player(style, Lanes.DEFAULT_COVER, "wood");
        Line from = Lanes.natural(Lanes.player(style), film);
        Line to = finder.moveToPocket(player, film, from).orElseThrow();
        assertThat(finder.arrivalBoard(player, film, to)).isCloseTo(POCKET, within(TOLERANCE));
        double feet = to.laydownBoard() - from.laydownBoard();
        assertThat(to.arrowsBoard() - from.arrowsBoard()).isCloseTo(feet / 2, within(1e-9));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void aLeftHandersLineIsTheSameNumbersOnASymmetricLane(String style) {
        Player right = Lanes.player(style);
        Player left = new Player(right.style(), right.spread(), Hand.LEFT, right.contact());
        assertThat(Lanes.natural(left, film)).isEqualTo(Lanes.natural(right, film));
        Line line = Lanes.natural(right, film);
        assertThat(finder.quality(left, film, line)).isEqualTo(finder.quality(right, film, line));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void theWindowHoldsTheLineTheBowlerWouldChoose(String style) {
        Player player = Lanes.player(style);
        ExitWindow window = finder.window(player, film, Lanes.natural(player, film), 39 * FOOT_M)
                .orElseThrow();
        assertThat(window.bestBoard()).isBetween(window.lowBoard(), window.highBoard());
        assertThat(finder.exitBoard(player, film, window.best(), 39 * FOOT_M)).isEqualTo(window.bestBoard());
        assertThat(finder.arrivalBoard(player, film, window.best())).isCloseTo(POCKET, within(TOLERANCE));
        assertThat(window.strikeShare())
                .isEqualTo(finder.quality(player, film, window.best()).strikeShare());
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
                finder.atAngle(player, bare, Math.toRadians(deg))
                        .ifPresent(line -> assertThat(finder.arrivalBoard(player, bare, line))
                                .isCloseTo(POCKET, within(TOLERANCE)));
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
