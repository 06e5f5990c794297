package lanetide.squads.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RotationTest {

    private final Rotation ring = new Ring(1, 1).plan(3, 4, 3);

    @Test
    void groupsAndPairsAreFoundFromEitherSide() {
        assertThat(ring.pairOf(2, 2)).isZero();
        assertThat(ring.groupOn(2, 0)).hasValue(2);
        assertThat(ring.groupOn(0, 3)).isEmpty();
        assertThat(List.of(ring.groups(), ring.pairs(), ring.games())).containsExactly(3, 4, 3);
    }

    @Test
    void theGraphHasAVertexForEveryPairInEveryGameAndAnArcForEveryMove() {
        assertThat(ring.graph().vertexSet()).hasSize(12);
        assertThat(ring.graph().edgeSet()).hasSize(6);
        Move home = new Move(2, new Visit(1, 3), new Visit(2, 0));
        assertThat(ring.graph().getEdge(home.from(), home.to())).isEqualTo(home);
        assertThat(home.distancePairs()).isEqualTo(3);
    }

    @Test
    void betweenTwoGamesTheMovesOfASoundRotationAreAMatching() {
        assertThat(ring.graph().vertexSet())
                .allMatch(visit ->
                        ring.graph().outDegreeOf(visit) <= 1 && ring.graph().inDegreeOf(visit) <= 1);
    }

    @Test
    void theGraphCannotBeChanged() {
        assertThatThrownBy(() -> ring.graph().removeVertex(new Visit(0, 0)))
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void groupsThatShareAPairTwiceRunningMoveSideBySide() {
        Rotation faulty = Tables.ofGames(2, List.of(List.of(0, 0), List.of(1, 1)));

        assertThat(faulty.graph().getAllEdges(new Visit(0, 0), new Visit(1, 1))).hasSize(2);
        assertThat(faulty.groupsOn(1, 1)).containsExactly(0, 1);
        assertThatThrownBy(() -> faulty.groupOn(0, 0))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("Game 1: group 1 and group 2 are sent to pair 1 together.");
    }

    @ParameterizedTest
    @CsvSource({"3, 0, game", "-1, 0, game", "0, 3, group", "0, -1, group"})
    void placesOutsideTheRotationAreRefused(int game, int group, String what) {
        assertThatThrownBy(() -> ring.pairOf(game, group))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageStartingWith("The " + what);
    }

    @Test
    void aPairThatDoesNotExistIsRefused() {
        assertThatThrownBy(() -> ring.groupOn(0, 4))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageStartingWith("The pair (4) must be 0 to 3");
    }

    @Test
    void equalTablesAreEqualRotations() {
        assertThat(ring)
                .isEqualTo(Tables.ofGames(4, List.of(List.of(0, 1, 2), List.of(1, 2, 3), List.of(2, 3, 0))))
                .isNotEqualTo(Tables.ofGames(5, List.of(List.of(0, 1, 2), List.of(1, 2, 3), List.of(2, 3, 0))));
    }

    /** A move of k in a ring of P falls into gcd(k, P) rounds of P / gcd(k, P) pairs: ring arithmetic. */
    @ParameterizedTest
    @CsvSource(useHeadersInDisplayName = true, textBlock = """
            pairs, step, rounds, length
            12,    4,    4,      3
            12,    1,    1,      12
            10,    2,    2,      5
            11,    3,    1,      11
            """)
    void aMoveFallsIntoTheRoundsOfRingArithmetic(int pairs, int step, int rounds, int length) {
        assertThat(MoveCycles.after(new Ring(step, 1).plan(pairs, pairs, 2), 0))
                .hasSize(rounds)
                .allMatch(round -> round.size() == length);
    }

    @Test
    void roundsAreReadFromTheirLowestPairInTheDirectionOfTheMove() {
        assertThat(MoveCycles.after(new Ring(-2, 1).plan(6, 6, 2), 0))
                .containsExactly(List.of(0, 4, 2), List.of(1, 5, 3));
        assertThat(MoveCycles.after(new Counter(1).plan(4, 4, 2), 0)).containsExactly(List.of(0, 3), List.of(1, 2));
        assertThat(MoveCycles.after(new Stay().plan(2, 3, 2), 0)).containsExactly(List.of(0), List.of(1));
        assertThat(MoveCycles.after(new Ring(1, 1).plan(2, 4, 2), 0)).isEmpty();
    }

    @Test
    void onlyAMoveOfASoundRotationHasRounds() {
        assertThatThrownBy(() -> MoveCycles.after(ring, 2))
                .isInstanceOf(IndexOutOfBoundsException.class)
                .hasMessageContaining("The game (2) must be 0 to 1");
        Rotation faulty = Tables.ofGames(2, List.of(List.of(0, 0), List.of(1, 0)));
        assertThatThrownBy(() -> MoveCycles.after(faulty, 0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("Game 1: group 1 and group 2");
    }
}
