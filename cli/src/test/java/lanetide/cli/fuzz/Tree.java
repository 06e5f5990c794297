package lanetide.cli.fuzz;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** A scenario as a tree that can be changed and written again; a key may stand twice in it. */
sealed interface Tree {
    /** A value, written as it is. */
    record Leaf(String written) implements Tree {}

    /** A list. */
    record Items(List<Tree> all) implements Tree {}

    /** A block. */
    record Block(List<Pair> all) implements Tree {
        Optional<Tree> find(String key) {
            return all.stream()
                    .filter(pair -> pair.key.equals(key))
                    .map(pair -> pair.value)
                    .findFirst();
        }

        void put(String key, Tree value) {
            all.removeIf(pair -> pair.key.equals(key));
            all.add(new Pair(key, value));
        }
    }

    /** A key and what stands under it. */
    record Pair(String key, Tree value) {}

    static Tree parse(String text) {
        return of(
                new Compose(LoadSettings.builder().build()).composeString(text).orElseThrow());
    }

    private static Tree of(Node node) {
        if (node instanceof MappingNode block) {
            List<Pair> pairs = new ArrayList<>();
            block.getValue()
                    .forEach(tuple -> pairs.add(
                            new Pair(((ScalarNode) tuple.getKeyNode()).getValue(), of(tuple.getValueNode()))));
            return new Block(pairs);
        }
        if (node instanceof SequenceNode list) {
            List<Tree> items = new ArrayList<>();
            list.getValue().forEach(item -> items.add(of(item)));
            return new Items(items);
        }
        ScalarNode scalar = (ScalarNode) node;
        return new Leaf(scalar.getScalarStyle() == ScalarStyle.PLAIN ? scalar.getValue() : quoted(scalar.getValue()));
    }

    static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    default Tree copy() {
        if (this instanceof Block block) {
            List<Pair> pairs = new ArrayList<>();
            block.all.forEach(pair -> pairs.add(new Pair(pair.key, pair.value.copy())));
            return new Block(pairs);
        }
        if (this instanceof Items items) {
            return new Items(new ArrayList<>(items.all.stream().map(Tree::copy).toList()));
        }
        return this;
    }

    /** The top of the tree key by key, each on lines of its own; what stands below in flow style. */
    default String write() {
        StringBuilder text = new StringBuilder();
        if (this instanceof Block block) {
            for (Pair pair : block.all) {
                text.append(pair.key).append(':');
                lines(text, pair.value);
            }
            return text.toString();
        }
        return flow() + "\n";
    }

    private static void lines(StringBuilder text, Tree value) {
        if (value instanceof Block block && !block.all.isEmpty()) {
            text.append('\n');
            block.all.forEach(pair -> text.append("  ")
                    .append(pair.key)
                    .append(": ")
                    .append(pair.value.flow())
                    .append('\n'));
        } else if (value instanceof Items items && !items.all.isEmpty()) {
            text.append('\n');
            items.all.forEach(item -> text.append("  - ").append(item.flow()).append('\n'));
        } else {
            text.append(' ').append(value.flow()).append('\n');
        }
    }

    default String flow() {
        if (this instanceof Block block) {
            return "{"
                    + String.join(
                            ", ",
                            block.all.stream()
                                    .map(pair -> pair.key + ": " + pair.value.flow())
                                    .toList()) + "}";
        }
        if (this instanceof Items items) {
            return "[" + String.join(", ", items.all.stream().map(Tree::flow).toList()) + "]";
        }
        return ((Leaf) this).written;
    }
}
