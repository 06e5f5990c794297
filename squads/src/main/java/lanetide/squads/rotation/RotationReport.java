package lanetide.squads.rotation;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a rotation does, before any ball is bowled.
 *
 * @param isPermutation whether every game gives each group a pair of its own
 * @param collisions groups sent to one pair together, by game and pair
 * @param repeatedVisits groups that come back to a pair they have left, by group and game
 * @param solePredecessors groups that take over from one and the same group every time, by group
 * @param carryOverIndex sum over ordered pairs of groups of the squared number of times the second follows the first
 * @param carryOverMinimum the index with the same number of followings spread evenly
 * @param fewestPredecessors different other groups followed by the group that follows fewest
 * @param mostPredecessors different other groups followed by the group that follows most
 * @param walkPairsPerGame mean distance of a move between two games in pairs along the row; 0 with one game
 * @param longestWalkPairs the longest such move
 */
public record RotationReport(
        boolean isPermutation,
        List<Collision> collisions,
        List<RepeatedVisit> repeatedVisits,
        List<SolePredecessor> solePredecessors,
        int carryOverIndex,
        int carryOverMinimum,
        int fewestPredecessors,
        int mostPredecessors,
        double walkPairsPerGame,
        int longestWalkPairs) {

    /** A report; the lists are copied. */
    public RotationReport {
        collisions = List.copyOf(collisions);
        repeatedVisits = List.copyOf(repeatedVisits);
        solePredecessors = List.copyOf(solePredecessors);
    }

    /**
     * All findings, the gravest kind first.
     *
     * @return collisions, repeated visits, sole predecessors
     */
    public List<RotationFinding> findings() {
        return Stream.of(collisions, repeatedVisits, solePredecessors)
                .<RotationFinding>flatMap(List::stream)
                .toList();
    }

    /**
     * The repeated visit that comes first in play.
     *
     * @return the one in the earliest game, of the lowest group among several; empty if nobody comes back
     */
    public Optional<RepeatedVisit> firstRepeatedVisit() {
        return repeatedVisits.stream()
                .min(Comparator.comparingInt(RepeatedVisit::againGame).thenComparingInt(RepeatedVisit::group));
    }
}
