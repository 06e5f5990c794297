package lanetide.squads.rotation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import lanetide.squads.rotation.design.Ring;
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
                .hasMessage("groups [0, 1] share pair 0 in game 0, counted from zero; look for collisions first");
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
}
