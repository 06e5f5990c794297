package lanetide.squads.rotation.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.squads.fixture.ReadmeRow;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.Session;
import lanetide.squads.rotation.Tables;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WearExposureTest {

    /**
     * A published plan: 144 players, 24 games in 3 days, 3 squads, 24 lanes; every player on the same lanes equally
     * often and once each on fresh, middle and worn oil (USBC release on the U.S. Open, 1 March 2017). Four on a pair
     * and two visits of each pair follow.
     */
    @Test
    void thePublishedPlanOfThreeSquadsOverThreeDaysIsFair() {
        List<String> squads = List.of("A", "B", "C");
        List<Session> sessions = new ArrayList<>();
        for (int day = 0; day < 3; day++) {
            for (int turn = 0; turn < 3; turn++) {
                sessions.add(new Session(
                        squads.get((day + turn) % 3), turn == 0, dayOf(day), Collections.nCopies(12, new Hands(3, 1))));
            }
        }

        WearExposure exposure = WearExposure.of(sessions);

        assertThat(sessions.get(0).groups().stream().mapToInt(Hands::bowlers)).containsOnly(144 / 3 / 12);
        assertThat(exposure.longestOiling()).isEqualTo(24);
        assertThat(exposure.groups()).hasSize(36).allSatisfy(group -> {
            assertThat(group.fresh() + group.middle() + group.worn()).isEqualTo(24);
            assertThat(List.of(group.fresh(), group.middle(), group.worn())).containsOnly(8);
            assertThat(group.gamesSinceOiling()).isEqualTo(11.5);
        });
        for (int group = 0; group < 12; group++) {
            int here = group;
            for (int pair = 0; pair < 12; pair++) {
                int lane = pair;
                assertThat(IntStream.range(0, 3)
                                .boxed()
                                .flatMap(day -> IntStream.range(0, 8)
                                        .mapToObj(game -> dayOf(day).pairOf(game, here)))
                                .filter(visited -> visited == lane))
                        .hasSize(2);
            }
        }
        GroupExposure any = exposure.groups().get(0);
        ReadmeRow.says(
                "144 players, 3 squads, 3 days, 12 pairs, 24 games: games of each group on fresh, middle and worn pairs",
                any.fresh() + ", " + any.middle() + ", " + any.worn());
        assertThat(EventChecks.of(sessions).outcome(EventChecks.Code.WEAR)).isEqualTo(Outcome.HOLDS);
    }

    private static Rotation dayOf(int day) {
        return Tables.ofGames(
                12,
                IntStream.range(8 * day, 8 * day + 8)
                        .mapToObj(game -> IntStream.range(0, 12)
                                .map(group -> (group + game) % 12)
                                .boxed()
                                .toList())
                        .toList());
    }

    @Test
    void squadsOnOneOilingFindFreshMiddleAndWornLanes() {
        List<Session> sessions = IntStream.range(0, 3)
                .mapToObj(squad -> new Session(
                        "S" + squad, squad == 0, new Ring(1, 1).plan(4, 4, 2), Collections.nCopies(4, new Hands(2, 1))))
                .toList();

        List<GroupExposure> groups = WearExposure.of(sessions).groups();

        assertThat(groups.get(0)).isEqualTo(new GroupExposure("S0", 0, 2, 0, 0, 0.5, 1, 0.5));
        assertThat(groups.get(4)).isEqualTo(new GroupExposure("S1", 0, 0, 2, 0, 2.5, 5, 2.5));
        assertThat(groups.get(8)).isEqualTo(new GroupExposure("S2", 0, 0, 0, 2, 4.5, 9, 4.5));
        assertThat(EventChecks.of(sessions).sharing()).containsExactly("S0", "S1", "S2");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void anotherOrderOfGroupsAndMirroredHandsChangeOnlyTheLabels(long seed) {
        Rotation rotation = new Shuffled(seed).plan(5, 7, 6);
        List<Hands> hands =
                List.of(new Hands(3, 0), new Hands(2, 2), new Hands(1, 4), new Hands(0, 1), new Hands(5, 1));
        List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4));
        Collections.shuffle(order, new java.util.Random(seed));
        Rotation renamed = Tables.ofGames(
                7,
                IntStream.range(0, 6)
                        .mapToObj(game -> order.stream()
                                .map(group -> rotation.pairOf(game, group))
                                .toList())
                        .toList());
        List<Hands> mirrored = order.stream()
                .map(group ->
                        new Hands(hands.get(group).left(), hands.get(group).right()))
                .toList();

        List<GroupExposure> before = WearExposure.of(List.of(new Session("A", true, rotation, hands)))
                .groups();
        List<GroupExposure> after = WearExposure.of(List.of(new Session("B", true, renamed, mirrored)))
                .groups();

        for (int i = 0; i < 5; i++) {
            GroupExposure was = before.get(order.get(i));
            assertThat(after.get(i))
                    .isEqualTo(new GroupExposure(
                            "B",
                            i,
                            was.fresh(),
                            was.middle(),
                            was.worn(),
                            was.gamesSinceOiling(),
                            was.leftHandedBefore(),
                            was.rightHandedBefore()));
        }
    }

    @Test
    void turnsThatDoNotFitTogetherAreRefused() {
        Session four = new Session("A", true, new Stay().plan(4, 4, 1), Collections.nCopies(4, new Hands(1, 0)));
        Session three = new Session("A", true, new Stay().plan(3, 4, 1), Collections.nCopies(3, new Hands(1, 0)));
        Session narrow = new Session("B", true, new Stay().plan(3, 3, 1), Collections.nCopies(3, new Hands(1, 0)));

        assertThatThrownBy(() -> WearExposure.of(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WearExposure.of(List.of(four, three))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> WearExposure.of(List.of(four, narrow))).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Hands(0, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Session("A", true, new Stay().plan(4, 4, 1), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
