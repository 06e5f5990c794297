package lanetide.squads.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.lane.LaneGeometry;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.line.LineFinder;
import lanetide.oilflow.line.Player;
import lanetide.oilflow.motion.RowMarch;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.measured.BallSeen;
import lanetide.squads.measured.BallThrown;
import lanetide.squads.measured.When;
import lanetide.squads.model.Bowler;
import lanetide.squads.study.Playable;
import org.apache.commons.math3.stat.descriptive.SummaryStatistics;
import org.junit.jupiter.api.Test;

/** Balls of which not all was noted: what is drawn for it, and how far apart that is. */
class BallDrawsTest {
    private static final Playable PLAYABLE = Playable.of(TwoPairs.EVENT);
    private static final OilFilm FRESH =
            OilFilm.fresh(TwoPairs.EVENT.pattern(), PLAYABLE.physics().grid());
    private static final When FOUND = new When("A", 0);
    private static final int DRAWS = 2_000;

    /** The stroker of the first group, on lanes 1 and 2. */
    private static final Bowler STROKER =
            TwoPairs.EVENT.squads().get(0).groups().get(0).bowlers().get(1);

    private static final Player PLAYER = StartingLines.player(STROKER, TwoPairs.EVENT, PLAYABLE.physics());

    private static BallThrown ball(OptionalInt lane, Optional<Bowler> bowler, double... laydownAndArrows) {
        OptionalDouble[] boards = IntStream.range(0, 2)
                .mapToObj(i -> Double.isNaN(laydownAndArrows[i])
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(laydownAndArrows[i]))
                .toArray(OptionalDouble[]::new);
        return new BallThrown(
                lane,
                FOUND,
                bowler.map(Bowler::id),
                new BallSeen(boards[0], boards[1], Optional.empty(), OptionalDouble.of(17), 0.5),
                OptionalDouble.of(STROKER.style().release().speedMps()),
                OptionalDouble.of(STROKER.style().release().spinRadps()),
                "balls.csv line 2");
    }

    private static BallDraws draws(int playing) {
        return new BallDraws(PLAYABLE, new RandomStreams(5).forReplication(playing));
    }

    private static SummaryStatistics boards(BallThrown ball, double distanceM) {
        SummaryStatistics boards = new SummaryStatistics();
        IntStream.range(1, DRAWS).forEach(i -> boards.addValue(draws(i).passed(ball, FRESH, distanceM)));
        return boards;
    }

    private static Line usual() {
        Line home = PLAYABLE.lines().on(TwoPairs.EVENT.pattern()).of(PLAYER);
        return finder().moveToPocket(PLAYER, FRESH, home).orElseThrow();
    }

    private static LineFinder finder() {
        return new LineFinder(
                new RowMarch(PLAYABLE.physics().grid()), PLAYABLE.physics().carry());
    }

    @Test
    void nothingIsDrawnOfABallOfWhichAllWasNoted() {
        BallThrown ball = ball(OptionalInt.of(1), Optional.of(STROKER), 20, 14);
        Line line = Line.through(20, 14);

        assertThat(draws(1).lane(ball)).isEqualTo(1);
        assertThat(draws(1).met(ball, FRESH)).isEqualTo(finder().arrivalBoard(PLAYER, FRESH, line));
        assertThat(draws(2).met(ball, FRESH)).isEqualTo(draws(1).met(ball, FRESH));
        assertThat(draws(1).passed(ball, FRESH, 12)).isEqualTo(finder().exitBoard(PLAYER, FRESH, line, 12));
    }

    @Test
    void whereNoLaneWasNotedItIsOneOfThePairOfItsBowler() {
        BallThrown ball = ball(OptionalInt.empty(), Optional.of(STROKER), 20, 14);

        List<Integer> lanes =
                IntStream.range(1, 400).mapToObj(i -> draws(i).lane(ball)).toList();
        assertThat(lanes).containsOnly(1, 2);
        // Half of 399, give or take four standard deviations of 10.
        assertThat(lanes).filteredOn(lane -> lane == 1).hasSizeBetween(160, 240);
    }

    @Test
    void whereNobodyNotedLaneAndBowlerItIsAnybodysOfTheSquadOnHisOwnPair() {
        BallThrown ball = ball(OptionalInt.empty(), Optional.empty(), 20, 14);

        assertThat(IntStream.range(1, 400).mapToObj(i -> draws(i).lane(ball)).collect(Collectors.toSet()))
                .containsExactlyInAnyOrder(1, 2, 3, 4);
    }

    @Test
    void whereNobodyNotedTheBowlerItIsOneOfThoseOnThePairOfItsLane() {
        BallThrown ball = ball(OptionalInt.of(3), Optional.empty(), 20, 14);
        List<Double> theirs = new ArrayList<>();
        for (Bowler bowler : TwoPairs.EVENT.squads().get(0).groups().get(1).bowlers()) {
            theirs.add(draws(1).met(ball(OptionalInt.of(3), Optional.of(bowler), 20, 14), FRESH));
        }

        List<Double> drawn =
                IntStream.range(1, 200).mapToObj(i -> draws(i).met(ball, FRESH)).toList();
        assertThat(drawn).allSatisfy(met -> assertThat(met).isIn(theirs));
        assertThat(drawn.stream().distinct())
                .hasSameSizeAs(theirs.stream().distinct().toList());
    }

    /** A bowler finds the pocket: what is left are his own misses, to either side. */
    @Test
    void whereNoLineWasNotedItLiesAboutThatOfHisKindAndMeetsThePocketOnTheMean() {
        BallThrown ball = ball(OptionalInt.of(1), Optional.of(STROKER), Double.NaN, Double.NaN);
        SummaryStatistics laydown = boards(ball, 0);
        SummaryStatistics met = met(ball);

        assertThat(laydown.getMean()).isCloseTo(usual().laydownBoard(), within(1.5));
        assertThat(laydown.getStandardDeviation()).isBetween(2.0, 5.0);
        assertThat(met.getMean())
                .isCloseTo(PinCarry.POCKET_BOARD, within(4 * met.getStandardDeviation() / Math.sqrt(DRAWS) + 0.2));
        assertThat(met.getStandardDeviation()).isBetween(missBoards(), 4 * missBoards());
    }

    @Test
    void whereOneOfTwoBoardsWasNotedTheLineGoesThroughItAndTheOtherIsTheOneForThePocket() {
        double across = usual().laydownBoard() - usual().arrowsBoard();
        Line overThirteen = finder().moveFeetToPocket(PLAYER, FRESH, Line.through(13 + across, 13))
                .orElseThrow();
        SummaryStatistics laydown = boards(ball(OptionalInt.of(1), Optional.of(STROKER), Double.NaN, 13), 0);
        SummaryStatistics same = boards(ball(OptionalInt.of(1), Optional.of(STROKER), 19, Double.NaN), 0);

        assertThat(laydown.getMean())
                .isCloseTo(overThirteen.laydownBoard(), within(4 * missBoards() / Math.sqrt(DRAWS) + 0.02));
        assertThat(laydown.getStandardDeviation())
                .isCloseTo(missBoards(), within(4 * missBoards() / Math.sqrt(2.0 * DRAWS) + 0.02));
        assertThat(same.getStandardDeviation()).isLessThan(1e-9);
        assertThat(same.getMean()).isCloseTo(19, within(1e-9));
    }

    /** One deviation of his launch angle, at the arrows. */
    private static double missBoards() {
        return StrictMath.tan(PLAYER.spread().launchRad()) * LaneGeometry.ARROWS_M / LaneGeometry.BOARD_M;
    }

    @Test
    void theMoreWasNotedOfABallTheLessIsDrawn() {
        Line usual = usual();
        BallThrown all = ball(OptionalInt.of(1), Optional.of(STROKER), usual.laydownBoard(), usual.arrowsBoard());
        BallThrown oneBoard = ball(OptionalInt.of(1), Optional.of(STROKER), Double.NaN, usual.arrowsBoard());
        BallThrown noBoard = ball(OptionalInt.of(1), Optional.of(STROKER), Double.NaN, Double.NaN);

        assertThat(met(all).getStandardDeviation()).isZero();
        assertThat(met(oneBoard).getStandardDeviation()).isGreaterThan(0.5);
        assertThat(met(noBoard).getStandardDeviation())
                .isGreaterThan(1.1 * met(oneBoard).getStandardDeviation());
    }

    private static SummaryStatistics met(BallThrown ball) {
        SummaryStatistics boards = new SummaryStatistics();
        IntStream.range(1, DRAWS).forEach(i -> boards.addValue(draws(i).met(ball, FRESH)));
        return boards;
    }
}
