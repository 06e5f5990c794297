package lanetide.squads.rotation.check;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.Rotation;

/**
 * How far groups carry their equipment, by lane numbers: closed and spare pairs are walked past too.
 *
 * @param pairsPerGame mean distance of a move in pairs; 0 without a move
 * @param longest the longest move, the earliest and then the lowest group of equals; empty without a move
 * @param longestPairs its distance in pairs
 */
public record Walk(double pairsPerGame, Optional<Move> longest, double longestPairs) {

    /**
     * Measures a rotation.
     *
     * @param rotation the rotation
     * @param leftLanes number of the left lane of each pair, as many as the rotation has pairs
     * @return its walk
     * @throws IllegalArgumentException if there are not as many lanes as pairs
     */
    public static Walk of(Rotation rotation, List<Integer> leftLanes) {
        if (leftLanes.size() != rotation.pairs()) {
            throw new IllegalArgumentException("there are " + leftLanes.size() + " left lanes for " + rotation.pairs()
                    + " pairs; both must be equal");
        }
        List<Move> moves = rotation.graph().edgeSet().stream()
                .sorted(Comparator.comparingInt((Move move) -> move.from().game())
                        .thenComparingInt(Move::group))
                .toList();
        Optional<Move> longest =
                moves.stream().reduce((one, other) -> lanes(other, leftLanes) > lanes(one, leftLanes) ? other : one);
        return new Walk(
                moves.stream()
                                .mapToInt(move -> lanes(move, leftLanes))
                                .average()
                                .orElse(0)
                        / 2,
                longest,
                longest.map(move -> lanes(move, leftLanes) / 2.0).orElse(0.0));
    }

    private static int lanes(Move move, List<Integer> leftLanes) {
        return Math.abs(
                leftLanes.get(move.to().pair()) - leftLanes.get(move.from().pair()));
    }
}
