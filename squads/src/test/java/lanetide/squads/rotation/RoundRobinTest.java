package lanetide.squads.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lanetide.squads.rotation.RoundRobin.Meeting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class RoundRobinTest {
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 6, 7, 8, 9, 10, 16, 20, 24})
    void everybodyMeetsEverybodyOnceAndNobodyTwiceInARound(int size) {
        List<List<Meeting>> rounds = RoundRobin.rounds(size);

        Set<Meeting> all = new HashSet<>();
        for (List<Meeting> round : rounds) {
            assertThat(round.stream().flatMap(meeting -> List.of(meeting.first(), meeting.second()).stream()))
                    .doesNotHaveDuplicates()
                    .hasSize(size - size % 2)
                    .allMatch(player -> player >= 0 && player < size);
            all.addAll(round);
        }
        assertThat(rounds).hasSize(size - 1 + size % 2);
        assertThat(all).hasSize(size * (size - 1) / 2).allMatch(meeting -> meeting.first() < meeting.second());
    }

    /** K. G. Russell's index (Biometrika 67, 1980) of the circle method, rounds taken cyclically; by exact count. */
    @ParameterizedTest
    @CsvSource({"4, 12", "6, 60", "8, 196"})
    void itsCarryOverIndexIsThatOfTheCircleMethod(int size, int index) {
        List<List<Integer>> opponents = new ArrayList<>();
        for (List<Meeting> round : RoundRobin.rounds(size)) {
            opponents.add(IntStream.range(0, size)
                    .map(player -> opponent(round, player))
                    .boxed()
                    .toList());
        }
        opponents.add(opponents.get(0));

        assertThat(CarryOver.of(Tables.ofGames(size, opponents)).index()).isEqualTo(index);
    }

    private static int opponent(List<Meeting> round, int player) {
        return round.stream()
                .filter(meeting -> meeting.first() == player || meeting.second() == player)
                .mapToInt(meeting -> meeting.first() + meeting.second() - player)
                .findFirst()
                .orElseThrow();
    }

    /** Most visits of one player to one pair of lanes; on two pairs somebody must be on one of them three times. */
    @ParameterizedTest
    @CsvSource({"4, 3", "6, 2", "8, 3", "10, 3", "12, 3", "16, 3"})
    void thePairsOfLanesAreSharedNearlyEvenly(int size, int most) {
        int[][] visits = new int[size][size / 2];
        for (List<Meeting> round : RoundRobin.rounds(size)) {
            for (int pair = 0; pair < round.size(); pair++) {
                visits[round.get(pair).first()][pair]++;
                visits[round.get(pair).second()][pair]++;
            }
        }
        assertThat(IntStream.range(0, size)
                        .flatMap(player -> IntStream.of(visits[player]))
                        .max())
                .as("%d", size)
                .hasValue(most);
    }

    @Test
    void oneAloneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> RoundRobin.rounds(1));
    }
}
