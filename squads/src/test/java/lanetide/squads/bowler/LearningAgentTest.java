package lanetide.squads.bowler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Reckoning;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LearningAgentTest {
    private static final int LANE = 7;
    private static final int OTHER_LANE = 8;
    private static final double POCKET = PinCarry.POCKET_BOARD;
    private static final Offset<Double> EXACTLY = within(1e-9);
    private static final double ENTRY_RAD = StrictMath.toRadians(5);
    private static final Line START = Line.through(20, 12);

    /** His balls do all the same and he sees them well: he believes his last ball alone, and moves by all of it. */
    private static final LineFeel EXACT = feel(0, 2, 0);

    private static final Adaptation PROMPT = new Adaptation(0, 1, 1, 1, Reckoning.byOwnBalls(0));

    /** His balls scatter by two boards that he cannot explain. */
    private static final LineFeel WIDE = feel(0, 2, 2);

    @Test
    void beginsEveryLaneWithTheLineHeBrought() {
        LearningAgent agent = agent(PROMPT, EXACT);

        assertThat(agent.line(LANE)).isEqualTo(START);
        assertThat(agent.line(OTHER_LANE)).isEqualTo(START);
    }

    @ParameterizedTest(name = "a ball at {0} boards off the pocket")
    @CsvSource({"2, 22, 13", "-2, 18, 11", "4, 24, 14", "2.5, 22.5, 13.25", "2.2, 22, 13"})
    void movesTwoBoardsWithTheFeetToOneAtTheArrows(double off, double laydown, double arrows) {
        LearningAgent agent = agent(PROMPT, EXACT);

        learn(agent, LANE, POCKET + off, 0);

        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(laydown, EXACTLY);
        assertThat(agent.line(LANE).arrowsBoard()).isCloseTo(arrows, EXACTLY);
    }

    @Test
    void staysWhileHisBeliefIsInsideTheDeadBand() {
        LearningAgent agent = agent(new Adaptation(0, 2, 1, 1, Reckoning.byOwnBalls(0)), EXACT);

        learn(agent, LANE, POCKET + 2, 0);
        assertThat(agent.line(LANE)).isEqualTo(START);
        learn(agent, LANE, POCKET + 2.1, 0);
        assertThat(agent.line(LANE)).isNotEqualTo(START);
    }

    @Test
    void withoutGainHeNeverMoves() {
        LearningAgent agent = agent(new Adaptation(0, 0, 0, 1, Reckoning.byOwnBalls(0.3)), EXACT);

        for (int shot = 0; shot < 100; shot++) {
            learn(agent, LANE, POCKET + 10, 0);
        }

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void watchesALaneForHisPatienceBeforeHeMovesAgain() {
        LearningAgent agent = agent(new Adaptation(0, 1, 1, 3, Reckoning.byOwnBalls(0)), EXACT);

        for (int shot = 1; shot <= 2; shot++) {
            learn(agent, LANE, POCKET + 3, 0);
            assertThat(agent.line(LANE)).isEqualTo(START);
        }
        learn(agent, LANE, POCKET + 3, 0);
        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(23, EXACTLY);
        learn(agent, LANE, POCKET + 3, 0);
        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(23, EXACTLY);
    }

    @Test
    void aMissThatHisReleaseExplainsIsNoReasonToMove() {
        LearningAgent agent = agent(PROMPT, EXACT);

        learn(agent, LANE, POCKET + 4, 2);

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void whereThePatternBringsMissesBackHeReadsThemTheOtherWay() {
        LearningAgent agent = agent(PROMPT, feel(0, -1.5, 0));

        learn(agent, LANE, POCKET + 3, -2);
        assertThat(agent.line(LANE)).isEqualTo(START);
        learn(agent, LANE, POCKET + 3, 2);
        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(26, EXACTLY);
    }

    @Test
    void takesTheMissHeIsUsedToForNone() {
        LearningAgent agent = agent(PROMPT, feel(1.5, 2, 0));

        learn(agent, LANE, POCKET + 1.5, 0);

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void theMoreHisBallsScatterTheMoreOfThemHeNeeds() {
        assertThat(ballsBeforeHeMoves(WIDE)).isGreaterThan(2);
        assertThat(ballsBeforeHeMoves(feel(0, 2, 4))).isGreaterThan(2 * ballsBeforeHeMoves(WIDE));
    }

    @Test
    void whoSeesWorseNeedsMoreBalls() {
        Adaptation blurred = new Adaptation(3, 1, 1, 1, Reckoning.byOwnBalls(0.3));

        assertThat(ballsBeforeHeMoves(blurred, WIDE)).isGreaterThan(ballsBeforeHeMoves(WIDE));
    }

    @Test
    void onLanesThatOthersHavePlayedOnFewerBallsMakeHimMove() {
        assertThat(ballsBeforeHeMoves(8, WIDE)).isLessThan(ballsBeforeHeMoves(0, WIDE));
        assertThat(ballsBeforeHeMoves(0, WIDE)).isEqualTo(ballsBeforeHeMoves(WIDE));
    }

    @Test
    void whoExpectsToMoveInDoesSoAtOnceOnLanesThatOthersHavePlayedOn() {
        LearningAgent agent = agent(reckoning(new Reckoning(0.3, 0.25, 20, 20)), WIDE);

        agent.stepUp(LANE, 8, OptionalDouble.empty());

        assertThat(agent.line(LANE)).isEqualTo(START.moved(2));
    }

    @Test
    void onFreshLanesHeStepsUpToTheLineHeBrought() {
        LearningAgent agent = agent(reckoning(new Reckoning(0.3, 0.25, 1, 1)), WIDE);

        agent.stepUp(LANE, 0, OptionalDouble.empty());

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void believesWhatHeIsToldByHowWellItFits() {
        assertThat(movedWhenTold(0)).isEqualTo(4);
        assertThat(movedWhenTold(2)).isBetween(0.5, 3.5);
        assertThat(movedWhenTold(Reckoning.NOT_AT_ALL_BOARDS)).isZero();
    }

    private static double movedWhenTold(double toldBoards) {
        LearningAgent agent = agent(reckoning(new Reckoning(0.3, 0, 20, toldBoards)), WIDE);
        agent.stepUp(LANE, 8, OptionalDouble.of(4));
        return agent.moved(LANE).orElseThrow();
    }

    @Test
    void othersBallsMakeHimMoveWithHisNextBall() {
        LearningAgent looking = agent(reckoning(new Reckoning(0.3, 0, 1, 20)), WIDE);
        looking.stepUp(LANE, 0, OptionalDouble.empty());
        for (int ball = 0; ball < 30; ball++) {
            looking.watch(LANE, new LaneRead(6, 4), 1);
        }
        assertThat(looking.line(LANE)).isEqualTo(START);

        learn(looking, LANE, POCKET, 0);

        assertThat(looking.moved(LANE).orElseThrow()).isPositive();
    }

    @Test
    void theMoreUnlikeAnotherThrowsTheLessHisBallsTell() {
        assertThat(missAfterWatching(1, 1)).isGreaterThan(missAfterWatching(1, 3));
        assertThat(missAfterWatching(1, 3)).isGreaterThan(missAfterWatching(Reckoning.NOT_AT_ALL_BOARDS, 1));
        assertThat(missAfterWatching(Reckoning.NOT_AT_ALL_BOARDS, 1)).isZero();
    }

    /** Boards that he moves after a few of another's balls and one of his own that met the pocket. */
    private static double missAfterWatching(double othersBoards, double unlike) {
        Adaptation adaptation = new Adaptation(0, 0, 1, 1, new Reckoning(0.3, 0, othersBoards, 20));
        LearningAgent agent = agent(adaptation, WIDE);
        agent.stepUp(LANE, 0, OptionalDouble.empty());
        for (int ball = 0; ball < 12; ball++) {
            agent.watch(LANE, new LaneRead(12, 1), unlike);
        }
        learn(agent, LANE, POCKET, 0);
        return agent.moved(LANE).orElseThrow();
    }

    @Test
    void saysOfALaneHowFarInOneShouldStand() {
        LearningAgent agent = agent(PROMPT, WIDE);

        LaneRead first = agent.learn(LANE, new Sight(POCKET + 20, 0, ENTRY_RAD)).orElseThrow();
        double moved = agent.moved(LANE).orElseThrow();
        LaneRead second = agent.learn(LANE, new Sight(POCKET + 1, 0, ENTRY_RAD)).orElseThrow();

        assertThat(moved).isPositive();
        assertThat(first.moveBoards()).isCloseTo(20, EXACTLY);
        assertThat(second.moveBoards()).isCloseTo(moved + 1, EXACTLY);
        assertThat(first.variance()).isCloseTo(4, EXACTLY);
    }

    private static Adaptation reckoning(Reckoning reckoning) {
        return new Adaptation(0, 1, 1, 1, reckoning);
    }

    @Test
    void onAnotherPairOfTheSameAgeHeIsAsSureAsEver() {
        Adaptation adaptation = new Adaptation(0, 1, 1, 1, Reckoning.byOwnBalls(0.3));
        LearningAgent moved = agent(adaptation, WIDE);
        moved.stepUp(LANE, 8, OptionalDouble.empty());
        moved.moveOn();
        LearningAgent sure = agent(adaptation, WIDE);

        assertThat(ballsBeforeHeMoves(moved, 8)).isEqualTo(ballsBeforeHeMoves(sure, 0));
    }

    private static int ballsBeforeHeMoves(int gamesOnOil, LineFeel feel) {
        return ballsBeforeHeMoves(agent(new Adaptation(0, 1, 1, 1, Reckoning.byOwnBalls(0.3)), feel), gamesOnOil);
    }

    private static int ballsBeforeHeMoves(LearningAgent agent, int gamesOnOil) {
        Line brought = agent.line(LANE);
        int balls = 0;
        while (agent.line(LANE).equals(brought)) {
            agent.stepUp(LANE, gamesOnOil, OptionalDouble.empty());
            learn(agent, LANE, POCKET + 2, 0);
            balls++;
        }
        return balls;
    }

    private static int ballsBeforeHeMoves(LineFeel feel) {
        return ballsBeforeHeMoves(new Adaptation(0, 1, 1, 1, Reckoning.byOwnBalls(0.3)), feel);
    }

    private static int ballsBeforeHeMoves(Adaptation adaptation, LineFeel feel) {
        LearningAgent agent = agent(adaptation, feel);
        int balls = 0;
        while (agent.line(LANE).equals(START)) {
            learn(agent, LANE, POCKET + 2, 0);
            balls++;
        }
        return balls;
    }

    @Test
    void keepsALineForEveryLane() {
        LearningAgent agent = agent(PROMPT, EXACT);

        learn(agent, LANE, POCKET + 4, 0);

        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(24, EXACTLY);
        assertThat(agent.line(OTHER_LANE)).isEqualTo(START);
    }

    @Test
    void onANewPairHeStartsFromTheMiddleOfTheLinesHePlayedLast() {
        LearningAgent agent = agent(PROMPT, EXACT);
        learn(agent, LANE, POCKET + 4, 0);
        agent.line(OTHER_LANE);

        agent.moveOn();

        assertThat(agent.line(11).laydownBoard()).isCloseTo((24 + 20) / 2.0, EXACTLY);
        assertThat(agent.line(11).arrowsBoard()).isCloseTo((14 + 12) / 2.0, EXACTLY);
    }

    @Test
    void aThirdLaneIsANewPair() {
        LearningAgent agent = agent(PROMPT, EXACT);
        learn(agent, LANE, POCKET + 4, 0);
        learn(agent, OTHER_LANE, POCKET, 0);

        learn(agent, 9, POCKET, 0);

        assertThat(agent.line(9).laydownBoard()).isBetween(20.0, 24.0);
        assertThat(agent.line(LANE)).isEqualTo(agent.line(OTHER_LANE));
    }

    @ParameterizedTest(name = "balls {0} boards off the pocket")
    @ValueSource(doubles = {30, -30})
    void staysOnTheLaneHoweverFarHeShouldMove(double off) {
        LearningAgent agent = agent(PROMPT, EXACT);

        for (int shot = 0; shot < 50; shot++) {
            learn(agent, LANE, POCKET + off, 0);
            assertOnLane(agent.line(LANE));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void staysOnTheLaneWhateverHeSees(long seed) {
        Random random = new Random(seed);
        Adaptation adaptation = new Adaptation(
                0,
                random.nextDouble(3),
                random.nextDouble(1.5),
                1 + random.nextInt(5),
                Reckoning.byOwnBalls(random.nextDouble(3)));
        LearningAgent agent = agent(adaptation, feel(0, 2, random.nextDouble(4)));

        for (int shot = 0; shot < 500; shot++) {
            learn(agent, LANE + shot % 2, random.nextDouble(-1, 41), 2 * random.nextGaussian());
            assertOnLane(agent.line(LANE));
            assertOnLane(agent.line(OTHER_LANE));
        }
    }

    private static LineFeel feel(double usual, double perArrow, double unexplained) {
        return new LineFeel(usual, perArrow, unexplained, unexplained, ENTRY_RAD);
    }

    private static LearningAgent agent(Adaptation adaptation, LineFeel feel) {
        return new LearningAgent(adaptation, List.of(new KnownBall(START, feel, 1)));
    }

    private static void learn(LearningAgent agent, int lane, double arrivalBoard, double missAtArrowsBoards) {
        agent.learn(lane, new Sight(arrivalBoard, missAtArrowsBoards, ENTRY_RAD));
    }

    private static void assertOnLane(Line line) {
        assertThat(line.laydownBoard()).isBetween(2.0, 38.0);
        assertThat(line.arrowsBoard()).isBetween(1.0, 34.0);
    }
}
