package lanetide.squads.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.Delivery;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.bowler.LineFeel;
import lanetide.squads.fixture.Fixtures;
import lanetide.squads.play.Events;
import org.apache.commons.math3.stat.StatUtils;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FeelFinderTest {
    private static final int BALLS = 20_000;
    private static final RowMarch MARCH = new RowMarch(Events.PHYSICS.grid());

    /** Source: a regression of Apache Commons Math over twenty thousand balls thrown at random. */
    @ParameterizedTest
    @ValueSource(strings = {"straight", "tweener", "power"})
    void isTheRegressionOverManyBalls(String style) {
        Player player = player(style, "elite");
        OilFilm film = OilFilm.fresh(Events.PATTERN, Events.PHYSICS.grid());
        Line line = Line.through(20, 15);
        SimpleRegression regression = new SimpleRegression();
        double[] misses = new double[BALLS];
        double[] atArrows = new double[BALLS];
        double[] entriesRad = new double[BALLS];
        Random random = new Random(1);
        for (int i = 0; i < BALLS; i++) {
            double laydownM = LaneGeometry.boardToMetres(20) + player.spread().laydownM() * random.nextGaussian();
            double launchRad = line.launchRad() + player.spread().launchRad() * random.nextGaussian();
            var release = player.style()
                    .release()
                    .scaled(
                            1 + player.spread().speedShare() * random.nextGaussian(),
                            1 + player.spread().spinShare() * random.nextGaussian());
            double radiusM = player.contact().ball().radiusM();
            MARCH.readInPlay(Delivery.of(release, radiusM, laydownM, launchRad), player.hand(), player.contact(), film);
            atArrows[i] = new Line(LaneGeometry.metresToBoard(laydownM), launchRad).arrowsBoard() - 15;
            misses[i] = MARCH.arrivalBoard() - PinCarry.POCKET_BOARD;
            entriesRad[i] = MARCH.entryAngleRad();
            regression.addData(atArrows[i], misses[i]);
        }
        double[] left = new double[BALLS];
        for (int i = 0; i < BALLS; i++) {
            left[i] = misses[i] - regression.predict(atArrows[i]);
        }

        LineFeel feel = new FeelFinder(MARCH).feel(player, film, line);

        assertThat(feel.usualMissBoards()).isCloseTo(regression.getIntercept(), within(0.05));
        assertThat(feel.perArrowBoard()).isCloseTo(regression.getSlope(), within(0.1));
        assertThat(feel.unexplainedBoards()).isCloseTo(new StandardDeviation().evaluate(left), within(0.1));
        assertThat(feel.scatterBoards()).isCloseTo(new StandardDeviation().evaluate(misses), within(0.1));
        assertThat(feel.usualEntryRad()).isCloseTo(StatUtils.mean(entriesRad), within(0.002));
    }

    @Test
    void aHousePatternBringsAMissBackAndASportPatternDoesNot() {
        OilPattern house = OilPattern.of("house", 40 * LaneGeometry.FOOT_M, 25, 10);

        assertThat(feel(Events.PATTERN).perArrowBoard()).isGreaterThan(1.5);
        assertThat(feel(house).perArrowBoard())
                .as("boards at the pins for a board at the arrows, which is four by geometry alone")
                .isBetween(-0.5, 0.5);
    }

    private static LineFeel feel(OilPattern pattern) {
        var there = Fixtures.withPattern(Events.onePair(1, Events.bowler("a")), pattern);
        return new StartingLines(there, Events.PHYSICS)
                .on(pattern)
                .feel(StartingLines.player(Events.bowler("a"), there, Events.PHYSICS));
    }

    @Test
    void withoutScatterNothingIsLeftUnexplained() {
        Player exact = StartingLines.player(
                Events.bowler("a", Hand.RIGHT, "tweener", Events.withoutSpread(), "medium-reactive"),
                Events.onePair(1, Events.bowler("a")),
                Events.PHYSICS);
        OilFilm film = OilFilm.fresh(Events.PATTERN, Events.PHYSICS.grid());

        LineFeel feel = new FeelFinder(MARCH).feel(exact, film, Line.through(20, 15));

        assertThat(List.of(feel.perArrowBoard(), feel.unexplainedBoards(), feel.scatterBoards()))
                .containsOnly(0.0);
    }

    private static Player player(String style, String level) {
        var bowler = Events.bowler("a", Hand.RIGHT, style, Events.level(level), "medium-reactive");
        return StartingLines.player(bowler, Events.onePair(1, bowler), Events.PHYSICS);
    }
}
