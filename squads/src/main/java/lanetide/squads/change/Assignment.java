package lanetide.squads.change;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.IntStream;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.KuhnMunkresMinimalWeightBipartitePerfectMatching;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.builder.GraphTypeBuilder;

/** Minimum-cost assignment: gives each of some takers a place of its own, as a perfect matching of least weight. */
public final class Assignment {

    private Assignment() {}

    /** What it costs to give a place to a taker. */
    @FunctionalInterface
    public interface Cost {
        /**
         * The cost.
         *
         * @param taker taker, counted from zero
         * @param place place, counted from zero
         * @return at least 0; whole numbers keep the sum exact
         */
        long of(int taker, int place);
    }

    /**
     * Assigns places.
     *
     * @param takers number of takers, at least 1
     * @param places number of places, at least as many
     * @param cost what each assignment costs; a sum over all takers must stay below 2<sup>53</sup>
     * @return the place of each taker
     * @throws IllegalArgumentException if {@code takers < 1} or {@code places < takers}
     */
    public static int[] ofLeastCost(int takers, int places, Cost cost) {
        if (takers < 1 || places < takers) {
            throw new IllegalArgumentException(
                    "takers is " + takers + " and places is " + places + "; there must be a place for everybody");
        }
        Graph<Integer, DefaultWeightedEdge> graph = complete(takers, places, cost);
        Set<Integer> left =
                new LinkedHashSet<>(IntStream.range(0, places).boxed().toList());
        Set<Integer> right =
                new LinkedHashSet<>(IntStream.range(places, 2 * places).boxed().toList());
        int[] place = new int[takers];
        Arrays.fill(place, -1);
        for (DefaultWeightedEdge edge :
                new KuhnMunkresMinimalWeightBipartitePerfectMatching<>(graph, left, right).getMatching()) {
            int taker = graph.getEdgeSource(edge);
            if (taker < takers) {
                place[taker] = graph.getEdgeTarget(edge) - places;
            }
        }
        return place;
    }

    /** Takers are made up to the number of places by some who take any place for nothing. */
    private static Graph<Integer, DefaultWeightedEdge> complete(int takers, int places, Cost cost) {
        Graph<Integer, DefaultWeightedEdge> graph = GraphTypeBuilder.<Integer, DefaultWeightedEdge>undirected()
                .weighted(true)
                .allowingMultipleEdges(false)
                .allowingSelfLoops(false)
                .edgeClass(DefaultWeightedEdge.class)
                .buildGraph();
        IntStream.range(0, 2 * places).forEach(graph::addVertex);
        for (int taker = 0; taker < places; taker++) {
            for (int place = 0; place < places; place++) {
                DefaultWeightedEdge edge = graph.addEdge(taker, places + place);
                graph.setEdgeWeight(edge, taker < takers ? (double) cost.of(taker, place) : 0);
            }
        }
        return graph;
    }
}
