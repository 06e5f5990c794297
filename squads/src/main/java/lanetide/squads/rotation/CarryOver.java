package lanetide.squads.rotation;

import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.builder.GraphTypeBuilder;

/**
 * Who follows whom: for each ordered pair of groups, how often the second is the next to bowl on a lane pair the first
 * has bowled on. Games in which the pair is empty lie between without counting; a group that stays, or finds a pair as
 * it left it, follows itself.
 *
 * <p>Idea and index: K. G. Russell, "Balancing carry-over effects in round robin tournaments", Biometrika 67 (1980).
 */
public final class CarryOver {

    private final Graph<Integer, Following> graph;
    private final int games;

    private CarryOver(Graph<Integer, Following> graph, int games) {
        this.graph = new AsUnmodifiableGraph<>(graph);
        this.games = games;
    }

    /**
     * Counts the followings of a rotation.
     *
     * @param rotation a rotation, faulty or not; groups that share a pair all follow, and are all followed
     * @return its carry-over
     */
    public static CarryOver of(Rotation rotation) {
        int[][] times = new int[rotation.groups()][rotation.groups()];
        for (int pair = 0; pair < rotation.pairs(); pair++) {
            countOnPair(rotation, pair, times);
        }
        return new CarryOver(graphOf(times), rotation.games());
    }

    /**
     * How often one group follows another.
     *
     * @param before the group that leaves, counted from zero
     * @param after the group that follows, counted from zero
     * @return 0 or more
     */
    public int times(int before, int after) {
        Following following = graph.getEdge(before, after);
        return following == null ? 0 : following.times();
    }

    /**
     * The imbalance: the sum of squared counts over all ordered pairs of groups.
     *
     * @return at least {@link #minimum()}
     */
    public int index() {
        return graph.edgeSet().stream()
                .mapToInt(following -> Math.multiplyExact(following.times(), following.times()))
                .reduce(0, Math::addExact);
    }

    /**
     * The index if as many followings were spread as evenly as whole numbers allow: n(n-1) for n groups on n pairs in n
     * games. Followings of a group by itself are spread over only if the rotation has any.
     *
     * @return a lower bound on {@link #index()}; not every bound is reached by some rotation
     */
    public int minimum() {
        int total = graph.edgeSet().stream().mapToInt(Following::times).sum();
        return evenIndex(total, cellsInUse());
    }

    /**
     * The index if everybody followed one and the same group at every move: groups times the square of moves, which is
     * n(n-1)&sup2; for n groups on n pairs in n games.
     *
     * @return an upper bound on {@link #index()}
     */
    public int maximum() {
        int groups = graph.vertexSet().size();
        return Math.multiplyExact(groups, Math.multiplyExact(games - 1, games - 1));
    }

    /**
     * The sum of squares of so many followings, spread over so many cells as evenly as whole numbers allow.
     *
     * @param total followings, at least 0
     * @param cells cells, at least 1 where there are followings
     * @return the least index there can be
     */
    public static int evenIndex(int total, int cells) {
        if (total == 0) {
            return 0;
        }
        int even = total / cells;
        int oneMore = total % cells;
        return Math.addExact(
                Math.multiplyExact(cells - oneMore, even * even), Math.multiplyExact(oneMore, (even + 1) * (even + 1)));
    }

    /**
     * The other groups a group ever follows.
     *
     * @param group group, counted from zero
     * @return different groups in ascending order, without the group itself
     */
    public List<Integer> predecessorsOf(int group) {
        return Graphs.predecessorListOf(graph, group).stream()
                .filter(other -> other != group)
                .sorted()
                .toList();
    }

    /**
     * The carry-over as a graph: groups are vertices, an arc runs from a group to each that follows it.
     *
     * @return an unmodifiable graph, in which a group that follows itself carries a loop
     */
    public Graph<Integer, Following> graph() {
        return graph;
    }

    private int cellsInUse() {
        int groups = graph.vertexSet().size();
        boolean followsItself = graph.edgeSet().stream().anyMatch(arc -> arc.before() == arc.after());
        return followsItself ? groups * groups : groups * (groups - 1);
    }

    private static void countOnPair(Rotation rotation, int pair, int[][] times) {
        List<Integer> before = List.of();
        for (int game = 0; game < rotation.games(); game++) {
            List<Integer> after = rotation.groupsOn(game, pair);
            for (int leaving : before) {
                for (int arriving : after) {
                    times[leaving][arriving]++;
                }
            }
            before = after.isEmpty() ? before : after;
        }
    }

    private static Graph<Integer, Following> graphOf(int[][] times) {
        Graph<Integer, Following> graph = GraphTypeBuilder.<Integer, Following>directed()
                .allowingMultipleEdges(false)
                .allowingSelfLoops(true)
                .buildGraph();
        for (int group = 0; group < times.length; group++) {
            graph.addVertex(group);
        }
        for (int before = 0; before < times.length; before++) {
            for (int after = 0; after < times.length; after++) {
                if (times[before][after] > 0) {
                    graph.addEdge(before, after, new Following(before, after, times[before][after]));
                }
            }
        }
        return graph;
    }
}
