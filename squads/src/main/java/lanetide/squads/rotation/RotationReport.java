package lanetide.squads.rotation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
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
 */
public record RotationReport(
        boolean isPermutation,
        List<Collision> collisions,
        List<RepeatedVisit> repeatedVisits,
        List<SolePredecessor> solePredecessors,
        int carryOverIndex,
        int carryOverMinimum,
        int fewestPredecessors,
        int mostPredecessors) {

    /** A report; the lists are copied. */
    public RotationReport {
        collisions = List.copyOf(collisions);
        repeatedVisits = List.copyOf(repeatedVisits);
        solePredecessors = List.copyOf(solePredecessors);
    }

    /**
     * Checks a rotation.
     *
     * @param rotation a rotation, faulty or not
     * @return all findings and figures; findings are ordered and the same for equal rotations
     */
    public static RotationReport of(Rotation rotation) {
        CarryOver carryOver = CarryOver.of(rotation);
        List<Collision> collisions = rotation.collisions();
        IntSummaryStatistics predecessors = IntStream.range(0, rotation.groups())
                .map(group -> carryOver.predecessorsOf(group).size())
                .summaryStatistics();
        return new RotationReport(
                collisions.isEmpty(),
                collisions,
                repeatedVisits(rotation),
                solePredecessors(rotation, carryOver),
                carryOver.index(),
                carryOver.minimum(),
                predecessors.getMin(),
                predecessors.getMax());
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

    private static List<RepeatedVisit> repeatedVisits(Rotation rotation) {
        return IntStream.range(0, rotation.groups())
                .boxed()
                .flatMap(group -> repeatedVisits(rotation, group).stream())
                .toList();
    }

    private static List<RepeatedVisit> repeatedVisits(Rotation rotation, int group) {
        List<RepeatedVisit> found = new ArrayList<>();
        Map<Integer, Integer> firstGameOnPair = new HashMap<>();
        for (int game = 0; game < rotation.games(); game++) {
            int pair = rotation.pairOf(game, group);
            Integer first = firstGameOnPair.putIfAbsent(pair, game);
            if (first != null && rotation.pairOf(game - 1, group) != pair) {
                found.add(new RepeatedVisit(group, pair, first, game));
            }
        }
        return found;
    }

    private static List<SolePredecessor> solePredecessors(Rotation rotation, CarryOver carryOver) {
        List<SolePredecessor> found = new ArrayList<>();
        for (int group = 0; group < rotation.groups(); group++) {
            List<Integer> others = carryOver.predecessorsOf(group);
            if (others.size() == 1 && carryOver.times(others.get(0), group) > 1) {
                found.add(new SolePredecessor(group, others.get(0), carryOver.times(others.get(0), group)));
            }
        }
        return found;
    }
}
