package lanetide.cli.scenario.write;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lanetide.cli.scenario.key.Key;
import org.snakeyaml.engine.v2.api.Dump;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/** Parts of YAML files put together anew. Nothing that is given is changed. */
final class Yaml {
    /** Longer than any line of a scenario. */
    private static final int WIDTH = 1000;

    private Yaml() {}

    /** A text; quoted where it could be taken for something else. */
    static ScalarNode text(String text) {
        return new ScalarNode(Tag.STR, text, ScalarStyle.PLAIN);
    }

    /** A number as it stands. */
    static ScalarNode number(long number) {
        return new ScalarNode(Tag.INT, String.valueOf(number), ScalarStyle.PLAIN);
    }

    /** A list in one line. */
    static SequenceNode line(List<? extends Node> items) {
        return new SequenceNode(Tag.SEQ, new ArrayList<>(items), FlowStyle.FLOW);
    }

    /** A list, one item below the other. */
    static SequenceNode list(List<? extends Node> items) {
        return new SequenceNode(Tag.SEQ, new ArrayList<>(items), FlowStyle.BLOCK);
    }

    /** A block of keys. */
    static MappingNode block(List<NodeTuple> tuples) {
        return new MappingNode(Tag.MAP, tuples, FlowStyle.BLOCK);
    }

    /** What stands under a key of a block. */
    static Optional<Node> find(MappingNode block, Key<?> key) {
        return block.getValue().stream()
                .filter(tuple -> isKey(tuple, key))
                .map(NodeTuple::getValueNode)
                .findFirst();
    }

    /** The block with something else under a key, at its place or the end. */
    static MappingNode with(MappingNode block, Key<?> key, Node value) {
        List<NodeTuple> tuples = new ArrayList<>();
        boolean there = false;
        for (NodeTuple tuple : block.getValue()) {
            boolean here = isKey(tuple, key);
            tuples.add(here ? new NodeTuple(tuple.getKeyNode(), value) : tuple);
            there |= here;
        }
        if (!there) {
            tuples.add(new NodeTuple(text(key.name()), value));
        }
        return block(tuples);
    }

    /** The block without some keys. */
    static MappingNode without(MappingNode block, Set<Key<?>> keys) {
        return block(block.getValue().stream()
                .filter(tuple -> keys.stream().noneMatch(key -> isKey(tuple, key)))
                .toList());
    }

    /** The block with the block under a key changed, if there is one. */
    static MappingNode changed(MappingNode block, Key<?> key, Function<MappingNode, MappingNode> change) {
        return find(block, key)
                .filter(MappingNode.class::isInstance)
                .map(inner -> with(block, key, change.apply((MappingNode) inner)))
                .orElse(block);
    }

    private static boolean isKey(NodeTuple tuple, Key<?> key) {
        return tuple.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key.name());
    }

    /** The file of a block. */
    static String file(MappingNode root) {
        StringBuilder text = new StringBuilder();
        new Dump(DumpSettings.builder()
                        .setWidth(WIDTH)
                        .setSplitLines(false)
                        .setUseUnicodeEncoding(true)
                        .build())
                .dumpNode(root, new StreamDataWriter() {
                    @Override
                    public void write(String written) {
                        text.append(written);
                    }

                    @Override
                    public void write(String written, int from, int length) {
                        text.append(written, from, from + length);
                    }
                });
        return text.toString();
    }
}
