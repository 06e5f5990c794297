package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Adaptation;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BowlerAgentTest {
    private static final int LANE = 7;
    private static final int OTHER_LANE = 8;
    private static final double POCKET = PinCarry.POCKET_BOARD;
    private static final Offset<Double> EXACTLY = within(1e-9);
    private static final Line START = Line.through(20, 12);

    /** Believes his last ball alone, and moves by all he sees. */
    private static final Adaptation PROMPT = new Adaptation(0, 1, 1, 1);

    @Test
    void beginsEveryLaneWithTheLineHeBrought() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        assertThat(agent.line(LANE)).isEqualTo(START);
        assertThat(agent.line(OTHER_LANE)).isEqualTo(START);
    }

    @ParameterizedTest(name = "a ball at {0} boards off the pocket")
    @CsvSource({"2, 22, 13", "-2, 18, 11", "4, 24, 14", "2.5, 22.5, 13.25", "2.2, 22, 13"})
    void movesTwoBoardsWithTheFeetToOneAtTheArrows(double off, double laydown, double arrows) {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        agent.learn(LANE, POCKET + off, 0);

        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(laydown, EXACTLY);
        assertThat(agent.line(LANE).arrowsBoard()).isCloseTo(arrows, EXACTLY);
    }

    @Test
    void staysWhileHisBeliefIsInsideTheDeadBand() {
        BowlerAgent agent = new BowlerAgent(new Adaptation(0, 2, 1, 1), START);

        agent.learn(LANE, POCKET + 2, 0);
        assertThat(agent.line(LANE)).isEqualTo(START);
        agent.learn(LANE, POCKET + 2.1, 0);
        assertThat(agent.line(LANE)).isNotEqualTo(START);
    }

    @Test
    void withoutGainHeNeverMoves() {
        BowlerAgent agent = new BowlerAgent(new Adaptation(0, 0, 0, 1), START);

        for (int shot = 0; shot < 100; shot++) {
            agent.learn(LANE, POCKET + 10, 0);
        }

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void aBallThatMissedItsArrowTeachesLittle() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        agent.learn(LANE, POCKET + 12, 4);
        agent.learn(LANE, POCKET - 12, -4);

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void aBallOneBoardOffItsArrowCountsForSixTenthsOfWhatItsReleaseDoesNotExplain() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        // 0.61 of the eight boards that the release leaves unexplained, rounded to half a board.
        agent.learn(LANE, POCKET + 10, 1);

        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(20 + 5, EXACTLY);
    }

    @Test
    void aHighBallFromAMissInsideTheArrowIsNoReasonToMove() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        agent.learn(LANE, POCKET + 2, 1);

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @Test
    void aLongMemoryNeedsSeveralBalls() {
        BowlerAgent agent = new BowlerAgent(new Adaptation(0, 1, 1, 5), START);

        agent.learn(LANE, POCKET + 1.5, 0);
        agent.learn(LANE, POCKET + 1.5, 0);
        assertThat(agent.line(LANE)).isEqualTo(START);
        agent.learn(LANE, POCKET + 1.5, 0);
        assertThat(agent.line(LANE).laydownBoard()).isGreaterThan(20);
    }

    @Test
    void afterAMoveHeExpectsTheMissToBeGone() {
        BowlerAgent agent = new BowlerAgent(new Adaptation(0, 1, 1, 3), START);

        agent.learn(LANE, POCKET + 4, 0);
        Line moved = agent.line(LANE);
        agent.learn(LANE, POCKET, 0);

        assertThat(moved.laydownBoard()).isCloseTo(22, EXACTLY);
        assertThat(agent.line(LANE)).isEqualTo(moved);
    }

    @Test
    void remembersEveryLaneByItself() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        agent.learn(LANE, POCKET + 4, 0);

        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(24, EXACTLY);
        assertThat(agent.line(OTHER_LANE)).isEqualTo(START);
    }

    @Test
    void onANewPairHeStartsFromTheMiddleOfTheLinesHePlayedLast() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);
        agent.learn(LANE, POCKET + 4, 0);
        agent.learn(OTHER_LANE, POCKET - 2, 0);

        agent.moveOn();

        assertThat(agent.line(11).laydownBoard()).isCloseTo((24 + 18) / 2.0, EXACTLY);
        assertThat(agent.line(11).arrowsBoard()).isCloseTo((14 + 11) / 2.0, EXACTLY);
    }

    @Test
    void onAPairHeComesBackToHeHasForgottenItsLines() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);
        agent.learn(LANE, POCKET + 4, 0);
        agent.line(OTHER_LANE);

        agent.moveOn();

        assertThat(agent.line(LANE)).isEqualTo(agent.line(OTHER_LANE));
    }

    @Test
    void movingOnBeforeTheFirstBallChangesNothing() {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        agent.moveOn();

        assertThat(agent.line(LANE)).isEqualTo(START);
    }

    @ParameterizedTest(name = "always {0} boards off")
    @ValueSource(doubles = {5, -5})
    void staysOnTheLaneHoweverFarHisBallsMiss(double off) {
        BowlerAgent agent = new BowlerAgent(PROMPT, START);

        for (int shot = 0; shot < 50; shot++) {
            agent.learn(LANE, POCKET + off, 0);
            assertOnLane(agent.line(LANE));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void staysOnTheLaneWhateverHeSees(long seed) {
        Random random = new Random(seed);
        BowlerAgent agent = new BowlerAgent(
                new Adaptation(0, random.nextDouble(3), random.nextDouble(1.5), 1 + random.nextInt(5)), START);

        for (int shot = 0; shot < 500; shot++) {
            agent.learn(LANE, random.nextDouble(-1, 41), 2 * random.nextGaussian());
            assertOnLane(agent.line(LANE));
        }
    }

    private static void assertOnLane(Line line) {
        assertThat(line.laydownBoard()).isBetween(2.0, 38.0);
        assertThat(line.arrowsBoard()).isBetween(1.0, 34.0);
    }
}
