package lanetide.squads.rotation;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Mends a rotation after pairs are lost, with the least disturbance: in every game as few groups as possible bowl elsewhere
 * than planned; among such plans as few as possible come back to a pair; among those everybody walks least.
 *
 * <p>Game after game, each as an assignment of groups to the pairs that are left ({@link Assignment}). The number of changed
 * visits is the least there is, as only groups that were to bowl on a lost pair are moved; repeats and walking are least
 * for each game after the ones before it.
 */
public final class RotationRepair {
    private static final long CHANGED = 1_000_000_000;
    private static final long AGAIN = 1_000_000;
    private static final long PER_LANE = 1_000;

    private final Rotation planned;
    private final List<Integer> left;
    private final List<Integer> leftLanes;
    private final int[][] table;

    private RotationRepair(Rotation planned, List<Integer> left, List<Integer> leftLanes) {
        this.planned = planned;
        this.left = left;
        this.leftLanes = leftLanes;
        this.table = new int[planned.games()][planned.groups()];
    }

    /**
     * Mends a rotation.
     *
     * @param planned the rotation as planned, without collisions
     * @param lost pairs that are lost, counted from zero
     * @param fromGame first game without them, counted from zero
     * @param leftLanes number of the left lane of each pair
     * @return the rotation with the games before as they were
     * @throws ImpossibleRotationException if fewer pairs are left than there are groups
     */
    public static Rotation without(Rotation planned, Set<Integer> lost, int fromGame, List<Integer> leftLanes) {
        List<Integer> left = IntStream.range(0, planned.pairs())
                .filter(pair -> !lost.contains(pair))
                .boxed()
                .toList();
        if (left.size() < planned.groups()) {
            throw new ImpossibleRotationException(
                    "number of pairs left",
                    left.size(),
                    "at least the number of groups (%d)".formatted(planned.groups()),
                    "Dissolve groups, or split the squad.");
        }
        RotationRepair repair = new RotationRepair(planned, left, leftLanes);
        for (int game = 0; game < planned.games(); game++) {
            repair.plan(game, game >= fromGame);
        }
        return Rotation.tabulate(
                planned.groups(), planned.pairs(), planned.games(), (game, group) -> repair.table[game][group]);
    }

    private void plan(int game, boolean mend) {
        for (int group = 0; group < planned.groups(); group++) {
            table[game][group] = planned.pairOf(game, group);
        }
        if (mend && IntStream.of(table[game]).anyMatch(pair -> !left.contains(pair))) {
            int[] place =
                    Assignment.cheapest(planned.groups(), left.size(), (group, at) -> cost(game, group, left.get(at)));
            for (int group = 0; group < planned.groups(); group++) {
                table[game][group] = left.get(place[group]);
            }
        }
    }

    private long cost(int game, int group, int pair) {
        boolean changed = pair != planned.pairOf(game, group);
        return (changed ? CHANGED : 0)
                + (changed && isVisited(game, group, pair) ? AGAIN : 0)
                + (changed ? PER_LANE * walk(game, group, pair) : 0)
                + pair;
    }

    /** Whether the group has bowled there, or is to bowl there later as planned. */
    private boolean isVisited(int game, int group, int pair) {
        return IntStream.range(0, planned.games())
                .filter(other -> other != game)
                .anyMatch(other -> (other < game ? table[other][group] : planned.pairOf(other, group)) == pair);
    }

    private long walk(int game, int group, int pair) {
        int from = game == 0 ? planned.pairOf(0, group) : table[game - 1][group];
        return Math.abs((long) leftLanes.get(pair) - leftLanes.get(from));
    }
}
