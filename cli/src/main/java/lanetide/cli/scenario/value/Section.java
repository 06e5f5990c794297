package lanetide.cli.scenario.value;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Blocks;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Plausible;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A block of a scenario. Opening it reports keys that it does not know, that appear twice or are missing, and every
 * value that its key does not allow; what is left then is to read the values by their keys.
 */
public final class Section {
    private final Block block;
    private final String path;
    private final MappingNode node;
    private final Notices notices;
    private final Map<String, Value> values;
    private final Map<String, Object> read;
    /** Names of keys that unknown ones were probably meant to be. */
    private final Set<String> meant;

    /**
     * Opens a block.
     *
     * @param block its keys
     * @param path where it stands
     * @param node what stands there
     * @param around takes what is wrong
     */
    public Section(Block block, String path, MappingNode node, Notices around) {
        this(block, path, node, around.ofPart(), new LinkedHashMap<>(), new HashMap<>(), new HashSet<>());
        for (NodeTuple tuple : node.getValue()) {
            keyOf(tuple, path, around).ifPresent(key -> add(key, tuple, around));
        }
        block.keys().forEach(this::open);
    }

    private Section(
            Block block,
            String path,
            MappingNode node,
            Notices notices,
            Map<String, Value> values,
            Map<String, Object> read,
            Set<String> meant) {
        this.block = block;
        this.path = path;
        this.node = node;
        this.notices = notices;
        this.values = values;
        this.read = read;
        this.meant = meant;
    }

    private void open(Key<?> key) {
        Optional<Value> value = value(key);
        if (value.isEmpty() && key.isRequired()) {
            missing(key);
        } else if (isReadAlone(key.form())) {
            value.flatMap(written -> written.read(key.form())).ifPresent(known -> {
                read.put(key.name(), known);
                tellIfFarFetched(key, known);
            });
        }
    }

    private void tellIfFarFetched(Key<?> key, Object known) {
        Optional<Plausible> plausible =
                Plausible.of(key).filter(limits -> !limits.range().contains(((Number) known).doubleValue()));
        if (plausible.isPresent() && key.form() instanceof Form.Quantity<?> quantity) {
            value(key).ifPresent(value -> value.farFetched(plausible.get(), quantity.unit()));
        }
    }

    private static boolean isReadAlone(Form<?> form) {
        return !(form instanceof Form.Name
                || form instanceof Form.Each
                || form instanceof Form.Shares
                || form instanceof Form.Structure);
    }

    /** The same block; what is left to assumptions in it is kept by itself. */
    public Section withOwnAssumptions() {
        return new Section(block, path, node, notices.withOwnAssumptions(), values, read, meant);
    }

    /** The same block; errors found through it are counted by themselves. */
    public Section ofPart() {
        return new Section(block, path, node, notices.ofPart(), values, read, meant);
    }

    /** Where the block begins. */
    public Place place() {
        return Place.of(node);
    }

    /** The block as the file, or a table's row, has it. */
    public MappingNode node() {
        return node;
    }

    /** Where the block stands. */
    public String path() {
        return path;
    }

    /** Takes what is wrong in this block, and what it leaves to assumptions. */
    public Notices notices() {
        return notices;
    }

    /** Whether a key is written. */
    public boolean has(Key<?> key) {
        return value(key).isPresent();
    }

    /** What is written under a key, for a notice about it or for a reader of its own. */
    public Optional<Value> value(Key<?> key) {
        if (!block.key(key.name()).equals(Optional.of(key))) {
            throw new IllegalStateException("block " + block.path() + " does not declare " + key.name());
        }
        return Optional.ofNullable(values.get(key.name()));
    }

    /** The value of a key, or the one that holds where it is left out; empty if there is none or a wrong one. */
    @SuppressWarnings("unchecked") // a form is read into what the type of its key says
    public <T> Optional<T> find(Key<T> key) {
        if (has(key)) {
            return Optional.ofNullable((T) read.get(key.name()));
        }
        key.usual()
                .ifPresent(usual ->
                        key.source().ifPresent(source -> assume(key, key.form().write(usual), source)));
        return key.usual();
    }

    /** The value of a key in a block without errors: for a key that must be there, or for which a value holds. */
    public <T> T get(Key<T> key) {
        return find(key).orElseThrow(() -> new IllegalStateException(pathOf(key) + " has no value"));
    }

    /** A quantity whose limits hang on other values; empty if it is left out, or, with a notice, outside them. */
    public <T extends Number> Optional<T> within(Key<T> key, Range range) {
        return key.form() instanceof Form.Quantity<T> quantity && find(key).isPresent() && has(key)
                ? value(key).flatMap(value -> value.read(quantity.within(range)))
                : Optional.empty();
    }

    /** What a name in this block stands for; empty if it is left out or, with a notice, unknown. */
    public <T> Optional<T> oneOf(Key<String> key, Map<String, T> known) {
        return key.form() instanceof Form.Name name
                ? value(key).flatMap(value -> value.oneOf(known, name.kind()))
                : Optional.empty();
    }

    /** The items of a list; none, with a notice, if it is none. */
    public List<Value> list(Key<?> key) {
        return value(key).flatMap(Value::list).orElse(List.of());
    }

    /** The block under a key; empty, with a notice if something else stands there. */
    public Optional<Section> block(Key<Void> key) {
        return value(key).flatMap(value -> value.section(under(key), notices));
    }

    /** The block that stands under a key in place of a list. */
    public Optional<Section> blockInPlaceOfList(Key<Void> key) {
        return Blocks.inPlaceOfList(block, key)
                .flatMap(other -> value(key).flatMap(value -> value.section(other, notices)));
    }

    /** The block under a key; one without any key if it is left out. */
    public Optional<Section> blockOrUsual(Key<Void> key) {
        return has(key) ? block(key) : usualBlock(key);
    }

    /** A block under a key without any key of its own, so that everything is as usual. */
    public Optional<Section> usualBlock(Key<Void> key) {
        return Optional.of(new Section(
                under(key), pathOf(key), node, notices.ofPart(), new LinkedHashMap<>(), new HashMap<>(), Set.of()));
    }

    /** The blocks in a list. */
    public List<Section> blocks(Key<Void> key) {
        return list(key).stream()
                .flatMap(item -> item.section(under(key), notices).stream())
                .toList();
    }

    /** The block as a value of the one around it. */
    public Value value() {
        return new Value(node, path, "", notices);
    }

    private Block under(Key<?> key) {
        return Blocks.under(block, key)
                .orElseThrow(() -> new IllegalStateException("no block stands under " + pathOf(key)));
    }

    /** Says that a key is missing that must be there, unless it has been asked whether an unknown one was meant so. */
    public void missing(Key<?> key) {
        if (meant.contains(key.name())) {
            notices.countError();
            return;
        }
        String where = path.isEmpty() ? "The scenario" : path;
        notices.add(
                NoticeCode.MISSING_KEY,
                place(),
                pathOf(key),
                "",
                where + " has no `" + key.name() + "`, and it must have one: " + key.meaning() + ". Add `" + key.name()
                        + ":`, typical: " + key.typical() + ".");
    }

    /** Says that a key is missing if it is. */
    public void require(Key<?> key) {
        if (!has(key)) {
            missing(key);
        }
    }

    /** Adds a notice about what is written under a key, if anything is; the problem follows {@code PATH is VALUE}. */
    public void refuse(Key<?> key, NoticeCode code, String problem) {
        value(key).ifPresent(value -> value.refuse(code, problem));
    }

    /** Says what answers rest on where a key is left out. */
    public void assume(Key<?> key, String value, String source) {
        notices.assumptions().add(pathOf(key), value, source);
    }

    /**
     * Builds what this block describes if there is no error in it; a refusal by the value itself becomes a notice here.
     */
    public <T> Optional<T> build(Supplier<T> value) {
        return notices.build(place(), path, value);
    }

    /** The path of a key of this block. */
    public String pathOf(Key<?> key) {
        return pathOf(key.name());
    }

    private String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private void add(String key, NodeTuple tuple, Notices around) {
        Optional<Key<?>> known = block.key(key);
        Place at = Place.of(tuple.getKeyNode());
        if (known.isEmpty()) {
            unknown(key, at, around);
        } else if (values.containsKey(key)) {
            duplicate(key, at, path, around);
        } else {
            values.put(
                    key,
                    new Value(tuple.getValueNode(), pathOf(key), known.get().typical(), notices));
        }
    }

    private void unknown(String key, Place at, Notices around) {
        Optional<Block> home = Blocks.homeOf(key);
        if (home.isEmpty()) {
            Nearest.to(key, block.names()).ifPresent(meant::add);
        }
        String advice = home.map(other -> " It belongs " + whereIs(other) + ".")
                .orElseGet(() -> Nearest.question(key, block.names()));
        String names = String.join(", ", block.names());
        around.add(
                NoticeCode.UNKNOWN_KEY,
                at,
                pathOf(key),
                key,
                names,
                "`" + Notices.quote(key) + "` is not a key of " + (path.isEmpty() ? "a scenario" : path) + "." + advice
                        + " Keys here: " + names + ".");
    }

    private static String whereIs(Block home) {
        return home.path().isEmpty() ? "at the left margin of the file" : "under `" + home.path() + "`";
    }

    static Optional<String> keyOf(NodeTuple tuple, String path, Notices notices) {
        if (tuple.getKeyNode() instanceof ScalarNode key && !key.getValue().isBlank()) {
            return Optional.of(key.getValue());
        }
        notices.add(
                NoticeCode.WRONG_KIND,
                Place.of(tuple.getKeyNode()),
                path,
                "",
                "A key of " + (path.isEmpty() ? "the scenario" : path)
                        + " is not a word; it must be a name before the colon.");
        return Optional.empty();
    }

    static void duplicate(String key, Place at, String path, Notices notices) {
        String field = path.isEmpty() ? key : path + "." + key;
        notices.add(
                NoticeCode.DUPLICATE_KEY,
                at,
                field,
                key,
                "`" + Notices.quote(key) + "` appears twice in " + (path.isEmpty() ? "the scenario" : path)
                        + "; it must stand once. Remove one of the two.");
    }
}
