package lanetide.squads.bowler;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.PinCarry;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Reckoning;
import org.junit.jupiter.api.Test;

class BagTest {
    private static final int LANE = 7;
    private static final int ENOUGH = 24;
    private static final double USUAL_RAD = StrictMath.toRadians(5.5);
    private static final double FLAT_RAD = StrictMath.toRadians(3.5);
    private static final double SCATTER = 2;
    private static final LineFeel FEEL = new LineFeel(0, 2, 0, SCATTER, USUAL_RAD);
    private static final KnownBall STRONG = new KnownBall(Line.through(24, 17), FEEL, 1.08);
    private static final KnownBall WEAK = new KnownBall(Line.through(20, 15), FEEL, 0.92);
    private static final Adaptation PROMPT = new Adaptation(0, 1, 1, 1, Reckoning.byOwnBalls(0));

    @Test
    void aBallThatHasGoneFlatAsksForOneThatHooksLess() {
        assertThat(after(ENOUGH, 1, FLAT_RAD, STRONG, WEAK).shouldChange()).isTrue();
        assertThat(after(ENOUGH, 1, USUAL_RAD, STRONG, WEAK).shouldChange()).isFalse();
        assertThat(after(ENOUGH, 1, FLAT_RAD, WEAK, STRONG).shouldChange()).isFalse();
    }

    @Test
    void anAngleThatStillCarriesIsNotFlat() {
        assertThat(after(ENOUGH, 1, StrictMath.toRadians(4.2), STRONG, WEAK).shouldChange())
                .isFalse();
    }

    @Test
    void aBallThatMissesByMoreThanHeIsUsedToAsksForAnother() {
        assertThat(after(ENOUGH, 1.3 * SCATTER, USUAL_RAD, WEAK, STRONG).shouldChange())
                .isTrue();
        assertThat(after(ENOUGH, 1.1 * SCATTER, USUAL_RAD, WEAK, STRONG).shouldChange())
                .isFalse();
    }

    @Test
    void whatHisEyesMissIsNotTheBallsFault() {
        Bag bag = new Bag(List.of(STRONG, WEAK), SCATTER);
        watch(bag, ENOUGH, 1.3 * SCATTER, USUAL_RAD);

        assertThat(bag.shouldChange()).isFalse();
    }

    @Test
    void aFewBallsAreNoEvidence() {
        assertThat(after(ENOUGH - 1, 10, FLAT_RAD, STRONG, WEAK).shouldChange()).isFalse();
    }

    @Test
    void withOneBallThereIsNothingToChange() {
        assertThat(after(30, 10, FLAT_RAD, STRONG).shouldChange()).isFalse();
    }

    @Test
    void ifTheOtherBallIsWorseHeGoesBackAndStaysWithTheFirst() {
        Bag bag = after(ENOUGH, 1.3 * SCATTER, USUAL_RAD, STRONG, WEAK);
        bag.change();
        watch(bag, ENOUGH, 2 * SCATTER, USUAL_RAD);
        assertThat(bag.shouldChange()).isTrue();
        bag.change();
        watch(bag, ENOUGH, 2 * SCATTER, FLAT_RAD);

        assertThat(bag.index()).isZero();
        assertThat(bag.changes()).isEqualTo(2);
        assertThat(bag.shouldChange()).isFalse();
        bag.outOfRoom(true);
        assertThat(bag.shouldChange()).isTrue();
    }

    @Test
    void theBallsThatHeFindsTheLineWithCountForNothing() {
        Bag bag = after(6, 20, FLAT_RAD, STRONG, WEAK);
        watch(bag, ENOUGH, 1, USUAL_RAD);

        assertThat(bag.shouldChange()).isFalse();
    }

    private static Bag after(int balls, double missBoards, double entryRad, KnownBall... bag) {
        Bag watched = new Bag(List.of(bag), 0);
        watch(watched, balls, missBoards, entryRad);
        return watched;
    }

    private static void watch(Bag bag, int balls, double missBoards, double entryRad) {
        for (int ball = 0; ball < balls; ball++) {
            bag.watch(ball % 2 == 0 ? missBoards : -missBoards, entryRad);
        }
    }

    @Test
    void whoHasNoRoomDeeperTakesTheBallThatHooksLessAndGoesOverByAsMuchAsHisLinesDiffer() {
        LearningAgent agent = new LearningAgent(PROMPT, List.of(STRONG, WEAK));
        double before = 0;
        for (int ball = 0; ball < 60 && agent.ball() == 0; ball++) {
            before = agent.line(LANE).laydownBoard();
            agent.learn(LANE, new Sight(PinCarry.POCKET_BOARD + 2, 0, USUAL_RAD));
        }

        assertThat(agent.ball()).isEqualTo(1);
        assertThat(agent.ballChanges()).isEqualTo(1);
        assertThat(before).isGreaterThan(36);
        assertThat(agent.line(LANE).laydownBoard()).isCloseTo(before - 4, within(1e-9));
    }

    @Test
    void whoHasNoRoomFurtherOutTakesTheBallThatHooksMore() {
        LearningAgent agent = new LearningAgent(PROMPT, List.of(WEAK, STRONG));
        for (int ball = 0; ball < 60 && agent.ball() == 0; ball++) {
            agent.learn(LANE, new Sight(PinCarry.POCKET_BOARD - 2, 0, USUAL_RAD));
        }

        assertThat(agent.ball()).isEqualTo(1);
    }

    @Test
    void aLaneHeHasNotPlayedYetBeginsWithTheOtherBallsLine() {
        LearningAgent agent = new LearningAgent(PROMPT, List.of(STRONG, WEAK));
        for (int ball = 0; ball < ENOUGH; ball++) {
            agent.learn(LANE, new Sight(PinCarry.POCKET_BOARD, 0, FLAT_RAD));
        }

        assertThat(agent.ball()).isEqualTo(1);
        assertThat(agent.line(8).laydownBoard()).isCloseTo(20, within(1e-9));
        assertThat(agent.line(8).arrowsBoard()).isCloseTo(15, within(1e-9));
    }
}
