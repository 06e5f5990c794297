package lanetide.oilflow;

import static lanetide.oilflow.Lanes.FOOT_M;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.ball.PlayingStyle;
import lanetide.oilflow.ball.Release;
import lanetide.oilflow.film.BallOil;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.lane.LaneGrid;
import lanetide.oilflow.line.BallChange;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineAdvisor;
import lanetide.oilflow.line.LineBasis;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.LineSearch;
import lanetide.oilflow.line.NearestLine;
import lanetide.oilflow.line.PlayedLine;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Contact;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LineAdvisorTest {
    private static final double END_M = 39 * FOOT_M;
    private static final double TOLERANCE = 0.0201;
    /** Error of the shares that a described line carries (measured, see LineAdvisor). */
    private static final double SHARE_ERROR = 0.01;

    private final LineFinder finder = Lanes.finder();
    private final LineAdvisor advisor = advisor(Lanes.pattern(39));
    private final LineSearch search = new LineSearch(finder);
    private final OilFilm film = Lanes.fresh(Lanes.pattern(39));

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void everyLineMeetsThePocketAndIsDescribedAsItRuns(String style) {
        Player player = Lanes.player(style, Lanes.DEFAULT_COVER, "textured-synthetic");
        for (PlayedLine played :
                List.of(natural(player), advisor.free(player, film).orElseThrow())) {
            assertThat(played.path().arrivalBoard()).isCloseTo(PinCarry.POCKET_BOARD, within(TOLERANCE));
            assertThat(played.path().laydownBoard()).isCloseTo(played.line().laydownBoard(), within(1e-9));
            assertThat(played.path().exitBoard()).isEqualTo(finder.exitBoard(player, film, played.line(), END_M));
            assertThat(played.quality().strikeShare()).isBetween(0.0, 0.88);
        }
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void whoIsFreeToChangeHisAngleStrikesAtLeastAsOften(String style) {
        for (String surface : List.of("hard-synthetic", "wood")) {
            Player player = Lanes.player(style, Lanes.DEFAULT_COVER, surface);
            PlayedLine free = advisor.free(player, film).orElseThrow();
            assertThat(free.basis()).isEqualTo(LineBasis.FREE);
            assertThat(free.quality().strikeShare())
                    .as("%s on %s", style, surface)
                    .isGreaterThanOrEqualTo(natural(player).quality().strikeShare() - SHARE_ERROR);
            assertThat(Math.abs(free.line().launchRad() - player.style().naturalLaunchRad()))
                    .isLessThan(Math.toRadians(3.25));
        }
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void theLineNearbyStaysWithinTwoBoardsAndHalfADegreeAndIsNoWorse(String style) {
        Player player = Lanes.player(style);
        Line present = natural(player).line();
        Line near = search.near(player, film, present).orElseThrow();
        assertThat(Math.abs(near.laydownBoard() - present.laydownBoard())).isLessThanOrEqualTo(2 + 1e-9);
        assertThat(Math.abs(near.launchRad() - present.launchRad())).isLessThanOrEqualTo(Math.toRadians(0.5) + 1e-9);
        assertThat(finder.arrivalBoard(player, film, near)).isCloseTo(PinCarry.POCKET_BOARD, within(TOLERANCE));
        assertThat(finder.quality(player, film, near).strikeShare())
                .isGreaterThanOrEqualTo(finder.quality(player, film, present).strikeShare() - 1e-3);
    }

    @Test
    void nobodyMovesHisFeetOffTheLane() {
        Player player = Lanes.player("straight");
        assertThat(search.near(player, film, new Line(-1, 0))).isEmpty();
        search.near(player, film, new Line(2.5, 0))
                .ifPresent(near -> assertThat(near.laydownBoard()).isGreaterThanOrEqualTo(2));
    }

    /** A ball that never turns stays short on every line at a style's angle; one that hooks at once comes in beyond. */
    @ParameterizedTest(name = "{0}: {2}")
    @CsvSource({"3, 0.09, TOO_LITTLE_HOOK", "70, -0.04, TOO_MUCH_HOOK"})
    void whereNoLineMeetsThePocketTheNearestIsToldAndWhy(
            double spinRadps, double launchRad, NearestLine.Reason reason) {
        PlayingStyle style =
                new PlayingStyle("odd", new Release(7, spinRadps, Math.PI / 3, 0), launchRad, "assumption");
        Player player = Lanes.player(style, "strong-reactive", "wood");
        assertThat(advisor.natural(player, film)).isEmpty();

        NearestLine nearest = advisor.nearest(player, film);

        double arrival = finder.arrivalBoard(player, film, nearest.line());
        assertThat(nearest.reason()).isEqualTo(reason);
        assertThat(nearest.missBoards()).isEqualTo(arrival - PinCarry.POCKET_BOARD);
        for (int boards : List.of(-1, 1)) {
            double neighbour = finder.arrivalBoard(player, film, nearest.line().moved(boards));
            assertThat(Math.abs(neighbour - PinCarry.POCKET_BOARD))
                    .isGreaterThanOrEqualTo(Math.abs(nearest.missBoards()) - 0.5);
        }
    }

    /** A ball that rolls from the start runs straight: a miss at 15 ft is four times as large at 60 ft (geometry). */
    @Test
    void aRollingBallHasAQuarterOfThePocketToMissByAtTheArrows() {
        double speedMps = 8;
        BallSpec ball = BallSpec.of(Lanes.CATALOGUE.covers().get(Lanes.DEFAULT_COVER));
        PlayingStyle roller =
                new PlayingStyle("roller", new Release(speedMps, speedMps / ball.radiusM(), 0, 0), 0, "rolling");
        Player player = Lanes.player(roller, Lanes.DEFAULT_COVER, Lanes.DEFAULT_SURFACE);
        PlayedLine line = natural(player);
        double quarter = PinCarry.POCKET_HALF_WIDTH_BOARDS * LaneGeometry.ARROWS_M / LaneGeometry.HEAD_PIN_M;
        assertThat(line.path().arrivalBoard()).isCloseTo(PinCarry.POCKET_BOARD, within(TOLERANCE));
        assertThat(line.missRoom().outsideBoards()).isCloseTo(quarter, within(0.02));
        assertThat(line.missRoom().insideBoards()).isCloseTo(quarter, within(0.02));
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener", "power"})
    void withinTheMissRoomTheShotHitsThePocketAndJustBeyondItDoesNot(String style) {
        Player player = Lanes.player(style);
        PlayedLine line = natural(player);
        double out = line.missRoom().outsideBoards();
        double in = line.missRoom().insideBoards();
        for (double share = 0; share <= 1; share += 0.125) {
            assertThat(hitsWhenMissedBy(player, line, -share * (out - 0.02))).isTrue();
            assertThat(hitsWhenMissedBy(player, line, share * (in - 0.02))).isTrue();
        }
        assertThat(hitsWhenMissedBy(player, line, -out - 0.02)).isFalse();
        assertThat(hitsWhenMissedBy(player, line, in + 0.02)).isFalse();
    }

    private boolean hitsWhenMissedBy(Player player, PlayedLine line, double inwardBoards) {
        Line missed = Line.through(line.line().laydownBoard(), line.line().arrowsBoard() + inwardBoards);
        return PinCarry.isPocket(finder.arrivalBoard(player, film, missed));
    }

    /** Fresh or worn, a left-hander on the mirrored lane plays the mirrored line, to the last bit. */
    @ParameterizedTest(name = "seed {0}")
    @CsvSource({"1", "2", "3"})
    void aLeftHanderOnTheMirroredLanePlaysTheSameNumbers(long seed) {
        OilFilm wornByRight = worn(Hand.RIGHT, seed);
        OilFilm wornByLeft = worn(Hand.LEFT, seed);
        for (String style : Lanes.STYLES) {
            Player right = Lanes.player(style);
            Player left = new Player(right.style(), right.spread(), Hand.LEFT, right.contact());
            assertThat(advisor.natural(left, wornByLeft))
                    .as("%s, seed %d", style, seed)
                    .isEqualTo(advisor.natural(right, wornByRight));
            assertThat(advisor.free(left, wornByLeft))
                    .as("%s, seed %d", style, seed)
                    .isEqualTo(advisor.free(right, wornByRight));
        }
    }

    private OilFilm worn(Hand hand, long seed) {
        OilFilm worn = film.copy();
        RandomGenerator random = new Well19937c(seed);
        RowMarch march = new RowMarch(LaneGrid.DEFAULT);
        Player player = Lanes.player("tweener");
        BallOil oil = new BallOil(player.contact().ball(), BallOil.DEFAULT_TOWEL_SHARE);
        for (int shot = 0; shot < 60; shot++) {
            double laydownM = LaneGeometry.boardToMetres(18 + random.nextGaussian());
            Delivery delivery = Delivery.of(
                    player.style().release(),
                    player.contact().ball().radiusM(),
                    laydownM,
                    player.style().naturalLaunchRad());
            march.wear(delivery, hand, player.contact(), worn, oil);
            oil.rest(60);
        }
        return worn;
    }

    @Test
    void anotherBallIsAdvisedOnlyIfItGainsEnoughAndFlaresAlike() {
        for (double[] pattern : new double[][] {{36, 26, 3}, {39, 23, 5}, {40, 23, 8}}) {
            OilPattern laid = Lanes.pattern(pattern[0], pattern[1], pattern[2]);
            OilFilm fresh = Lanes.fresh(laid);
            for (String style : Lanes.STYLES) {
                Player player = Lanes.player(style);
                Line present =
                        advisor(laid).natural(player, fresh).orElseThrow().line();
                advisor.ballChange(player, fresh, present, allCovers()).ifPresent(change -> {
                    assertThat(change.gain()).isGreaterThanOrEqualTo(LineAdvisor.MIN_GAIN);
                    assertThat(change.cover().id()).endsWith("-reactive");
                    assertThat(change.stronger()).isEqualTo(change.cover().id().startsWith("strong"));
                });
            }
        }
    }

    /**
     * On long heavy oil a cover with half the friction still slides at the pins and enters flat; stronger ones do not.
     */
    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"straight", "stroker", "tweener"})
    void aBallTooWeakForTheOilIsExchangedForAStrongerOne(String style) {
        Coverstock weak = new Coverstock("too weak", 0.5, 0.1, 0.14, 420, "test");
        OilFilm heavy = Lanes.fresh(Lanes.pattern(45, 30, 3));
        Player player = withCover(style, weak);
        Line present = advisor(Lanes.pattern(45, 30, 3))
                .natural(player, heavy)
                .orElseThrow()
                .line();
        BallChange change =
                advisor.ballChange(player, heavy, present, allCovers()).orElseThrow();
        assertThat(change.stronger()).isTrue();
        assertThat(change.gain())
                .isGreaterThanOrEqualTo(LineAdvisor.MIN_GAIN)
                .isLessThanOrEqualTo(change.strikeShare()
                        - finder.fineQuality(player, heavy, present).strikeShare()
                        + SHARE_ERROR);
    }

    private static Player withCover(String style, Coverstock cover) {
        Contact contact =
                Contact.between(BallSpec.of(cover), Lanes.CATALOGUE.surfaces().get(Lanes.DEFAULT_SURFACE));
        return new Player(Lanes.CATALOGUE.styles().get(style), Lanes.GOOD_SPREAD, Hand.RIGHT, contact);
    }

    private static List<Contact> allCovers() {
        return Lanes.CATALOGUE.covers().keySet().stream()
                .map(cover ->
                        Lanes.player("tweener", cover, Lanes.DEFAULT_SURFACE).contact())
                .toList();
    }

    private LineAdvisor advisor(OilPattern pattern) {
        return new LineAdvisor(finder, Lanes.homes(finder, pattern), pattern.lengthM());
    }

    private PlayedLine natural(Player player) {
        return advisor.natural(player, film).orElseThrow();
    }
}
