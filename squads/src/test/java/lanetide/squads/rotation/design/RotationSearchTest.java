package lanetide.squads.rotation.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RotationSearchTest {

    static LongStream seeds() {
        return LongStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theResultIsPlayableAndNeverWorseThanAnyClassicDesign(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 1 + random.nextInt(14);
        int groups = 1 + random.nextInt(pairs);
        int games = 1 + random.nextInt(14);
        SearchObjective objective = new SearchObjective(
                random.nextInt(3) * 5, random.nextDouble(2), random.nextDouble(2), random.nextDouble());

        SearchResult found = RotationSearch.run(groups, pairs, games, objective, seed, 20_000);

        assertThat(RotationReport.of(found.rotation()).isPermutation()).isTrue();
        assertThat(found.cost()).isEqualTo(objective.cost(found.rotation()));
        for (Classics.Planned classic : Classics.of(groups, pairs, games).planned()) {
            assertThat(found.cost()).isLessThanOrEqualTo(objective.cost(classic.rotation()));
        }
        for (int group = 0; group < groups; group++) {
            assertThat(found.rotation().pairOf(0, group))
                    .isEqualTo(found.start().plan(groups, pairs, games).pairOf(0, group));
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theRunningCountsAgreeWithCountingAfresh(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 2 + random.nextInt(9);
        int groups = 1 + random.nextInt(pairs);
        int games = 2 + random.nextInt(9);
        SearchObjective objective = new SearchObjective(3, 1, 0.5, 0.25);
        SearchTable table = new SearchTable(new Shuffled(seed).plan(groups, pairs, games), objective);
        for (int change = 0; change < 60; change++) {
            int one = random.nextInt(pairs);
            int other = (one + 1 + random.nextInt(pairs - 1)) % pairs;
            int game = random.nextInt(games);
            switch (random.nextInt(3)) {
                case 0 -> table.exchange(game, one, other);
                case 1 -> table.exchangeGames(game, (game + 1) % games);
                default -> table.exchangePairs(one, other);
            }
            int[][] now = table.copy();
            Rotation rotation = Rotation.tabulate(groups, pairs, games, (g, group) -> now[g][group]);
            assertThat(table.cost()).isCloseTo(objective.cost(rotation), within(1e-9));
        }
        int[][] start = new SearchTable(new Shuffled(seed).plan(groups, pairs, games), objective).copy();
        table.restore(start);
        assertThat(table.copy()).isDeepEqualTo(start);
    }

    /** Counted by the processor's time of this thread, so that a busy machine does not matter. */
    @Test
    void twentyFourPairsAndTwelveGamesTakeAtMostTenSeconds() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long beganNs = threads.getCurrentThreadCpuTime();
        SearchResult found =
                RotationSearch.run(24, 24, 12, SearchObjective.DEFAULT, 1, RotationSearch.defaultTries(24, 12));

        assertThat(threads.getCurrentThreadCpuTime() - beganNs).isLessThanOrEqualTo(10_000_000_000L);
        assertThat(found.cost()).isLessThanOrEqualTo(found.startCost());
        ReadmeRow.says(
                "24 pairs, 12 games by search, at most 10 s: from the best classic",
                String.format(Locale.ROOT, "%.3f to %.3f", found.startCost(), found.cost()));
        assertThat(RotationReport.of(found.rotation()).repeatedVisits()).isEmpty();
    }

    /** Groups of 12 over 8 games: who follows whom stays at its minimum, and the walk of the best classic shrinks. */
    @Test
    void aSearchFindsAsEvenARotationWithLessWalking() {
        SearchResult found = RotationSearch.run(12, 12, 8, SearchObjective.DEFAULT, 1, 800_000);
        RotationReport report = RotationReport.of(found.rotation());

        assertThat(report.carryOverIndex()).isEqualTo(12 * 7);
        assertThat(report.repeatedVisits()).isEmpty();
        assertThat(meanWalk(found.rotation())).isLessThan(meanWalk(found.start().plan(12, 12, 8)) - 0.5);
    }

    @Test
    void theSameSeedGivesTheSameRotation() {
        Rotation one = new Searched(SearchObjective.DEFAULT, 5, OptionalInt.of(50_000)).plan(9, 10, 7);

        assertThat(new Searched(SearchObjective.DEFAULT, 5, OptionalInt.of(50_000)).plan(9, 10, 7))
                .isEqualTo(one);
        assertThat(IntStream.range(6, 12)
                        .mapToObj(seed ->
                                new Searched(SearchObjective.DEFAULT, seed, OptionalInt.of(50_000)).plan(9, 10, 7)))
                .anyMatch(other -> !other.equals(one));
    }

    @Test
    void theSearchSaysWhyItStopped() {
        SearchObjective followingsOnly = new SearchObjective(10, 1, 1, 0);

        assertThat(RotationSearch.run(8, 8, 8, followingsOnly, 1, 80_000).reason())
                .isEqualTo(StopReason.PERFECT);
        assertThat(RotationSearch.run(8, 8, 1, followingsOnly, 1, 80_000).reason())
                .isEqualTo(StopReason.NOTHING_TO_CHANGE);
        assertThat(RotationSearch.run(6, 6, 6, SearchObjective.DEFAULT, 1, 80_000)
                        .reason())
                .isEqualTo(StopReason.NO_IMPROVEMENT);
    }

    /** So that a search for the largest house still ends in reasonable time. */
    @Test
    void largeSchedulesGetFewerTries() {
        assertThat(RotationSearch.defaultTries(24, 12)).isEqualTo(4_000_000);
        assertThat(RotationSearch.defaultTries(60, 20)).isEqualTo(2_000_000);
        assertThat(RotationSearch.defaultTries(100, 100)).isEqualTo(400_000);
    }

    @Test
    void weightsAndTriesThatMeanNothingAreRefused() {
        assertThatThrownBy(() -> new SearchObjective(-1, 1, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SearchObjective(1, Double.NaN, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new SearchObjective(1, 1, 1, Double.POSITIVE_INFINITY))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RotationSearch.run(2, 2, 2, SearchObjective.DEFAULT, 1, 0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Searched(SearchObjective.DEFAULT, 1, OptionalInt.of(0)))
                .isInstanceOf(ImpossibleRotationException.class);
    }

    private static double meanWalk(Rotation rotation) {
        return rotation.graph().edgeSet().stream()
                .mapToInt(Move::distancePairs)
                .average()
                .orElseThrow();
    }
}
