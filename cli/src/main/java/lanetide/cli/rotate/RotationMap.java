package lanetide.cli.rotate;

import java.util.List;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.Session;
import org.jgrapht.Graph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.builder.GraphTypeBuilder;

/**
 * The rotations of all squads as one directed graph with names, for drawing and for other programs: a vertex is a lane
 * pair in a game of a squad, an arc the way of a group from one of its games to the next.
 */
public final class RotationMap {
    private final Graph<Stop, Passage> graph;

    private RotationMap(Graph<Stop, Passage> graph) {
        this.graph = new AsUnmodifiableGraph<>(graph);
    }

    /**
     * A lane pair in a game.
     *
     * @param squad the squad's name
     * @param turn which turn on the lanes it is, counted from one
     * @param game game of that turn, counted from one
     * @param pair the pair's name
     * @param group who bowls there, empty for nobody
     * @param gamesSinceOiling games bowled on the pair since it was oiled, before this one
     */
    public record Stop(String squad, int turn, int game, String pair, String group, int gamesSinceOiling) {}

    /**
     * A group's way from one game to the next.
     *
     * @param squad the squad's name
     * @param group the group's name
     * @param fromGame the game it has bowled, counted from one
     * @param pairs how far it walks along the row of pairs
     */
    public record Passage(String squad, int turn, String group, int fromGame, int pairs) {}

    /**
     * Draws up the map.
     *
     * @param sessions the squads' turns in order, at least one, all over the same pairs, without collisions
     * @param groups the names of each turn's groups
     * @param pairs the names of the pairs
     * @return the map
     * @throws IllegalArgumentException if names do not fit the turns
     */
    public static RotationMap of(List<Session> sessions, List<List<String>> groups, List<String> pairs) {
        if (sessions.size() != groups.size()) {
            throw new IllegalArgumentException(
                    "there are names for " + groups.size() + " turns, but " + sessions.size() + " turns");
        }
        Graph<Stop, Passage> graph = GraphTypeBuilder.<Stop, Passage>directed()
                .allowingMultipleEdges(false)
                .allowingSelfLoops(false)
                .buildGraph();
        int[] age = new int[pairs.size()];
        for (int turn = 0; turn < sessions.size(); turn++) {
            add(graph, sessions.get(turn), turn, groups.get(turn), pairs, age);
        }
        return new RotationMap(graph);
    }

    /**
     * The graph.
     *
     * @return an unmodifiable graph, its vertices by turn, game and pair
     */
    public Graph<Stop, Passage> graph() {
        return graph;
    }

    private static void add(
            Graph<Stop, Passage> graph, Session session, int turn, List<String> groups, List<String> pairs, int[] age) {
        Rotation rotation = session.rotation();
        if (groups.size() != rotation.groups() || pairs.size() != rotation.pairs()) {
            throw new IllegalArgumentException("squad " + session.squad() + " has " + rotation.groups() + " groups on "
                    + rotation.pairs() + " pairs, but there are names for " + groups.size() + " and " + pairs.size());
        }
        Stop[][] stops = new Stop[rotation.games()][rotation.pairs()];
        for (int game = 0; game < rotation.games(); game++) {
            for (int pair = 0; pair < rotation.pairs(); pair++) {
                boolean isOiled =
                        game == 0 && session.oiled() && session.pairs().contains(pair);
                age[pair] = isOiled ? 0 : age[pair];
                String group = rotation.groupOn(game, pair).stream()
                        .mapToObj(groups::get)
                        .findFirst()
                        .orElse("");
                stops[game][pair] = new Stop(session.squad(), turn + 1, game + 1, pairs.get(pair), group, age[pair]);
                graph.addVertex(stops[game][pair]);
                age[pair] += group.isEmpty() ? 0 : 1;
            }
        }
        for (Move move : rotation.graph().edgeSet()) {
            graph.addEdge(
                    stops[move.from().game()][move.from().pair()],
                    stops[move.to().game()][move.to().pair()],
                    new Passage(
                            session.squad(),
                            turn + 1,
                            groups.get(move.group()),
                            move.from().game() + 1,
                            move.distancePairs()));
        }
    }
}
