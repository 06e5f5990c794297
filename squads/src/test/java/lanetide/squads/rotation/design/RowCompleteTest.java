package lanetide.squads.rotation.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.Following;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.Tables;
import org.jgrapht.GraphTests;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RowCompleteTest {
    private static final Map<Integer, Integer> FOUND = new TreeMap<>();

    @AfterAll
    static void theReadmeSaysHowManySquaresThereAre() {
        ReadmeRow.says(
                "row-complete squares in normal form, order 2 to 6",
                FOUND.values().stream().map(String::valueOf).collect(Collectors.joining(", ")));
    }

    private final RowComplete design = new RowComplete();

    /** The square Williams (1949) gives for four treatments; R package crossdes, function williams, prints the same. */
    @Test
    void fourPairsGiveWilliamsSquare() {
        assertThat(Tables.rows(design.plan(4, 4, 4))).containsExactly("1243", "2314", "3421", "4132");
        ReadmeRow.says("square of order 4", square(4, 4));
    }

    /** Source: SAS/STAT User's Guide, PLAN procedure, "Crossover Designs", after Cox (1992) and Williams (1949). */
    @Test
    void sixPairsGiveThePublishedCrossoverDesign() {
        assertThat(Tables.rows(design.plan(6, 6, 6)))
                .containsExactly("126354", "231465", "342516", "453621", "564132", "615243");
        ReadmeRow.says("square of order 6", square(6, 6));
    }

    private String square(int pairs, int games) {
        return String.join(" ", Tables.rows(design.plan(pairs, pairs, games)));
    }

    /** First row by the rule of Williams (1949), the next rows one higher each. */
    @Test
    void eightPairsStartWithTheZigZag() {
        assertThat(Tables.rows(design.plan(8, 8, 8)))
                .startsWith("12837465", "23148576")
                .endsWith("81726354");
    }

    /**
     * Up to renaming, 1 square for order 4 and 2 for order 6: exhaustive count, and for order 6 also published in a
     * tutorial on the R package crossdes.
     */
    @ParameterizedTest
    @CsvSource({"2, 1", "4, 1", "6, 2"})
    void theSquareIsAmongAllThatAnExhaustiveSearchFinds(int size, int squares) {
        List<List<String>> all = RowCompleteSearch.normalSquares(size);

        assertThat(all)
                .hasSize(squares)
                .contains(RowCompleteSearch.normalised(Tables.rows(design.plan(size, size, size))));
        FOUND.put(size, all.size());
    }

    /** Why odd numbers need two squares: order 3 and 5 have none at all, nor has order 7 (exhaustive). */
    @ParameterizedTest
    @ValueSource(ints = {3, 5})
    void smallOddSquaresDoNotExist(int size) {
        assertThat(RowCompleteSearch.normalSquares(size)).isEmpty();
        FOUND.put(size, 0);
    }

    /**
     * Exists for every even order: M. A. Ollis, "Sequenceable groups and related topics", Electronic Journal of
     * Combinatorics, Dynamic Survey DS10 (2002). On every pair the groups run along a Hamiltonian path, and together
     * the paths use each arc of the complete directed graph once.
     */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8, 10, 12, 16, 20, 40})
    void everyGroupFollowsEveryOtherExactlyOnceAndVisitsEveryPair(int size) {
        Rotation rotation = design.plan(size, size, size);
        CarryOver carryOver = CarryOver.of(rotation);

        assertThat(GraphTests.isComplete(carryOver.graph())).isTrue();
        assertThat(carryOver.graph().edgeSet())
                .hasSize(size * (size - 1))
                .allMatch(following -> following.times() == 1 && following.before() != following.after());
        assertThat(RotationReport.of(rotation).findings()).isEmpty();
        for (int group = 0; group < size; group++) {
            int visitor = group;
            assertThat(IntStream.range(0, size).map(game -> rotation.pairOf(game, visitor)))
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, size).boxed().toList());
        }
    }

    @ParameterizedTest
    @CsvSource({"6, 6, 4", "5, 6, 6", "9, 12, 7", "1, 8, 8"})
    void fewerGamesOrGroupsStillNeverRepeatAVisit(int groups, int pairs, int games) {
        RotationReport report = RotationReport.of(design.plan(groups, pairs, games));

        assertThat(report.isPermutation()).isTrue();
        assertThat(report.repeatedVisits()).isEmpty();
    }

    /** The published square of order 6 without group 6; counted by hand, 2-3, 3-2, 4-5 and 5-4 come twice, 16 once. */
    @Test
    void aGapLetsAGroupFollowTheSameGroupAgain() {
        Rotation rotation = design.plan(5, 6, 6);
        CarryOver carryOver = CarryOver.of(rotation);

        assertThat(Tables.rows(rotation)).containsExactly("12.354", "2314.5", "34251.", "453.21", "5.4132", ".15243");
        assertThat(carryOver.graph().edgeSet())
                .hasSize(20)
                .filteredOn(following -> following.times() == 2)
                .containsExactlyInAnyOrder(
                        new Following(1, 2, 2), new Following(2, 1, 2), new Following(3, 4, 2), new Following(4, 3, 2));
        assertThat(carryOver.index()).isEqualTo(16 + 4 * 4);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5})
    void fewerGamesStillReachTheMinimum(int games) {
        RotationReport report = RotationReport.of(design.plan(6, 6, games));

        assertThat(report.carryOverIndex()).isEqualTo(6 * (games - 1)).isEqualTo(report.carryOverMinimum());
    }

    /** For an odd number Williams (1949) takes the square and its mirror image: every following comes exactly twice. */
    @ParameterizedTest
    @ValueSource(ints = {3, 5, 7, 9, 11, 21})
    void anOddNumberOfPairsIsBalancedOverTwiceAsManyGames(int size) {
        Rotation rotation = design.plan(size, size, 2 * size);
        CarryOver carryOver = CarryOver.of(rotation);

        for (int before = 0; before < size; before++) {
            for (int after = 0; after < size; after++) {
                assertThat(carryOver.times(before, after)).isEqualTo(before == after ? 1 : 2);
            }
        }
        for (int group = 0; group < size; group++) {
            int visitor = group;
            assertThat(IntStream.range(0, size).map(game -> rotation.pairOf(game, visitor)))
                    .doesNotHaveDuplicates();
            assertThat(rotation.pairOf(size, group)).isEqualTo(rotation.pairOf(size - 1, group));
        }
    }

    /**
     * The two squares as R package crossdes, function williams, prints them: the second is the first read backwards.
     */
    @Test
    void fivePairsGiveTheTwoPublishedSquaresOneAfterTheOther() {
        assertThat(Tables.rows(design.plan(5, 5, 10)))
                .containsExactly("1253443521", "2314554132", "3425115243", "4531221354", "5142332415");
        ReadmeRow.says("two squares of order 5", square(5, 10));
    }

    @Test
    void threePairsGiveTheTwoSquaresOneAfterTheOther() {
        assertThat(Tables.rows(design.plan(3, 3, 6))).containsExactly("123321", "231132", "312213");
    }

    /** Lucas and Walecki (from memory): the rows of an even square are the zig-zag paths of K_2m and their reverses. */
    @ParameterizedTest
    @ValueSource(ints = {2, 4, 6, 8})
    void theRowsOfAnEvenSquareAreHamiltonianPathsAndTheirReverses(int size) {
        List<String> rows = Tables.rows(design.plan(size, size, size));

        assertThat(rows)
                .allMatch(row -> rows.contains(new StringBuilder(row).reverse().toString()));
    }

    @Test
    void moreGamesThanPairsAreRefused() {
        assertThatThrownBy(() -> design.plan(6, 6, 7))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageStartingWith("The number of games (7) must be at most the number of pairs (6)");
        assertThatThrownBy(() -> design.plan(5, 5, 11))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageStartingWith("The number of games (11) must be at most twice the number of pairs (10)");
    }
}
