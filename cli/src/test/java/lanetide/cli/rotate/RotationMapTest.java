package lanetide.cli.rotate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import lanetide.cli.rotate.RotationMap.Passage;
import lanetide.cli.rotate.RotationMap.Stop;
import lanetide.squads.rotation.Hands;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.Session;
import lanetide.squads.rotation.design.Ring;
import lanetide.squads.rotation.design.Shuffled;
import lanetide.squads.rotation.design.Stay;
import org.jgrapht.Graph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.builder.GraphTypeBuilder;
import org.jgrapht.nio.Attribute;
import org.jgrapht.nio.dot.DOTImporter;
import org.jgrapht.nio.graphml.GraphMLImporter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RotationMapTest {
    private static final List<String> PAIRS = List.of("1-2", "3-4", "7-8");
    private static final List<String> AWKWARD =
            List.of("a<script>alert(\"x\")</script>", "b & 'c' \\N \\\\ \\\"", "G\u00fcnther \u65e5\u672c \uFFFE ]]>");

    static LongStream seeds() {
        return LongStream.range(0, 20);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void graphMlReadBackIsTheSameGraph(long seed) {
        RotationMap map = map(new Shuffled(seed).plan(2 + (int) (seed % 2), 3, 4), List.of("x", "y", "z"));

        assertThat(read(RotationMapWriter.graphMl(map))).isEqualTo(map.graph());
    }

    @Test
    void namesComeBackAsTextWhateverTheyContain() {
        RotationMap map = map(new Ring(1, 1).plan(3, 3, 2), AWKWARD);
        String document = RotationMapWriter.graphMl(map);

        assertThat(document).doesNotContain("<script>");
        assertThat(read(document).vertexSet().stream().map(Stop::group).distinct())
                .containsExactly(AWKWARD.get(0), AWKWARD.get(1), AWKWARD.get(2).replace('\uFFFE', '\uFFFD'));
    }

    /** In DOT a quote ends a text and a backslash begins a command; read back, both must be text again. */
    @Test
    void aDrawingShowsNamesAsText() {
        RotationMap map = map(new Ring(1, 1).plan(3, 3, 2), AWKWARD);
        Map<String, String> labels = new HashMap<>();
        DOTImporter<String, Object> importer = new DOTImporter<>();
        importer.setVertexFactory(id -> id);
        importer.addVertexAttributeConsumer((at, value) -> {
            if (at.getSecond().equals("label")) {
                labels.put(at.getFirst(), value.getValue());
            }
        });
        Graph<String, Object> drawing = GraphTypeBuilder.<String, Object>directed()
                .allowingMultipleEdges(true)
                .edgeSupplier(Object::new)
                .buildGraph();

        importer.importGraph(drawing, new StringReader(RotationMapWriter.dot(map)));

        assertThat(drawing.vertexSet()).hasSameSizeAs(map.graph().vertexSet());
        assertThat(drawing.edgeSet()).hasSameSizeAs(map.graph().edgeSet());
        assertThat(labels.get("t1g1p1_2")).isEqualTo("squad A, game 1, 1-2: group " + AWKWARD.get(0));
        assertThat(labels.get("t1g1p3_4").replace("\\\\", "\\"))
                .isEqualTo("squad A, game 1, 3-4: group " + AWKWARD.get(1));
    }

    @Test
    void everyStopKnowsHowManyGamesItsPairHasSeenSinceOiling() {
        RotationMap map = RotationMap.of(
                List.of(
                        session("A", true, new Ring(1, 1).plan(2, 3, 2)),
                        session("B", false, new Ring(1, 1).plan(2, 3, 1)),
                        session("C", true, new Ring(1, 1).plan(2, 3, 1))),
                List.of(List.of("x", "y"), List.of("x", "y"), List.of("x", "y")),
                PAIRS);

        assertThat(map.graph().vertexSet())
                .hasSize(12)
                .contains(
                        new Stop("A", 1, 2, "3-4", "x", 1),
                        new Stop("A", 1, 2, "7-8", "y", 0),
                        new Stop("B", 2, 1, "1-2", "x", 1),
                        new Stop("B", 2, 1, "3-4", "y", 2),
                        new Stop("C", 3, 1, "3-4", "y", 0));
    }

    @Test
    void namesThatDoNotFitAreRefused() {
        Session session = session("A", true, new Stay().plan(2, 3, 1));

        assertThatThrownBy(() -> RotationMap.of(List.of(session), List.of(List.of("x")), PAIRS))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> RotationMap.of(List.of(session), List.of(), PAIRS))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private static RotationMap map(Rotation rotation, List<String> groups) {
        return RotationMap.of(
                List.of(session("A", true, rotation)), List.of(groups.subList(0, rotation.groups())), PAIRS);
    }

    private static Session session(String squad, boolean oiled, Rotation rotation) {
        return new Session(squad, oiled, rotation, Collections.nCopies(rotation.groups(), new Hands(1, 0)));
    }

    private static Graph<Stop, Passage> read(String document) {
        Graph<String, Integer> raw = GraphTypeBuilder.<String, Integer>directed()
                .allowingMultipleEdges(false)
                .edgeSupplier(new java.util.concurrent.atomic.AtomicInteger()::incrementAndGet)
                .buildGraph();
        Map<String, Map<String, Attribute>> stops = new HashMap<>();
        Map<Integer, Map<String, Attribute>> passages = new HashMap<>();
        GraphMLImporter<String, Integer> importer = new GraphMLImporter<>();
        importer.setVertexFactory(id -> id);
        importer.addVertexAttributeConsumer((at, value) ->
                stops.computeIfAbsent(at.getFirst(), id -> new HashMap<>()).put(at.getSecond(), value));
        importer.addEdgeAttributeConsumer((at, value) ->
                passages.computeIfAbsent(at.getFirst(), id -> new HashMap<>()).put(at.getSecond(), value));
        importer.importGraph(raw, new StringReader(document));

        Graph<Stop, Passage> graph = GraphTypeBuilder.<Stop, Passage>directed()
                .allowingMultipleEdges(false)
                .buildGraph();
        raw.vertexSet().forEach(id -> graph.addVertex(stop(stops.get(id))));
        for (Integer edge : raw.edgeSet()) {
            graph.addEdge(
                    stop(stops.get(raw.getEdgeSource(edge))),
                    stop(stops.get(raw.getEdgeTarget(edge))),
                    passage(passages.get(edge)));
        }
        return new AsUnmodifiableGraph<>(graph);
    }

    private static Stop stop(Map<String, Attribute> facts) {
        return new Stop(
                facts.get("squad").getValue(),
                whole(facts, "turn"),
                whole(facts, "game"),
                facts.get("pair").getValue(),
                facts.containsKey("group") ? facts.get("group").getValue() : "",
                whole(facts, "gamesSinceOiling"));
    }

    private static Passage passage(Map<String, Attribute> facts) {
        return new Passage(
                facts.get("squad").getValue(),
                whole(facts, "turn"),
                facts.get("group").getValue(),
                whole(facts, "game"),
                whole(facts, "pairs"));
    }

    private static int whole(Map<String, Attribute> facts, String name) {
        return Integer.parseInt(facts.get(name).getValue());
    }
}
