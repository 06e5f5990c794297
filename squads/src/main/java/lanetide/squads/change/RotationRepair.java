package lanetide.squads.change;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.Rotation;

/**
 * Mends a rotation after pairs are lost. Either with the least disturbance: in every game as few groups as possible
 * bowl elsewhere than planned, among such plans as few as possible come back to a pair, and among those everybody walks
 * least. Or with the first two turned round: as few as possible come back, for the price of more changes.
 *
 * <p>Game after game, each as an assignment of groups to the pairs that are left ({@link Assignment}). With the least
 * disturbance the number of changed visits is the least there is, as only groups that were to bowl on a lost pair are
 * moved; all else is least for each game after the ones before it.
 */
public final class RotationRepair {
    private static final long FIRST = 1_000_000_000_000L;
    private static final long SECOND = 1_000_000_000;
    private static final long THIRD = 1_000_000;
    private static final long PER_LANE = 1_000;

    /** What matters most. */
    public enum Priority {
        /** That as few visits as possible change. */
        FEW_CHANGES,
        /** That as few groups as possible come back to a pair. */
        FEW_REPEATS
    }

    private final Rotation planned;
    private final Priority priority;
    private final List<Integer> left;
    private final List<Integer> leftLanes;
    private final int[][] table;

    private RotationRepair(Rotation planned, Priority priority, List<Integer> left, List<Integer> leftLanes) {
        this.planned = planned;
        this.priority = priority;
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
     * @param priority what matters most
     * @return the rotation with the games before as they were
     * @throws ImpossibleRotationException if fewer pairs are left than there are groups
     */
    public static Rotation without(
            Rotation planned, Set<Integer> lost, int fromGame, List<Integer> leftLanes, Priority priority) {
        List<Integer> left = IntStream.range(0, planned.pairs())
                .filter(pair -> !lost.contains(pair))
                .boxed()
                .toList();
        if (left.size() < planned.groups()) {
            throw new ImpossibleRotationException(
                    "number of pairs left",
                    left.size(),
                    "at least the number of groups (" + planned.groups() + ")",
                    "Dissolve groups, or split the squad.");
        }
        RotationRepair repair = new RotationRepair(planned, priority, left, leftLanes);
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
        if (mend && mustChange(game)) {
            int[] place = Assignment.ofLeastCost(
                    planned.groups(), left.size(), (group, at) -> cost(game, group, left.get(at)));
            for (int group = 0; group < planned.groups(); group++) {
                table[game][group] = left.get(place[group]);
            }
        }
    }

    /** Whether somebody was to bowl on a lost pair, or would come back to one after earlier changes. */
    private boolean mustChange(int game) {
        return IntStream.range(0, planned.groups())
                .anyMatch(group -> !left.contains(table[game][group])
                        || (priority == Priority.FEW_REPEATS && comesBack(game, group, table[game][group])));
    }

    private long cost(int game, int group, int pair) {
        boolean changed = pair != planned.pairOf(game, group);
        long again = comesBack(game, group, pair) ? 1 : 0;
        long spoilsLater = changed && isPlannedLater(game, group, pair) ? 1 : 0;
        long change = changed ? 1 : 0;
        long first = priority == Priority.FEW_CHANGES ? change : again;
        long second = priority == Priority.FEW_CHANGES ? again : change;
        return FIRST * first
                + SECOND * second
                + THIRD * spoilsLater
                + (changed ? PER_LANE * walk(game, group, pair) : 0)
                + pair;
    }

    /** Whether a group would bowl on a pair again, other than by staying on it where it was to stay. */
    private boolean comesBack(int game, int group, int pair) {
        boolean stays = game > 0
                && table[game - 1][group] == pair
                && planned.pairOf(game - 1, group) == planned.pairOf(game, group);
        return !stays && IntStream.range(0, game).anyMatch(before -> table[before][group] == pair);
    }

    private boolean isPlannedLater(int game, int group, int pair) {
        return IntStream.range(game + 1, planned.games()).anyMatch(later -> planned.pairOf(later, group) == pair);
    }

    private long walk(int game, int group, int pair) {
        int from = game == 0 ? planned.pairOf(0, group) : table[game - 1][group];
        return Math.abs((long) leftLanes.get(pair) - leftLanes.get(from));
    }
}
