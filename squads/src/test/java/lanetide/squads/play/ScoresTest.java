package lanetide.squads.play;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.lane.Hand;
import lanetide.oilflow.line.Line;
import lanetide.oilflow.pocket.Rack;
import lanetide.squads.bowler.SteadyAgent;
import lanetide.squads.equipment.Equipment;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Knowledge;
import lanetide.squads.model.Level;
import lanetide.squads.model.Scoring;
import lanetide.squads.score.ScoringSystem;
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
        ReadmeRow.says(
                "mean score of elite, scratch, league, casual",
                means.stream()
                        .map(mean -> String.format(Locale.ROOT, "%.0f", mean))
                        .collect(Collectors.joining(", ")));
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
            assertThat(bowler.result("", 0).scores().get(game))
                    .as("seed %d", seed)
                    .isEqualTo(card.total());
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

    @Test
    void aCardShowsTheSplitsHeLeft() {
        BowlerInPlay bowler = inPlay();

        bowler.score(Rack.parse("7-10"));
        bowler.score(Rack.parse("7"));
        bowler.score(Rack.parse("2-4"));
        bowler.score(0);
        strikeOut(bowler);

        assertThat(bowler.result("1", 0).sheets()).containsExactly("S81 8/ X X X X X X X XXX");
    }

    @Test
    void inANoTapGameNinePinsOnANewRackAreAStrike() {
        BowlerInPlay bowler = inPlay(new Scoring(ScoringSystem.TRADITIONAL, 9, 0));

        bowler.score(Rack.parse("10"));
        bowler.score(Rack.parse("4-7"));
        bowler.score(Rack.parse("7"));
        for (int ball = 0; ball < 10; ball++) {
            bowler.score(Rack.parse("7"));
        }
        bowler.handInCard();

        assertThat(bowler.result("1", 0).sheets()).containsExactly("X 81 X X X X X X X XXX");
    }

    @Test
    void currentFrameScoringAsksForNoFurtherBallsInTheTenth() {
        BowlerInPlay bowler = inPlay(new Scoring(ScoringSystem.CURRENT_FRAME, 10, 0));

        for (int ball = 0; ball < 10; ball++) {
            bowler.score(0);
        }

        assertThat(bowler.frameComplete(10)).isTrue();
        bowler.handInCard();
        assertThat(bowler.result("", 0).scores()).containsExactly(300);
    }

    @Test
    void foulsCostPinsAndStandOnTheCard() {
        BowlerInPlay bowler = inPlay(new Scoring(ScoringSystem.TRADITIONAL, 10, 0.2));
        for (int game = 0; game < 50; game++) {
            while (!bowler.frameComplete(10)) {
                bowler.score(0);
            }
            bowler.handInCard();
        }

        String sheets = String.join("", bowler.result("1", 0).sheets());
        long balls = sheets.chars().filter(sign -> sign != ' ').count();
        long fouls = sheets.chars().filter(sign -> sign == 'F').count();
        // Four standard errors of a share of 0.2 among about 700 balls.
        assertThat((double) fouls / balls).isBetween(0.14, 0.26);
        assertThat(bowler.result("", 0).scores()).anyMatch(score -> score < 300);
    }

    @Test
    void afterAFoulAtTheFirstBallAllPinsStandAgainAndTenAreASpare() {
        BowlerInPlay bowler = inPlay(new Scoring(ScoringSystem.TRADITIONAL, 9, 0.2));
        for (int game = 0; game < 20; game++) {
            while (!bowler.frameComplete(10)) {
                assertThat(bowler.standing()).isEqualTo(Rack.FULL);
                bowler.score(0);
            }
            bowler.handInCard();
        }

        assertThat(bowler.result("1", 0).sheets()).anyMatch(sheet -> sheet.contains("F/"));
    }

    private static void strikeOut(BowlerInPlay bowler) {
        while (!bowler.frameComplete(10)) {
            bowler.score(0);
        }
        bowler.handInCard();
    }

    @Test
    void formChangesFromGameToGameAndStaysWithinOne() {
        BowlerInPlay bowler = inPlay();
        Set<Double> scatters = new HashSet<>();
        for (int game = 0; game < 10; game++) {
            double scatter = bowler.scatter();
            scatters.add(scatter);
            while (!bowler.frameComplete(10)) {
                bowler.score(0);
                assertThat(bowler.scatter()).isEqualTo(scatter);
            }
            bowler.handInCard();
        }

        assertThat(scatters)
                .hasSize(10)
                .allSatisfy(scatter -> assertThat(scatter).isBetween(0.5, 2.0));
    }

    private static BowlerInPlay inPlay() {
        return inPlay(Scoring.USUAL);
    }

    private static BowlerInPlay inPlay(Scoring scoring) {
        Bowler bowler = Events.bowler("a");
        var event = Events.onePair(1, bowler);
        return new BowlerInPlay(
                bowler,
                StartingLines.player(bowler, event, Events.PHYSICS),
                Equipment.of(bowler, event.centre().surface(), Events.PHYSICS),
                new SteadyAgent(Line.through(20, 12)),
                new Bowling(Knowledge.NOTHING, 0, scoring),
                LuckSource.byBall(new RandomStreams(1)).of("A", bowler));
    }
}
