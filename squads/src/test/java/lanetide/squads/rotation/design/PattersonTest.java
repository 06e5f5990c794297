package lanetide.squads.rotation.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.IntStream;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PattersonTest {
    private static int balanced;

    private final Patterson design = new Patterson();

    @AfterAll
    static void theReadmeSaysHowManyAreBalanced() {
        ReadmeRow.says(
                "`Patterson`, n = 2 to 24, 51, 100, k up to n - 1: index n(k-1), which none can be below",
                balanced + " rotations, all");
    }

    static IntStream sizes() {
        return IntStream.concat(IntStream.rangeClosed(2, 24), IntStream.of(51, 100));
    }

    /** With n groups and k games nothing can be below n(k-1), each following once: it is reached at every size. */
    @ParameterizedTest
    @MethodSource("sizes")
    void nobodyFollowsAGroupTwiceInUpToOneGameLessThanPairs(int pairs) {
        for (int games : new int[] {1, 2, pairs / 2, pairs - 1}) {
            if (games > 0) {
                RotationReport report = RotationReport.of(design.plan(pairs, pairs, games));
                assertThat(report.carryOverIndex()).isEqualTo(pairs * (games - 1));
                assertThat(report.carryOverMinimum()).isEqualTo(pairs * (games - 1));
                assertThat(report.repeatedVisits()).isEmpty();
                assertThat(report.isPermutation()).isTrue();
                balanced++;
            }
        }
    }

    /** Cyclic difference sets, from memory: (7,3,1), (7,4,2), (11,5,2), (13,4,1), (21,5,1) and (31,6,1) exist. */
    @ParameterizedTest
    @CsvSource({"7, 3, 1", "7, 4, 2", "11, 5, 2", "13, 4, 1", "21, 5, 1", "31, 6, 1"})
    void anyTwoGroupsShareEquallyManyPairsWhereADifferenceSetExists(int pairs, int games, int shared) {
        Rotation rotation = design.plan(pairs, pairs, games);

        for (int one = 0; one < pairs; one++) {
            for (int other = 0; other < one; other++) {
                int here = one;
                int there = other;
                assertThat(IntStream.range(0, games)
                                .map(game -> rotation.pairOf(game, here))
                                .filter(pair -> IntStream.range(0, games)
                                        .anyMatch(game -> rotation.pairOf(game, there) == pair))
                                .count())
                        .isEqualTo(shared);
            }
        }
    }

    @Test
    void asManyGamesAsPairsAreLeftToTheRowCompleteDesign() {
        assertThatThrownBy(() -> design.plan(7, 7, 7))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessageContaining("at most 6 with 7 pairs");
        assertThat(design.plan(8, 8, 8)).isEqualTo(new RowComplete().plan(8, 8, 8));
    }
}
