package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What the trade knows of a lane in play. None of it is written into the model: it must follow from the film. What does
 * not follow stands as open in the validation table instead.
 */
class TransitionTest {
    private final LineFinder finder = Lanes.finder();

    /** Common practice, no source. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void headsThinMostWhereMostBallsRun(long seed) {
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        Block block = new Block(Lanes.field(Lanes.DEFAULT_COVER), Lanes.pattern(39), seed).play(15);
        int mostThinned = 0;
        double mostLost = 0;
        int mostUsed = 0;
        for (int board = 1; board <= LaneGeometry.BOARDS; board++) {
            double lost = 1
                    - block.film.meanOnBoardUm(board, 9 * FOOT_M, 11 * FOOT_M)
                            / fresh.meanOnBoardUm(board, 9 * FOOT_M, 11 * FOOT_M);
            if (lost > mostLost) {
                mostLost = lost;
                mostThinned = board;
            }
            if (block.ballsAtTenFeet[board] > block.ballsAtTenFeet[mostUsed]) {
                mostUsed = board;
            }
        }
        assertThat(mostThinned)
                .as("most used board %d, seed %d", mostUsed, seed)
                .isBetween(mostUsed - 1, mostUsed + 1);
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0} ft")
    @ValueSource(ints = {33, 35, 37, 39, 41, 43, 45})
    void aHighRevPlayerStartsDeeperThanAStraightOne(int feet) {
        OilPattern pattern = Lanes.pattern(feet);
        assertThat(Lanes.start(Lanes.player("power"), pattern).laydownBoard())
                .isGreaterThan(Lanes.start(Lanes.player("straight"), pattern).laydownBoard());
    }

    /** Common practice, no source; on the two-zone map of HookTest a rise of friction in the heads does the same. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void thinnedHeadsSendAFixedLineHigh(String style) {
        Player player = Lanes.player(style);
        OilFilm film = Lanes.fresh(Lanes.pattern(39));
        Line line = Lanes.start(player, Lanes.pattern(39));
        scale(film, 0, 20, 0.5);
        assertThat(finder.arrivalBoard(player, film, line)).isGreaterThan(17.7);
    }

    /** The same with oil past the end of the pattern: light. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void carrydownSendsAFixedLineLight(String style) {
        Player player = Lanes.player(style);
        OilFilm film = Lanes.fresh(Lanes.pattern(39));
        Line line = Lanes.start(player, Lanes.pattern(39));
        int rows = film.grid().rows();
        for (int column = 0; column < film.grid().columns(); column++) {
            for (int row = 39; row < 45; row++) {
                film.cellsUm()[column * rows + row] += 0.2;
            }
        }
        assertThat(finder.arrivalBoard(player, film, line)).isLessThan(17);
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aHighRevPlayerAmongFlaringBallsMovesDeeper(long seed) {
        for (String cover : List.of("weak-reactive", Lanes.DEFAULT_COVER, "strong-reactive")) {
            assertThat(feetMoved("power", cover, 12, seed)).as(cover).isPositive();
            assertThat(feetMoved("power", cover, 24, seed)).as(cover).isPositive();
        }
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void straightPlayersAmongBallsThatDoNotFlareMoveTowardTheGutter(long seed) {
        assertThat(feetMoved("straight", "urethane", 24, seed)).isNegative();
        assertThat(feetMoved("straight", "plastic", 24, seed)).isNegative();
    }

    /** Common practice, no source. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void lessVolumeHooksEarlierAndHigher(String style) {
        Player player = Lanes.player(style);
        OilFilm more = Lanes.fresh(Lanes.pattern(39, 26, 3));
        OilFilm less = Lanes.fresh(Lanes.pattern(39, 20, 3));
        Line line = Lanes.start(player, Lanes.pattern(39, 26, 3));
        assertThat(finder.exitBoard(player, less, line, 30 * FOOT_M))
                .isGreaterThan(finder.exitBoard(player, more, line, 30 * FOOT_M));
        assertThat(finder.arrivalBoard(player, less, line)).isGreaterThan(finder.arrivalBoard(player, more, line));
    }

    /** Order of the surfaces: Bowlers Journal, November 2012, p. 25. */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void feetStandDeeperOnWoodThanOnTexturedThanOnHardSynthetic(String style) {
        OilFilm film = Lanes.fresh(Lanes.pattern(39));
        Line hard = Lanes.start(Lanes.player(style), Lanes.pattern(39));
        double last = hard.laydownBoard();
        for (String surface : List.of("textured-synthetic", "worn-synthetic", "wood")) {
            Player player = Lanes.player(style, Lanes.DEFAULT_COVER, surface);
            double feet = finder.moveToPocket(player, film, hard).orElseThrow().laydownBoard();
            assertThat(feet).as(surface).isGreaterThan(last);
            last = feet;
        }
    }

    /** Rose, Bowling This Month, September 2022: who lays oil down the lane and who does not; "several" is ours. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void urethaneAndPlasticCarrySeveralTimesTheOilOfAFlaringReactivePastTheEnd(long seed) {
        double reactive = pastTheEndMl(Lanes.DEFAULT_COVER, seed);
        assertThat(pastTheEndMl("urethane", seed)).isGreaterThan(3 * reactive);
        assertThat(pastTheEndMl("plastic", seed)).isGreaterThan(3 * reactive);
        assertThat(pastTheEndMl("strong-reactive", seed)).isLessThan(pastTheEndMl("urethane", seed) / 3);
    }

    /** Thompson, Breakdown and carrydown, then and now (2012): full after the first 8 to 16 ft. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3})
    void aBallThatDoesNotFlareTakesItsOilEarly(long seed) {
        OilFilm fresh = Lanes.fresh(Lanes.pattern(39));
        for (String cover : List.of("urethane", "plastic")) {
            OilFilm worn = new Block(Lanes.field(cover), Lanes.pattern(39), seed).play(15).film;
            assertThat(TransitionRows.takenBefore(fresh, worn, 16))
                    .as("taken before 16 ft by %s, seed %d", cover, seed)
                    .isGreaterThan(0.8 * (fresh.volumeMl() - worn.volumeMl()));
        }
    }

    private double feetMoved(String style, String cover, int games, long seed) {
        Block block = new Block(Lanes.field(cover), Lanes.pattern(39), seed);
        int i = Lanes.STYLES.indexOf(style);
        double before = block.lines.get(i).laydownBoard();
        block.play(games).moveAll();
        return block.lines.get(i).laydownBoard() - before;
    }

    private static double pastTheEndMl(String cover, long seed) {
        Block block = new Block(Lanes.field(cover), Lanes.pattern(39), seed).play(15);
        return block.film.volumePastMl(39 * FOOT_M);
    }

    private static void scale(OilFilm film, int fromFt, int toFt, double factor) {
        int rows = film.grid().rows();
        for (int column = 0; column < film.grid().columns(); column++) {
            for (int row = fromFt; row < toFt; row++) {
                film.cellsUm()[column * rows + row] *= factor;
            }
        }
    }
}
