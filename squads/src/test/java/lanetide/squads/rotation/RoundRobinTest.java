package lanetide.squads.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.RoundRobin.Meeting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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
    @Test
    void itsCarryOverIndexIsThatOfTheCircleMethod() {
        String told = IntStream.of(4, 6, 8)
                .mapToObj(size -> String.valueOf(index(size)))
                .collect(Collectors.joining(", "));

        assertThat(told).isEqualTo("12, 60, 196");
        ReadmeRow.says("circle method, rounds cyclically, n = 4, 6, 8: carry-over index", told);
    }

    private static long index(int size) {
        List<List<Integer>> opponents = new ArrayList<>();
        for (List<Meeting> round : RoundRobin.rounds(size)) {
            opponents.add(IntStream.range(0, size)
                    .map(player -> opponent(round, player))
                    .boxed()
                    .toList());
        }
        opponents.add(opponents.get(0));
        return CarryOver.of(Tables.ofGames(size, opponents)).index();
    }

    private static int opponent(List<Meeting> round, int player) {
        return round.stream()
                .filter(meeting -> meeting.first() == player || meeting.second() == player)
                .mapToInt(meeting -> meeting.first() + meeting.second() - player)
                .findFirst()
                .orElseThrow();
    }

    /** Most visits of one player to one pair of lanes; on two pairs somebody must be on one of them three times. */
    @Test
    void thePairsOfLanesAreSharedNearlyEvenly() {
        String told = IntStream.of(4, 6, 8, 10, 12, 16)
                .mapToObj(size -> String.valueOf(mostVisits(size)))
                .collect(Collectors.joining(", "));

        assertThat(told).isEqualTo("3, 2, 3, 3, 3, 3");
        ReadmeRow.says("most visits of one bowler to one pair of lanes, n = 4, 6, 8, 10, 12, 16", told);
    }

    private static int mostVisits(int size) {
        int[][] visits = new int[size][size / 2];
        for (List<Meeting> round : RoundRobin.rounds(size)) {
            for (int pair = 0; pair < round.size(); pair++) {
                visits[round.get(pair).first()][pair]++;
                visits[round.get(pair).second()][pair]++;
            }
        }
        return IntStream.range(0, size)
                .flatMap(player -> IntStream.of(visits[player]))
                .max()
                .orElseThrow();
    }

    @Test
    void oneAloneIsRefused() {
        assertThatIllegalArgumentException().isThrownBy(() -> RoundRobin.rounds(1));
    }
}
