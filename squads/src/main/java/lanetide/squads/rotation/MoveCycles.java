package lanetide.squads.rotation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.alg.cycle.HawickJamesSimpleCycles;
import org.jgrapht.graph.builder.GraphTypeBuilder;

/** The closed rounds of pairs that a move runs in: who swaps with whom, and which pairs never see each other's groups. */
public final class MoveCycles {

    private MoveCycles() {}

    /**
     * The cycles of the move between two games. A pair whose group stays is a cycle of one; a chain of pairs that
     * starts or ends at an empty pair is no cycle.
     *
     * @param rotation a rotation without collisions
     * @param game the game before the move, counted from zero
     * @return the cycles, each from its lowest pair in the order a group would go round, ordered by that pair
     * @throws IndexOutOfBoundsException if {@code game} is not in {@code [0, rotation.games() - 1)}
     * @throws IllegalArgumentException if the rotation has a collision
     */
    public static List<List<Integer>> after(Rotation rotation, int game) {
        if (game < 0 || game >= rotation.games() - 1) {
            throw new IndexOutOfBoundsException("The game (%d) must be 0 to %d. The last game has no move after it."
                    .formatted(game, rotation.games() - 2));
        }
        RotationCheck.collisions(rotation).stream().findFirst().ifPresent(collision -> {
            throw new IllegalArgumentException(collision.sentence() + " Give each group a pair of its own first.");
        });
        return new HawickJamesSimpleCycles<>(moves(rotation, game))
                .findSimpleCycles().stream()
                        .map(MoveCycles::fromLowestPair)
                        .sorted(Comparator.comparing(cycle -> cycle.get(0)))
                        .toList();
    }

    private static Graph<Integer, Move> moves(Rotation rotation, int game) {
        Graph<Integer, Move> moves = GraphTypeBuilder.<Integer, Move>directed()
                .allowingMultipleEdges(false)
                .allowingSelfLoops(true)
                .buildGraph();
        for (int pair = 0; pair < rotation.pairs(); pair++) {
            moves.addVertex(pair);
        }
        for (int pair = 0; pair < rotation.pairs(); pair++) {
            for (Move move : rotation.graph().outgoingEdgesOf(new Visit(game, pair))) {
                moves.addEdge(move.from().pair(), move.to().pair(), move);
            }
        }
        return moves;
    }

    private static List<Integer> fromLowestPair(List<Integer> cycle) {
        List<Integer> turned = new ArrayList<>(cycle);
        Collections.rotate(turned, -turned.indexOf(Collections.min(turned)));
        return List.copyOf(turned);
    }
}
