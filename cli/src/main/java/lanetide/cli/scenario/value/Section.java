package lanetide.cli.scenario.value;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Supplier;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** A block of a scenario. Opening it reports keys that it does not know and keys that stand twice. */
public final class Section {
    private final Block block;
    private final String path;
    private final Place place;
    private final Notices notices;
    private final Map<String, Value> values = new LinkedHashMap<>();

    public Section(Block block, String path, MappingNode node, Notices notices) {
        this.block = block;
        this.path = path;
        this.place = Place.of(node);
        this.notices = notices;
        for (NodeTuple tuple : node.getValue()) {
            keyOf(tuple, path, notices).ifPresent(key -> add(key, tuple));
        }
    }

    public Place place() {
        return place;
    }

    public String path() {
        return path;
    }

    public Notices notices() {
        return notices;
    }

    public boolean has(String key) {
        return values.containsKey(key);
    }

    public Optional<Value> get(String key) {
        describe(key);
        return Optional.ofNullable(values.get(key));
    }

    /** The block under a key; empty, with a notice if something else stands there. */
    public Optional<Section> block(String key, Block inner) {
        return get(key).flatMap(value -> value.section(inner));
    }

    public Optional<Value> require(String key) {
        Optional<Value> value = get(key);
        if (value.isEmpty()) {
            missing(key);
        }
        return value;
    }

    /** Says that a key is missing that must be there. */
    public void missing(String key) {
        Key wanted = describe(key);
        String where = path.isEmpty() ? "The scenario" : path;
        notices.add(
                NoticeCode.MISSING_KEY,
                place,
                pathOf(key),
                "",
                where + " has no `" + key + "`, and it must have one: " + wanted.meaning() + ". Add `" + key
                        + ":`, typical: " + wanted.typical() + ".");
    }

    /** A required quantity; NaN, with a notice, if it is missing or wrong. */
    public double quantity(String key, Measure measure, Range range) {
        return require(key)
                .map(value -> value.quantity(measure, range))
                .orElse(OptionalDouble.empty())
                .orElse(Double.NaN);
    }

    /** An optional quantity; NaN, with a notice, if it is wrong. */
    public double quantity(String key, Measure measure, Range range, Default otherwise, Assumptions assumptions) {
        if (!has(key)) {
            assumptions.add(pathOf(key), otherwise);
            return otherwise.base();
        }
        return quantity(key, measure, range);
    }

    /** A required whole number; 0, with a notice, if it is missing or wrong. */
    public int whole(String key, int low, int high) {
        return require(key)
                .map(value -> value.whole(low, high))
                .orElse(OptionalInt.empty())
                .orElse(0);
    }

    /** A required text; blank, with a notice, if it is missing or wrong. */
    public String text(String key) {
        return require(key).flatMap(Value::text).orElse("");
    }

    /** Builds what this block describes if no error has come since; a refusal by the value itself becomes a notice here. */
    public <T> Optional<T> build(int errorsBefore, Supplier<T> value) {
        return notices.build(errorsBefore, place, path, value);
    }

    public String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private Key describe(String key) {
        return block.key(key)
                .orElseThrow(() -> new IllegalStateException("block " + block + " does not describe " + key));
    }

    private void add(String key, NodeTuple tuple) {
        Optional<Key> known = block.key(key);
        if (known.isEmpty()) {
            unknown(key, Place.of(tuple.getKeyNode()));
            return;
        }
        Value value = new Value(tuple.getValueNode(), pathOf(key), known.get().typical(), notices);
        if (values.containsKey(key)) {
            duplicate(key, Place.of(tuple.getKeyNode()), path, notices);
        } else {
            values.put(key, value);
        }
    }

    private void unknown(String key, Place at) {
        String advice = Block.homeOf(key)
                .map(home -> " It belongs " + whereIs(home) + ".")
                .orElseGet(() -> Nearest.question(key, block.names()));
        String where = path.isEmpty() ? "a scenario" : path;
        notices.add(
                NoticeCode.UNKNOWN_KEY,
                at,
                pathOf(key),
                key,
                "`" + Notices.quote(key) + "` is no key of " + where + "." + advice + " Keys here: "
                        + String.join(", ", block.names()) + ".");
    }

    private static String whereIs(Block home) {
        return home.path().isEmpty() ? "at the left margin of the file" : "under `" + home.path() + "`";
    }

    public static Optional<String> keyOf(NodeTuple tuple, String path, Notices notices) {
        if (tuple.getKeyNode() instanceof ScalarNode key && !key.getValue().isBlank()) {
            return Optional.of(key.getValue());
        }
        notices.add(
                NoticeCode.WRONG_KIND,
                Place.of(tuple.getKeyNode()),
                path,
                "",
                "A key of " + (path.isEmpty() ? "the scenario" : path)
                        + " is no word; it must be a name before the colon.");
        return Optional.empty();
    }

    public static void duplicate(String key, Place at, String path, Notices notices) {
        String field = path.isEmpty() ? key : path + "." + key;
        notices.add(
                NoticeCode.DUPLICATE_KEY,
                at,
                field,
                key,
                "`" + Notices.quote(key) + "` stands twice in " + (path.isEmpty() ? "the scenario" : path)
                        + "; it must stand once. Remove one of the two.");
    }
}
