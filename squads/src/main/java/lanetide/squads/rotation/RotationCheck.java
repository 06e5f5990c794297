package lanetide.squads.rotation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Looks a rotation over for what can be told from the plan alone. */
public final class RotationCheck {

    private RotationCheck() {}

    /**
     * Checks a rotation.
     *
     * @param rotation a rotation, faulty or not
     * @return all findings and figures; findings are ordered and the same for equal rotations
     */
    public static RotationReport of(Rotation rotation) {
        CarryOver carryOver = CarryOver.of(rotation);
        List<Collision> collisions = collisions(rotation);
        IntSummaryStatistics predecessors = IntStream.range(0, rotation.groups())
                .map(group -> carryOver.predecessorsOf(group).size())
                .summaryStatistics();
        IntSummaryStatistics walks = rotation.graph().edgeSet().stream()
                .mapToInt(Move::distancePairs)
                .summaryStatistics();
        return new RotationReport(
                collisions.isEmpty(),
                collisions,
                repeatedVisits(rotation),
                solePredecessors(rotation, carryOver),
                carryOver.index(),
                carryOver.minimum(),
                predecessors.getMin(),
                predecessors.getMax(),
                walks.getAverage(),
                walks.getCount() == 0 ? 0 : walks.getMax());
    }

    /**
     * Looks for groups that meet.
     *
     * @param rotation a rotation, faulty or not
     * @return groups sent to one pair together, by game and pair
     */
    public static List<Collision> collisions(Rotation rotation) {
        List<Collision> found = new ArrayList<>();
        for (Visit visit : rotation.graph().vertexSet()) {
            List<Integer> groups = rotation.groupsOn(visit.game(), visit.pair());
            if (groups.size() > 1) {
                found.add(new Collision(visit.game(), visit.pair(), groups));
            }
        }
        return found;
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
