package lanetide.squads.rotation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.IntBinaryOperator;
import org.jgrapht.Graph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.builder.GraphTypeBuilder;

/**
 * Which pair every group bowls on in every game. Immutable.
 *
 * <p>Groups, pairs and games are counted from zero. As a graph, a rotation is layered: one vertex for every pair in
 * every game, and one arc for every group from each of its games to the next. In a sound rotation the arcs between two
 * games form a matching.
 */
public final class Rotation {

    private final int pairs;
    private final int[][] pairByGameAndGroup;
    private final List<List<List<Integer>>> groupsByGameAndPair;
    private final Graph<Visit, Move> graph;

    private Rotation(int pairs, int[][] pairByGameAndGroup) {
        this.pairs = pairs;
        this.pairByGameAndGroup = pairByGameAndGroup;
        this.groupsByGameAndPair =
                Arrays.stream(pairByGameAndGroup).map(this::groupsByPair).toList();
        this.graph = new AsUnmodifiableGraph<>(layeredGraph());
    }

    /**
     * Writes a rotation out.
     *
     * @param groups groups that bowl at the same time
     * @param pairs lane pairs in the rotation
     * @param games games each group bowls
     * @param pairOfGameAndGroup the pair of a group in a game, all counted from zero
     * @return the rotation; several groups may be sent to one pair
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1} or {@code groups
     *     > pairs}
     */
    public static Rotation tabulate(int groups, int pairs, int games, IntBinaryOperator pairOfGameAndGroup) {
        PlanSize.requirePlayable(groups, pairs, games);
        int[][] table = new int[games][groups];
        for (int game = 0; game < games; game++) {
            for (int group = 0; group < groups; group++) {
                table[game][group] = pairOfGameAndGroup.applyAsInt(game, group);
            }
        }
        return new Rotation(pairs, table);
    }

    /**
     * The number of groups.
     *
     * @return at least 1, at most {@link #pairs()}
     */
    public int groups() {
        return pairByGameAndGroup[0].length;
    }

    /**
     * The number of lane pairs, used or not.
     *
     * @return at least 1
     */
    public int pairs() {
        return pairs;
    }

    /**
     * The number of games each group bowls.
     *
     * @return at least 1
     */
    public int games() {
        return pairByGameAndGroup.length;
    }

    /**
     * Where a group bowls.
     *
     * @param game game, counted from zero
     * @param group group, counted from zero
     * @return its pair, counted from zero
     * @throws IndexOutOfBoundsException if {@code game} is not in {@code [0, games())} or {@code group} not in
     *     {@code [0, groups())}
     */
    public int pairOf(int game, int group) {
        requireIndex("game", game, games());
        requireIndex("group", group, groups());
        return pairByGameAndGroup[game][group];
    }

    /**
     * Who bowls on a pair.
     *
     * @param game game, counted from zero
     * @param pair pair, counted from zero
     * @return the group, counted from zero; empty if the pair is free
     * @throws IndexOutOfBoundsException if {@code game} is not in {@code [0, games())} or {@code pair} not in
     *     {@code [0, pairs())}
     * @throws IllegalStateException if several groups are sent to the pair
     */
    public OptionalInt groupOn(int game, int pair) {
        List<Integer> sharing = groupsOn(game, pair);
        if (sharing.size() > 1) {
            throw new IllegalStateException("groups " + sharing + " share pair " + pair + " in game " + game
                    + ", counted from zero; look for collisions first");
        }
        return sharing.stream().mapToInt(Integer::intValue).findFirst();
    }

    /**
     * All groups sent to a pair.
     *
     * @param game game, counted from zero
     * @param pair pair, counted from zero
     * @return the groups in ascending order; more than one only in a faulty rotation
     * @throws IndexOutOfBoundsException if {@code game} is not in {@code [0, games())} or {@code pair} not in
     *     {@code [0, pairs())}
     */
    public List<Integer> groupsOn(int game, int pair) {
        requireIndex("game", game, games());
        requireIndex("pair", pair, pairs);
        return groupsByGameAndPair.get(game).get(pair);
    }

    /**
     * Looks for groups that meet.
     *
     * @return groups sent to one pair together, by game and pair
     */
    public List<Collision> collisions() {
        List<Collision> found = new ArrayList<>();
        for (Visit visit : graph.vertexSet()) {
            List<Integer> groups = groupsOn(visit.game(), visit.pair());
            if (groups.size() > 1) {
                found.add(new Collision(visit.game(), visit.pair(), groups));
            }
        }
        return found;
    }

    /**
     * Whether anybody is sent to a pair in any game.
     *
     * @param pair pair, counted from zero
     * @return false if it stays free
     * @throws IndexOutOfBoundsException if {@code pair} is not in {@code [0, pairs())}
     */
    public boolean visits(int pair) {
        requireIndex("pair", pair, pairs);
        return groupsByGameAndPair.stream()
                .anyMatch(groupsByPair -> !groupsByPair.get(pair).isEmpty());
    }

    /**
     * The same rotation in a row of more pairs, to the others of which nobody is sent.
     *
     * @param places for every pair of this rotation its place in the row, counted from zero
     * @param row number of pairs in the row
     * @return the rotation over the whole row
     * @throws IllegalArgumentException if there are not as many places as pairs, or a place is twice or not in
     *     {@code [0, row)}
     */
    public Rotation among(List<Integer> places, int row) {
        boolean outside = places.stream().anyMatch(place -> place < 0 || place >= row);
        if (outside || places.size() != pairs || places.stream().distinct().count() != pairs) {
            throw new IllegalArgumentException(
                    "places " + places + " must be " + pairs + " different ones, each at least 0 and below " + row);
        }
        return tabulate(groups(), row, games(), (game, group) -> places.get(pairOf(game, group)));
    }

    /**
     * The rotation as a directed graph: every pair in every game is a vertex, every move of a group an arc.
     *
     * @return an unmodifiable graph; two arcs run side by side only if two groups share a pair twice running
     */
    public Graph<Visit, Move> graph() {
        return graph;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rotation that
                && pairs == that.pairs
                && Arrays.deepEquals(pairByGameAndGroup, that.pairByGameAndGroup);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.deepHashCode(pairByGameAndGroup) + pairs;
    }

    @Override
    public String toString() {
        return "Rotation[pairs=" + pairs + ", pairByGameAndGroup=" + Arrays.deepToString(pairByGameAndGroup) + "]";
    }

    private List<List<Integer>> groupsByPair(int[] pairByGroup) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int pair = 0; pair < pairs; pair++) {
            groups.add(new ArrayList<>(1));
        }
        for (int group = 0; group < pairByGroup.length; group++) {
            groups.get(pairByGroup[group]).add(group);
        }
        return groups.stream().map(List::copyOf).toList();
    }

    private Graph<Visit, Move> layeredGraph() {
        Graph<Visit, Move> layers = GraphTypeBuilder.<Visit, Move>directed()
                .allowingMultipleEdges(true)
                .allowingSelfLoops(false)
                .buildGraph();
        for (int game = 0; game < games(); game++) {
            for (int pair = 0; pair < pairs; pair++) {
                layers.addVertex(new Visit(game, pair));
            }
        }
        for (int game = 1; game < games(); game++) {
            addMovesInto(game, layers);
        }
        return layers;
    }

    private void addMovesInto(int game, Graph<Visit, Move> layers) {
        for (int group = 0; group < groups(); group++) {
            Visit from = new Visit(game - 1, pairByGameAndGroup[game - 1][group]);
            Visit to = new Visit(game, pairByGameAndGroup[game][group]);
            layers.addEdge(from, to, new Move(group, from, to));
        }
    }

    private static void requireIndex(String what, int index, int count) {
        if (index < 0 || index >= count) {
            throw new IndexOutOfBoundsException("The " + what + " (" + index + ") must be 0 to " + (count - 1)
                    + ". Count from zero, within the rotation.");
        }
    }
}
