package lanetide.squads.rotation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.RowComplete;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The index against round robins: a team takes the place of a lane pair, its opponents, round after round, that of the
 * groups. Rounds are taken cyclically, as K. G. Russell, "Balancing carry-over effects in round robin tournaments",
 * Biometrika 67 (1980), does.
 */
class CarryOverFactsTest {
    private static final List<Integer> CIRCLE = new ArrayList<>();
    private static final List<Integer> POWERS = new ArrayList<>();
    private static final List<Integer> RIGHT = new ArrayList<>();
    private static final List<Integer> LEAST = new ArrayList<>();

    @AfterAll
    static void theReadmeHasTheIndices() {
        ReadmeRow.says("round robin, circle method, n = 4, 6, 8, 16, 20: index", told(CIRCLE));
        ReadmeRow.says("round robin over GF(4), GF(8), GF(16): index", told(POWERS));
        ReadmeRow.says("one pair right, n = 2, 3, 4, 6, 8, 10, 12, 24: index", told(RIGHT));
        ReadmeRow.says("`RowComplete`, n = 4, 6, 8, 10, 12, 16, 20: index", told(LEAST));
    }

    private static String told(List<Integer> indices) {
        return indices.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** The circle method; sums of squares by exact count. */
    @ParameterizedTest
    @CsvSource({"4, 12", "6, 60", "8, 196", "16, 2580", "20, 5548"})
    void theCircleMethodHasTheKnownIndex(int teams, int index) {
        List<List<Integer>> rounds = new ArrayList<>();
        for (int round = 0; round < teams - 1; round++) {
            rounds.add(circle(teams, round));
        }
        assertThat(cyclic(rounds).index()).isEqualTo(index);
        CIRCLE.add(cyclic(rounds).index());
    }

    /**
     * Russell (1980): a balanced round robin exists where the number of teams is a power of two; here in GF(8), GF(16).
     */
    @ParameterizedTest
    @CsvSource({"4, 7, 12", "8, 11, 56", "16, 19, 240"})
    void aPowerOfTwoReachesTheMinimum(int teams, int polynomial, int index) {
        List<List<Integer>> rounds = new ArrayList<>();
        int power = 1;
        for (int round = 0; round < teams - 1; round++) {
            int difference = power;
            rounds.add(IntStream.range(0, teams)
                    .mapToObj(team -> team ^ difference)
                    .toList());
            power = 2 * power < teams ? 2 * power : (2 * power) ^ polynomial;
        }
        assertThat(cyclic(rounds).index()).isEqualTo(index).isEqualTo(teams * (teams - 1));
        POWERS.add(cyclic(rounds).index());
    }

    /** All 720 orders of all one-factorisations of K6: the bound 30 is not reached by any. */
    @Test
    void everyRoundRobinOfSixTeamsHasIndexSixty() {
        List<List<List<Integer>>> all = new ArrayList<>();
        extend(new ArrayList<>(), matchings(), all);

        assertThat(all).hasSize(720);
        assertThat(all).allSatisfy(rounds -> assertThat(cyclic(rounds).index()).isEqualTo(60));
        ReadmeRow.says("round robins of six teams, all there are", all.size() + ", each of index 60");
    }

    @ParameterizedTest
    @CsvSource({"2, 2", "3, 12", "4, 36", "6, 150", "8, 392", "10, 810", "12, 1452", "24, 12696"})
    void movingOnePairRightHasTheWorstIndexThereIs(int size, int index) {
        CarryOver carryOver = CarryOver.of(new Ring(1, 1).plan(size, size, size));

        assertThat(carryOver.index()).isEqualTo(index).isEqualTo(size * (size - 1) * (size - 1));
        assertThat(carryOver.maximum()).isEqualTo(index);
        RIGHT.add(carryOver.index());
    }

    @ParameterizedTest
    @CsvSource({"4, 12", "6, 30", "8, 56", "10, 90", "12, 132", "16, 240", "20, 380"})
    void theMinimumIsGroupsTimesOthers(int size, int minimum) {
        CarryOver carryOver = CarryOver.of(new RowComplete().plan(size, size, size));

        assertThat(carryOver.minimum()).isEqualTo(minimum);
        assertThat(carryOver.index()).isEqualTo(minimum);
        LEAST.add(carryOver.index());
    }

    private static CarryOver cyclic(List<List<Integer>> rounds) {
        List<List<Integer>> again = new ArrayList<>(rounds);
        again.add(rounds.get(0));
        return CarryOver.of(Tables.ofGames(rounds.get(0).size(), again));
    }

    /** Team {@code teams - 1} stays, the others go round. */
    private static List<Integer> circle(int teams, int round) {
        Integer[] opponent = new Integer[teams];
        int others = teams - 1;
        for (int team = 0; team < others; team++) {
            int other = Math.floorMod(2 * round - team, others);
            opponent[team] = other == team ? others : other;
        }
        opponent[others] = round;
        return List.of(opponent);
    }

    private static List<List<Integer>> matchings() {
        List<List<Integer>> found = new ArrayList<>();
        match(new Integer[6], found);
        return found;
    }

    private static void match(Integer[] opponent, List<List<Integer>> found) {
        int free = 0;
        while (free < 6 && opponent[free] != null) {
            free++;
        }
        if (free == 6) {
            found.add(List.of(opponent.clone()));
            return;
        }
        for (int other = free + 1; other < 6; other++) {
            if (opponent[other] == null) {
                opponent[free] = other;
                opponent[other] = free;
                match(opponent, found);
                opponent[free] = null;
                opponent[other] = null;
            }
        }
    }

    private static void extend(
            List<List<Integer>> rounds, List<List<Integer>> matchings, List<List<List<Integer>>> found) {
        if (rounds.size() == 5) {
            found.add(List.copyOf(rounds));
            return;
        }
        for (List<Integer> next : matchings) {
            boolean isNew = rounds.stream()
                    .allMatch(round -> IntStream.range(0, 6)
                            .noneMatch(team -> round.get(team).equals(next.get(team))));
            if (isNew) {
                rounds.add(next);
                extend(rounds, matchings, found);
                rounds.remove(rounds.size() - 1);
            }
        }
    }
}
