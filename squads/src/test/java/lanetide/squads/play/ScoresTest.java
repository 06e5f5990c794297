package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Level;
import lanetide.squads.score.TenpinScore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ScoresTest {
    private static final long PLAYINGS = 10;
    private static final int GAMES = 3;

    @Test
    void withoutSpreadAndReadingErrorABowlerStrikesMore() {
        double usual = mean(Events.bowler("a", Hand.RIGHT, "tweener", Events.level("elite"), "medium-reactive"));
        double exact = mean(Events.bowler("a", Hand.RIGHT, "tweener", Events.withoutSpread(), "medium-reactive"));

        assertThat(exact).isGreaterThan(usual + 30);
    }

    @Test
    void betterLevelsScoreMore() {
        List<Double> means = Stream.of("elite", "scratch", "league", "casual")
                .map(Events::level)
                .map(ScoresTest::meanOfField)
                .toList();

        for (int i = 1; i < means.size(); i++) {
            assertThat(means.get(i)).as("means %s", means).isLessThan(means.get(i - 1) - 3);
        }
    }

    private static double meanOfField(Level level) {
        return mean(
                Events.bowler("a", Hand.RIGHT, "straight", level, "weak-reactive"),
                Events.bowler("b", Hand.RIGHT, "stroker", level, "weak-reactive"),
                Events.bowler("c", Hand.RIGHT, "tweener", level, "medium-reactive"),
                Events.bowler("d", Hand.LEFT, "power", level, "strong-reactive"));
    }

    private static double mean(Bowler... bowlers) {
        return LongStream.range(0, PLAYINGS)
                .mapToDouble(seed -> Events.mean(Events.play(Events.onePair(GAMES, bowlers), seed)))
                .average()
                .orElseThrow();
    }

    /** Any leaves, ball by ball: the bowler's card says what the rules say. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aBowlersCardIsTheTenpinScoreOfWhatFell(long seed) {
        Random random = new Random(seed);
        BowlerInPlay bowler = inPlay();
        for (int game = 0; game < 20; game++) {
            TenpinScore card = new TenpinScore();
            while (!card.isComplete()) {
                assertThat(Integer.bitCount(bowler.standing()))
                        .as("seed %d", seed)
                        .isEqualTo(card.pinsStanding());
                int left = random.nextInt(3) == 0 ? 0 : bowler.standing() & random.nextInt(Rack.FULL + 1);
                card.roll(Integer.bitCount(bowler.standing()) - Integer.bitCount(left));
                bowler.score(left);
                assertThat(bowler.frameComplete(10)).as("seed %d", seed).isEqualTo(card.isComplete());
            }
            bowler.handInCard();
            assertThat(bowler.scores().get(game)).as("seed %d", seed).isEqualTo(card.total());
            assertThat(bowler.standing()).as("seed %d", seed).isEqualTo(Rack.FULL);
        }
    }

    @Test
    void afterAGutterBallAllPinsStillStand() {
        BowlerInPlay bowler = inPlay();

        bowler.score(Rack.FULL);

        assertThat(bowler.standing()).isEqualTo(Rack.FULL);
        assertThat(bowler.frameComplete(1)).isFalse();
    }

    @Test
    void theSecondBallFacesThePinsTheFirstOneLeft() {
        BowlerInPlay bowler = inPlay();

        bowler.score(Rack.parse("3-6-10"));
        assertThat(bowler.standing()).isEqualTo(Rack.parse("3-6-10"));
        bowler.score(Rack.parse("10"));
        assertThat(bowler.standing()).isEqualTo(Rack.FULL);
    }

    private static BowlerInPlay inPlay() {
        var event = Events.onePair(1, Events.bowler("a"));
        var player = StartingLines.player(Events.bowler("a"), event, Events.PHYSICS);
        return new BowlerInPlay(
                Events.bowler("a"),
                player,
                player.contact(),
                new StartingLines(event, Events.PHYSICS).of(player),
                "test",
                new RandomStreams(1));
    }
}
