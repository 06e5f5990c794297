package lanetide.squads.change;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import lanetide.squads.change.RotationRepair.Priority;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;
import lanetide.squads.rotation.Tables;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

class RotationRepairTest {
    private static long changed;
    private static long onLostPairs;

    @AfterAll
    static void theReadmeSaysHowManyVisitsChanged() {
        ReadmeRow.says(
                "visits changed after late changes, 100 events: of those planned on lost pairs",
                changed + " of " + onLostPairs);
    }

    static LongStream seeds() {
        return LongStream.range(0, 100);
    }

    /** Nobody can bowl on a lost pair, so that no plan changes fewer visits than were planned there. */
    @ParameterizedTest
    @MethodSource("seeds")
    void onlyVisitsToLostPairsChangeAndNobodySharesAPair(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 2 + random.nextInt(10);
        int losses = 1 + random.nextInt(pairs - 1);
        int groups = 1 + random.nextInt(pairs - losses);
        int games = 1 + random.nextInt(8);
        int fromGame = random.nextInt(games + 1);
        Rotation planned = new Shuffled(seed).plan(groups, pairs, games);
        Set<Integer> lost = new TreeSet<>();
        while (lost.size() < losses) {
            lost.add(random.nextInt(pairs));
        }

        Rotation now = RotationRepair.without(planned, lost, fromGame, lanes(pairs), Priority.FEW_CHANGES);

        changed += changes(planned, now);
        assertThat(RotationReport.of(now).isPermutation()).isTrue();
        for (int game = 0; game < games; game++) {
            for (int group = 0; group < groups; group++) {
                boolean gone = game >= fromGame && lost.contains(planned.pairOf(game, group));
                onLostPairs += gone ? 1 : 0;
                assertThat(now.pairOf(game, group) != planned.pairOf(game, group))
                        .as("seed %d, game %d, group %d", seed, game, group)
                        .isEqualTo(gone);
                assertThat(game >= fromGame && lost.contains(now.pairOf(game, group)))
                        .isFalse();
            }
        }
    }

    @Test
    void aDisplacedGroupGoesWhereItHasNotBeenAndNearIfItCan() {
        Rotation planned = Tables.ofGames(6, List.of(List.of(0, 1), List.of(1, 2), List.of(2, 3)));

        Rotation now = RotationRepair.without(planned, Set.of(2), 1, lanes(6), Priority.FEW_CHANGES);

        assertThat(Tables.ofGames(6, List.of(List.of(0, 1), List.of(1, 0), List.of(4, 3))))
                .as("in game 2 group 2 goes to pair 1, the nearest it does not know; in game 3 group 1 goes to pair 5,"
                        + " as it knows 1 and 2 and pair 4 is taken")
                .isEqualTo(now);
    }

    /** Three groups that stay: the one that loses its pair goes to the nearest free one and stays there. */
    @ParameterizedTest
    @EnumSource(Priority.class)
    void aGroupThatIsToStayStaysWhereItIsSent(Priority priority) {
        Rotation planned = new Stay().plan(3, 6, 4);

        Rotation now = RotationRepair.without(planned, Set.of(1), 0, lanes(6), priority);

        assertThat(Tables.ofGames(6, Collections.nCopies(4, List.of(0, 3, 2)))).isEqualTo(now);
    }

    /** Whatever matters most, a playable plan comes out, and the fewest changes are the fewest. */
    @ParameterizedTest
    @MethodSource("seeds")
    void noPriorityChangesFewerVisitsThanTheOneForIt(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int pairs = 4 + random.nextInt(8);
        int groups = 1 + random.nextInt(pairs - 2);
        Rotation planned = new Ring(1, 1).plan(groups, pairs, 2 + random.nextInt(pairs - 2));
        Set<Integer> lost = Set.of(random.nextInt(pairs));

        Rotation few = RotationRepair.without(planned, lost, 0, lanes(pairs), Priority.FEW_CHANGES);
        Rotation sound = RotationRepair.without(planned, lost, 0, lanes(pairs), Priority.FEW_REPEATS);

        assertThat(RotationReport.of(sound).isPermutation()).isTrue();
        assertThat(changes(planned, sound)).isGreaterThanOrEqualTo(changes(planned, few));
        for (int game = 0; game < planned.games(); game++) {
            assertThat(sound.groupsOn(game, lost.iterator().next())).isEmpty();
        }
    }

    /** Eight groups that move one right over twelve pairs, two of which are lost. */
    @Test
    void repeatsAreAvoidedForMoreChanges() {
        Rotation planned = new Ring(1, 1).plan(8, 12, 8);
        Rotation few = RotationRepair.without(planned, Set.of(5, 6), 0, lanes(12), Priority.FEW_CHANGES);
        Rotation sound = RotationRepair.without(planned, Set.of(5, 6), 0, lanes(12), Priority.FEW_REPEATS);

        assertThat(gamesBowledAgain(sound)).isLessThan(gamesBowledAgain(few));
        assertThat(changes(planned, sound)).isGreaterThan(changes(planned, few));
    }

    private static int gamesBowledAgain(Rotation rotation) {
        return IntStream.range(0, rotation.groups())
                .map(group -> rotation.games()
                        - (int) IntStream.range(0, rotation.games())
                                .map(game -> rotation.pairOf(game, group))
                                .distinct()
                                .count())
                .sum();
    }

    private static long changes(Rotation planned, Rotation now) {
        return IntStream.range(0, planned.games())
                .mapToLong(game -> IntStream.range(0, planned.groups())
                        .filter(group -> planned.pairOf(game, group) != now.pairOf(game, group))
                        .count())
                .sum();
    }

    @Test
    void fewerPairsThanGroupsAreRefusedWithAdvice() {
        assertThatThrownBy(() ->
                        RotationRepair.without(new Stay().plan(3, 3, 2), Set.of(0), 0, lanes(3), Priority.FEW_CHANGES))
                .isInstanceOf(ImpossibleRotationException.class)
                .hasMessage(
                        "The number of pairs left (2) must be at least the number of groups (3). Dissolve groups, or"
                                + " split the squad.");
    }

    /** Against trying all assignments, on small cases. */
    @ParameterizedTest
    @MethodSource("seeds")
    void anAssignmentIsTheCheapestOfAll(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int places = 1 + random.nextInt(6);
        int takers = 1 + random.nextInt(places);
        long[][] cost = new long[takers][places];
        for (long[] row : cost) {
            for (int place = 0; place < places; place++) {
                row[place] = random.nextInt(20);
            }
        }

        int[] found = Assignment.ofLeastCost(takers, places, (taker, place) -> cost[taker][place]);

        assertThat(found).doesNotHaveDuplicates().hasSize(takers);
        long sum = IntStream.range(0, takers)
                .mapToLong(taker -> cost[taker][found[taker]])
                .sum();
        assertThat(sum).isEqualTo(cheapest(cost, 0, 0));
    }

    @Test
    void thereMustBeAPlaceForEverybody() {
        assertThatThrownBy(() -> Assignment.ofLeastCost(3, 2, (taker, place) -> 0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static long cheapest(long[][] cost, int taker, int taken) {
        if (taker == cost.length) {
            return 0;
        }
        long least = Long.MAX_VALUE;
        for (int place = 0; place < cost[taker].length; place++) {
            if ((taken & 1 << place) == 0) {
                least = Math.min(least, cost[taker][place] + cheapest(cost, taker + 1, taken | 1 << place));
            }
        }
        return least;
    }

    private static List<Integer> lanes(int pairs) {
        return IntStream.range(0, pairs).map(pair -> 2 * pair + 1).boxed().toList();
    }
}
