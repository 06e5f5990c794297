package lanetide.squads.rotation.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExistenceTest {

    @ParameterizedTest
    @CsvSource({
        "1, AVAILABLE",
        "2, AVAILABLE",
        "3, NONE",
        "4, AVAILABLE",
        "5, NONE",
        "6, AVAILABLE",
        "7, NONE",
        "8, AVAILABLE",
        "9, KNOWN_ELSEWHERE",
        "11, UNKNOWN",
        "13, UNKNOWN",
        "15, KNOWN_ELSEWHERE",
        "25, KNOWN_ELSEWHERE",
        "60, AVAILABLE"
    })
    void itIsKnownForWhichNumbersOneRoundCanBalance(int groups, RowCompleteExistence expected) {
        assertThat(RowCompleteExistence.of(groups)).isEqualTo(expected);
    }

    @Test
    void noGroupsAtAllAreRefused() {
        assertThatThrownBy(() -> RowCompleteExistence.of(0)).isInstanceOf(IllegalArgumentException.class);
    }

    /** Order 7 by trying everything, as for orders 3 and 5. */
    @Test
    void orderSevenHasNoRowCompleteSquare() {
        assertThat(RowCompleteSearch.normalSquares(7)).isEmpty();
    }

    /**
     * Without the rule that columns be permutations (row-Tuscan squares): impossible for 3 and 5, possible for 2, 4 and
     * 6, by trying everything.
     */
    @ParameterizedTest
    @CsvSource({"2, true", "3, false", "4, true", "5, false", "6, true"})
    void pathsThroughAllOthersShareOutAllFollowingsExceptForThreeAndFive(int size, boolean exists) {
        assertThat(new PathDecomposition(size).exists()).isEqualTo(exists);
    }

    /** A witness for order 7, so that it is the columns that make a rotation of 7 impossible, not the followings. */
    @Test
    void sevenPathsShareOutAllFollowings() {
        List<String> witness = List.of("0123456", "1024365", "2035164", "3046152", "6214053", "4250631", "5413260");
        Set<String> followings = new HashSet<>();
        for (String row : witness) {
            assertThat(row.chars().distinct().count()).isEqualTo(7);
            for (int i = 1; i < 7; i++) {
                followings.add(row.substring(i - 1, i + 1));
            }
        }
        assertThat(followings).hasSize(42);
    }

    /** Hamilton-cycle decompositions of labelled complete graphs: 1, 6 and 960 for 3, 5, 7 (MathOverflow). */
    @ParameterizedTest
    @CsvSource({"3, 1", "5, 6", "7, 960"})
    void closedRoundsShareOutAllNeighboursInAsManyWaysAsPublished(int size, int ways) {
        assertThat(new CycleDecomposition(size).count()).isEqualTo(ways);
    }

    /** Three squads in three turns over three days can be Latin, never balanced; over six days they can. */
    @ParameterizedTest
    @CsvSource({"1, 1", "2, 2", "3, 6", "4, 4", "5, 10", "6, 6"})
    void squadsAreBalancedOverTheFewestDays(int squads, int days) {
        List<List<Integer>> order = SquadOrder.balanced(squads);
        int each = days / squads;

        assertThat(order).hasSize(days);
        for (int squad = 0; squad < squads; squad++) {
            for (int turn = 0; turn < squads; turn++) {
                int here = squad;
                int now = turn;
                assertThat(order.stream().filter(day -> day.get(now) == here)).hasSize(each);
            }
            for (int other = 0; other < squads; other++) {
                assertThat(followings(order, squad, other)).isEqualTo(squad == other ? 0 : each);
            }
        }
    }

    private static int followings(List<List<Integer>> order, int before, int after) {
        int times = 0;
        for (List<Integer> day : order) {
            for (int turn = 1; turn < day.size(); turn++) {
                times += day.get(turn - 1) == before && day.get(turn) == after ? 1 : 0;
            }
        }
        return times;
    }

    /** Rows that are permutations and use every ordered pair of neighbours once, tried one after the other. */
    private static final class PathDecomposition {
        private final int size;
        private final boolean[][] used;

        PathDecomposition(int size) {
            this.size = size;
            this.used = new boolean[size][size];
        }

        boolean exists() {
            return path(0, 0, 0, -1);
        }

        /** Every symbol starts exactly one row: it has one arc fewer coming in than rows pass through it. */
        private boolean path(int row, int length, int seen, int last) {
            if (row == size) {
                return true;
            }
            if (length == size) {
                return path(row + 1, 0, 0, -1);
            }
            for (int next = 0; next < size; next++) {
                boolean starts = length == 0;
                boolean free = starts ? next == row : !used[last][next];
                if (free && (seen & 1 << next) == 0) {
                    mark(last, next, true);
                    if (path(row, length + 1, seen | 1 << next, next)) {
                        return true;
                    }
                    mark(last, next, false);
                }
            }
            return false;
        }

        private void mark(int last, int next, boolean use) {
            if (last >= 0) {
                used[last][next] = use;
            }
        }
    }

    /** Closed rounds that use every unordered pair of neighbours once, each decomposition counted once. */
    private static final class CycleDecomposition {
        private final int size;
        private final boolean[][] used;

        CycleDecomposition(int size) {
            this.size = size;
            this.used = new boolean[size][size];
        }

        int count() {
            return rounds(0);
        }

        /** Each round begins 0, a, ... and ends at a higher neighbour of 0; its lowest neighbour is the lowest left. */
        private int rounds(int done) {
            if (done == (size - 1) / 2) {
                return 1;
            }
            int first = 1;
            while (used[0][first]) {
                first++;
            }
            List<Integer> round = new ArrayList<>(List.of(0, first));
            mark(0, first, true);
            int ways = extend(round, done);
            mark(0, first, false);
            return ways;
        }

        private int extend(List<Integer> round, int done) {
            int last = round.get(round.size() - 1);
            if (round.size() == size) {
                if (used[last][0]) {
                    return 0;
                }
                mark(last, 0, true);
                int ways = rounds(done + 1);
                mark(last, 0, false);
                return ways;
            }
            int ways = 0;
            for (int next = 1; next < size; next++) {
                if (!used[last][next] && !round.contains(next)) {
                    mark(last, next, true);
                    round.add(next);
                    ways += extend(round, done);
                    round.remove(round.size() - 1);
                    mark(last, next, false);
                }
            }
            return ways;
        }

        private void mark(int one, int other, boolean use) {
            used[one][other] = use;
            used[other][one] = use;
        }
    }
}
