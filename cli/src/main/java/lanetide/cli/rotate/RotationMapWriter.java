package lanetide.cli.rotate;

import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.Map;
import lanetide.cli.rotate.RotationMap.Passage;
import lanetide.cli.rotate.RotationMap.Stop;
import org.jgrapht.nio.Attribute;
import org.jgrapht.nio.AttributeType;
import org.jgrapht.nio.DefaultAttribute;
import org.jgrapht.nio.dot.DOTExporter;
import org.jgrapht.nio.graphml.GraphMLExporter;
import org.jgrapht.nio.graphml.GraphMLExporter.AttributeCategory;

/**
 * Writes a map of rotations for other programs, in two open formats: GraphML (U. Brandes and others, "GraphML progress
 * report", 2001) and the DOT language of graph drawing. Names are written as text whatever they contain.
 */
public final class RotationMapWriter {
    private static final int REPLACEMENT = 0xFFFD;

    private RotationMapWriter() {}

    /**
     * Writes GraphML, with the facts of every vertex and arc as data. A pair where nobody bowls has no group.
     *
     * @param map the map
     * @return the document
     */
    public static String graphMl(RotationMap map) {
        GraphMLExporter<Stop, Passage> exporter = new GraphMLExporter<>(RotationMapWriter::id);
        exporter.registerAttribute("pair", AttributeCategory.NODE, AttributeType.STRING);
        exporter.registerAttribute("gamesSinceOiling", AttributeCategory.NODE, AttributeType.INT);
        exporter.registerAttribute("squad", AttributeCategory.ALL, AttributeType.STRING);
        exporter.registerAttribute("turn", AttributeCategory.ALL, AttributeType.INT);
        exporter.registerAttribute("game", AttributeCategory.ALL, AttributeType.INT);
        exporter.registerAttribute("group", AttributeCategory.ALL, AttributeType.STRING);
        exporter.registerAttribute("pairs", AttributeCategory.EDGE, AttributeType.INT);
        exporter.setVertexAttributeProvider(RotationMapWriter::facts);
        exporter.setEdgeAttributeProvider(RotationMapWriter::facts);
        StringWriter out = new StringWriter();
        exporter.exportGraph(map.graph(), out);
        return lines(out);
    }

    /**
     * Writes DOT, ready to be drawn from left to right: one box a pair and game, one arrow a move.
     *
     * @param map the map
     * @return the document
     */
    public static String dot(RotationMap map) {
        DOTExporter<Stop, Passage> exporter = new DOTExporter<>(RotationMapWriter::id);
        exporter.setGraphIdProvider(() -> "rotation");
        exporter.setGraphAttributeProvider(() -> Map.of("rankdir", text("LR")));
        exporter.setVertexAttributeProvider(RotationMapWriter::box);
        exporter.setEdgeAttributeProvider(passage -> Map.of("label", text(quoted(passage.group()))));
        StringWriter out = new StringWriter();
        exporter.exportGraph(map.graph(), out);
        return lines(out);
    }

    private static String id(Stop stop) {
        return "t" + stop.turn() + "g" + stop.game() + "p" + stop.pair().replaceAll("[^A-Za-z0-9]", "_");
    }

    private static Map<String, Attribute> facts(Stop stop) {
        Map<String, Attribute> facts = facts(stop.squad(), stop.turn(), stop.game(), stop.group());
        facts.put("pair", text(printable(stop.pair())));
        facts.put("gamesSinceOiling", DefaultAttribute.createAttribute(stop.gamesSinceOiling()));
        return facts;
    }

    private static Map<String, Attribute> facts(Passage passage) {
        Map<String, Attribute> facts = facts(passage.squad(), passage.turn(), passage.fromGame(), passage.group());
        facts.put("pairs", DefaultAttribute.createAttribute(passage.pairs()));
        return facts;
    }

    private static Map<String, Attribute> facts(String squad, int turn, int game, String group) {
        Map<String, Attribute> facts = new LinkedHashMap<>();
        facts.put("squad", text(printable(squad)));
        facts.put("turn", DefaultAttribute.createAttribute(turn));
        facts.put("game", DefaultAttribute.createAttribute(game));
        if (!group.isEmpty()) {
            facts.put("group", text(printable(group)));
        }
        return facts;
    }

    private static Map<String, Attribute> box(Stop stop) {
        String who = stop.group().isEmpty() ? "nobody" : "group " + stop.group();
        Map<String, Attribute> box = new LinkedHashMap<>();
        box.put("shape", text("box"));
        box.put(
                "label",
                text(quoted("squad " + stop.squad() + ", game " + stop.game() + ", " + stop.pair() + ": " + who)));
        return box;
    }

    private static Attribute text(String text) {
        return DefaultAttribute.createAttribute(text);
    }

    /** A drawing program reads a backslash as the beginning of a command; the exporter itself escapes only quotes. */
    private static String quoted(String text) {
        return printable(text).replace("\\", "\\\\");
    }

    /** XML 1.0 has no place for some code points, whatever they are escaped to. */
    private static String printable(String text) {
        return text.codePoints()
                .map(point -> isXml(point) ? point : REPLACEMENT)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    private static boolean isXml(int point) {
        return (point >= 0x20 && point <= 0xD7FF) || (point >= 0xE000 && point <= 0xFFFD) || point >= 0x10000;
    }

    private static String lines(StringWriter out) {
        return out.toString().replace("\r\n", "\n");
    }
}
