package lanetide.squads.rotation.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.RepeatedVisit;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.Tables;
import org.apache.commons.math3.util.ArithmeticUtils;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class RotationDesignTest {

    static LongStream seeds() {
        return LongStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyPlannedGameGivesEachGroupAPairOfItsOwn(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 2 * (1 + random.nextInt(12));
        int groups = 1 + random.nextInt(pairs);
        int games = 1 + random.nextInt(pairs);
        int step = 1 + random.nextInt(pairs - 1) - (random.nextBoolean() ? pairs : 0);
        RotationDesign turning = pairs == 2 ? new Stay() : new Turning(2 * (1 + random.nextInt(pairs / 2 - 1)));
        for (RotationDesign design : List.of(
                new Stay(),
                turning,
                new Patterson(),
                new Searched(SearchObjective.DEFAULT, seed, OptionalInt.of(80)),
                new Ring(step, 1 + random.nextInt(3)),
                new Counter(step),
                new RowComplete(),
                new Shuffled(seed))) {
            Rotation rotation = design.plan(groups, pairs, games);
            for (int game = 0; game < games; game++) {
                int now = game;
                assertThat(IntStream.range(0, groups).map(group -> rotation.pairOf(now, group)))
                        .as("seed %d, %s, %d groups, %d pairs, game %d", seed, design, groups, pairs, game)
                        .doesNotHaveDuplicates()
                        .allMatch(pair -> pair >= 0 && pair < pairs);
            }
            assertThat(RotationReport.of(rotation).isPermutation())
                    .as("seed %d, %s", seed, design)
                    .isTrue();
        }
    }

    /** After as many moves as make the distance a multiple of the pairs: ring arithmetic. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noGroupComesBackBeforeTheRingIsRound(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 2 * (1 + random.nextInt(12));
        int step = 1 + random.nextInt(pairs - 1);
        int every = 1 + random.nextInt(3);
        int moves = pairs / ArithmeticUtils.gcd(step, pairs);

        assertFirstReturn(new Ring(step, every), pairs, every * moves);
        assertFirstReturn(new Ring(-step, 1), pairs, moves);
        assertFirstReturn(new Counter(step), pairs, moves);
    }

    private static void assertFirstReturn(RotationDesign design, int pairs, int games) {
        assertThat(RotationReport.of(design.plan(pairs, pairs, games)).repeatedVisits())
                .as("%s, %d pairs, %d games", design, pairs, games)
                .isEmpty();
        assertThat(RotationReport.of(design.plan(pairs, pairs, games + 1)).repeatedVisits())
                .as("%s, %d pairs, one game more than %d", design, pairs, games)
                .hasSize(pairs)
                .allMatch(visit -> visit.againGame() == games);
    }

    /** Pairs seen before the first repeat, P / gcd(k, P): ring arithmetic. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            pairs, step, games
            12,    4,    3
            12,    1,    12
            10,    2,    5
            11,    1,    11
            11,    2,    11
            11,    7,    11
            12,    -4,   3
            """)
    void aRingComesRoundAfterAsManyGamesAsTheArithmeticSays(int pairs, int step, int games) {
        assertFirstReturn(new Ring(step, 1), pairs, games);
    }

    @Test
    void sixGroupsMovingFourOfTwelvePairsAreBackInGameFour() {
        RotationReport report = RotationReport.of(new Ring(4, 1).plan(6, 12, 6));

        assertThat(report.repeatedVisits())
                .contains(new RepeatedVisit(0, 0, 0, 3))
                .allMatch(visit -> visit.againGame() >= 3)
                .hasSize(6 * 3);
    }

    /** Left-lane and right-lane players as two rings that move opposite ways: they meet P / gcd(2k, P) partners. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            pairs, step, games, partners, times
            10,    1,    10,    5,        2
            11,    1,    11,    11,       1
            12,    2,    6,     3,        2
            """)
    void oppositeRingsMeetOnlySomeOfTheirPartners(int pairs, int step, int games, int partners, long times) {
        Rotation right = new Ring(step, 1).plan(pairs, pairs, games);
        Rotation left = new Ring(-step, 1).plan(pairs, pairs, games);
        for (int group = 0; group < pairs; group++) {
            Map<Integer, Long> meetings = new LinkedHashMap<>();
            for (int game = 0; game < games; game++) {
                int met = right.groupOn(game, left.pairOf(game, group)).orElseThrow();
                meetings.merge(met, 1L, Long::sum);
            }
            assertThat(meetings)
                    .hasSize(partners)
                    .allSatisfy((met, count) -> assertThat(count).isEqualTo(times));
        }
    }

    /** The same halving at pair level: with an even number of pairs a group only ever follows the other half. */
    @Test
    void counterRotationOnTenPairsFollowsFiveOppositeGroups() {
        Rotation rotation = new Counter(1).plan(10, 10, 10);
        CarryOver carryOver = CarryOver.of(rotation);

        for (int group = 0; group < 10; group++) {
            int after = group;
            assertThat(carryOver.predecessorsOf(group)).hasSize(5).allMatch(before -> (before + after) % 2 == 1);
        }
    }

    @Test
    void counterRotationSendsOddStartersRightAndTheOthersLeft() {
        assertThat(Tables.rows(new Counter(1).plan(6, 6, 3))).containsExactly("163", "236", "325", "452", "541", "614");
    }

    @Test
    void counterRotationOnAnOddNumberOfPairsIsRefusedWithTheFirstCollision() {
        assertThatThrownBy(() -> new Counter(1).plan(5, 5, 2))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageStartingWith("The number of pairs (5) must be even")
                .hasMessageContaining("Game 2: group 1 and group 4 are sent to pair 5 together")
                .hasMessageContaining("Leave one pair out");
    }

    @Test
    void aRingMovesAfterEachBlockOfGames() {
        assertThat(Tables.rows(new Ring(1, 2).plan(3, 4, 5))).containsExactly("11..3", "2211.", "33221", "..332");
    }

    @Test
    void stayingIsNeverComingBack() {
        Rotation rotation = new Stay().plan(3, 4, 5);

        assertThat(Tables.rows(rotation)).containsExactly("11111", "22222", "33333", ".....");
        assertThat(RotationReport.of(rotation).findings()).isEmpty();
    }

    @Test
    void aLotIsRepeatableAndMoreGamesKeepTheEarlierDraw() {
        Rotation six = new Shuffled(11).plan(8, 9, 6);
        Rotation three = new Shuffled(11).plan(8, 9, 3);

        assertThat(new Shuffled(11).plan(8, 9, 6)).isEqualTo(six).hasSameHashCodeAs(six);
        assertThat(new Shuffled(12).plan(8, 9, 6)).isNotEqualTo(six);
        for (int group = 0; group < 8; group++) {
            assertThat(three.pairOf(2, group)).isEqualTo(six.pairOf(2, group));
        }
    }

    /** Chi-squared over the 24 orders of four groups, 23 degrees of freedom, 0.999 quantile 49.73 (handbook table). */
    @Test
    void aLotDrawsEveryOrderEquallyOften() {
        int draws = 24_000;
        Map<List<Integer>, Integer> orders = new LinkedHashMap<>();
        Rotation rotation = new Shuffled(5).plan(4, 4, draws);
        for (int game = 0; game < draws; game++) {
            int now = game;
            orders.merge(
                    IntStream.range(0, 4)
                            .mapToObj(group -> rotation.pairOf(now, group))
                            .toList(),
                    1,
                    Integer::sum);
        }

        double expected = draws / 24.0;
        double chiSquared = orders.values().stream()
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
        assertThat(orders).hasSize(24);
        assertThat(chiSquared).isLessThan(49.73);
    }

    @Test
    void aTableGivesWhatIsWritten() {
        Explicit table = new Explicit(List.of(List.of(0, 1), List.of(0, 2), List.of(2, 1), List.of(0, 2)));

        assertThat(Tables.rows(table.plan(2, 3, 4))).containsExactly("11.1", "2.2.", ".212");
        assertThat(Tables.rows(table.plan(2, 3, 2))).containsExactly("11", "2.", ".2");
    }

    @Test
    void aTableThatDoesNotFitIsRefusedAtTheEntry() {
        Explicit table = new Explicit(List.of(List.of(0, 1), List.of(1, 3)));

        assertRefusal(() -> table.plan(2, 3, 2), "The pair of group 2 in game 2 (4) must be 1 to 3");
        assertRefusal(() -> table.plan(2, 4, 3), "The number of games (3) must be at most the games written out (2)");
        assertRefusal(
                () -> table.plan(3, 4, 2),
                "The number of groups written out for game 1 (2) must be the number of groups (3)");
        assertRefusal(
                () -> new Explicit(List.of(List.of(0, 1), List.of(1))),
                "The number of groups written out for game 2 (1) must be as many as in game 1 (2)");
        assertRefusal(() -> new Explicit(List.of()), "The number of games in the table (0) must be at least 1");
    }

    @Test
    void plansThatCannotExistAreRefused() {
        assertRefusal(
                () -> new Ring(8, 1).plan(4, 4, 2), "The step (8) must be no multiple of the number of pairs (4)");
        assertRefusal(
                () -> new Counter(-4).plan(4, 4, 2), "The step (-4) must be no multiple of the number of pairs (4)");
        assertRefusal(() -> new Ring(0, 1), "The step (0) must be other than 0");
        assertRefusal(() -> new Counter(0), "The step (0) must be other than 0");
        assertRefusal(() -> new Ring(1, 0), "The number of games between moves (0) must be at least 1");
    }

    @Test
    void everyDesignRefusesImpossibleSizes() {
        Explicit table = new Explicit(List.of(List.of(0, 1, 2, 3, 4)));
        for (RotationDesign design : List.of(
                new Stay(),
                new Ring(1, 1),
                new Turning(2),
                new Counter(1),
                new RowComplete(),
                new Patterson(),
                table,
                new Shuffled(1),
                new Searched(1))) {
            assertRefusal(
                    () -> design.plan(5, 4, 1), "The number of groups (5) must be at most the number of pairs (4)");
            assertRefusal(() -> design.plan(0, 4, 1), "The number of groups (0) must be at least 1");
            assertRefusal(() -> design.plan(1, 0, 1), "The number of pairs (0) must be at least 1");
            assertRefusal(() -> design.plan(4, 4, 0), "The number of games (0) must be at least 1");
        }
    }

    private static void assertRefusal(Runnable attempt, String words) {
        assertThatThrownBy(attempt::run)
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageStartingWith(words);
    }
}
