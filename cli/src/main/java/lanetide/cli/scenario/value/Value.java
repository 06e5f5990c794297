package lanetide.cli.scenario.value;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Nearest;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.notice.Place;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;

/**
 * A value in a scenario that knows its path and place. Each typed getter returns the value, or adds a notice and returns
 * empty.
 */
public final class Value {
    private final Node node;
    private final String path;
    private final String hint;
    private final Notices notices;

    /** A value; the hint says what usually stands here. */
    public Value(Node node, String path, String hint, Notices notices) {
        this.node = node;
        this.path = path;
        this.hint = hint;
        this.notices = notices;
    }

    public String path() {
        return path;
    }

    public Place place() {
        return Place.of(node);
    }

    public boolean isBlock() {
        return node instanceof MappingNode;
    }

    /** The value as the file has it, for a message. */
    public String written() {
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue();
        }
        return node instanceof MappingNode ? "a block" : "a list";
    }

    /** Adds a notice about this value. The problem is worded to follow {@code PATH is VALUE}. */
    public void refuse(NoticeCode code, String problem) {
        String shown = isPlain() ? "`" + Notices.quote(written()) + "`" : isEmpty() ? "empty" : written();
        String subject = path.isEmpty() ? "The scenario" : path;
        say(code, plain(), subject + " is " + shown + problem);
    }

    /** Adds a notice about this value in its own words. */
    public void say(NoticeCode code, String value, String message) {
        notices.add(code, place(), path, value, message);
    }

    /** Whether a single value stands here, not a list or a block. */
    public boolean isScalar() {
        return isPlain();
    }

    /** The value as the file has it, empty for a list or a block. */
    public String plain() {
        return isPlain() ? written() : "";
    }

    private boolean isPlain() {
        return node instanceof ScalarNode && !isEmpty();
    }

    private boolean isEmpty() {
        return node instanceof ScalarNode scalar && scalar.getValue().isEmpty();
    }

    /** What usually stands here, as a sentence. */
    public String advice() {
        return hint.isEmpty() ? "" : " Typical: " + hint + ".";
    }

    public Optional<String> text() {
        return scalar("a text").filter(text -> {
            if (!TextRule.isText(text)) {
                refuse(
                        NoticeCode.BAD_TEXT,
                        "; a text must be 1 to " + TextRule.LONGEST_TEXT
                                + " printable characters. Shorten or retype it.");
            }
            return TextRule.isText(text);
        });
    }

    /** A name that something else refers to. */
    public Optional<String> id() {
        return text().filter(id -> {
            if (!TextRule.isName(id)) {
                refuse(NoticeCode.BAD_TEXT, TextRule.NAME_IN_WORDS + advice());
            }
            return TextRule.isName(id);
        });
    }

    public OptionalDouble quantity(Measure measure, Range range) {
        Optional<String> text = scalar("a number");
        return text.isEmpty() ? OptionalDouble.empty() : new QuantityReader(this, measure, range).read(text.get());
    }

    public OptionalInt whole(int low, int high) {
        return whole(Measure.NUMBER, low, high);
    }

    public OptionalInt whole(Measure measure, int low, int high) {
        OptionalLong number = wholeLong(measure, low, high);
        return number.isEmpty() ? OptionalInt.empty() : OptionalInt.of((int) number.getAsLong());
    }

    public OptionalLong wholeLong(Measure measure, long low, long high) {
        OptionalDouble number = quantity(measure, Range.between((double) low, (double) high));
        if (number.isEmpty()) {
            return OptionalLong.empty();
        }
        if (number.getAsDouble() != Math.rint(number.getAsDouble())) {
            refuse(NoticeCode.NOT_WHOLE, "; it must be a whole number." + advice());
            return OptionalLong.empty();
        }
        return OptionalLong.of((long) number.getAsDouble());
    }

    /** Milliseconds from midnight before the first day. */
    public OptionalLong timeOfDay() {
        Optional<String> text = scalar("a time of day");
        return text.isEmpty() ? OptionalLong.empty() : TimeOfDay.read(text.get(), this);
    }

    /** The known thing of this name. */
    public <T> Optional<T> oneOf(Map<String, T> known, String kind) {
        Optional<String> name = scalar("a name");
        if (name.isPresent() && !known.containsKey(name.get())) {
            refuse(NoticeCode.UNKNOWN_NAME, unknown(name.get(), known.keySet(), kind));
        }
        return name.map(known::get);
    }

    public static String unknown(String name, Collection<String> known, String kind) {
        String nearest = Nearest.to(name, known)
                .map(near -> " Did you mean " + near + "?")
                .orElse("");
        return ", which is no known " + kind + "." + nearest + " Known: " + String.join(", ", known) + ".";
    }

    public Optional<Section> section(Block block) {
        if (!(node instanceof MappingNode mapping)) {
            refuseKind("a block of `key: value` lines");
            return Optional.empty();
        }
        return Optional.of(new Section(block, path, mapping, notices));
    }

    public Optional<List<Value>> list() {
        if (!(node instanceof SequenceNode sequence)) {
            refuseKind("a list");
            return Optional.empty();
        }
        List<Value> items = new ArrayList<>();
        for (Node item : sequence.getValue()) {
            items.add(new Value(item, path + "[" + (items.size() + 1) + "]", hint, notices));
        }
        return Optional.of(items);
    }

    /** The values of a block whose keys are free names, with the place of each name. */
    public Optional<Map<String, NamedValue>> named() {
        if (!(node instanceof MappingNode mapping)) {
            refuseKind("a block of `name: value`");
            return Optional.empty();
        }
        Map<String, NamedValue> values = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            Section.keyOf(tuple, path, notices).ifPresent(key -> {
                Value value = new Value(tuple.getValueNode(), path + "." + key, "", notices);
                Place at = Place.of(tuple.getKeyNode());
                if (values.putIfAbsent(key, new NamedValue(key, at, path, value, notices)) != null) {
                    Section.duplicate(key, at, path, notices);
                }
            });
        }
        return Optional.of(values);
    }

    /** A value inside this block, without a look at the other keys. */
    public Optional<Value> child(String key) {
        return node instanceof MappingNode mapping
                ? mapping.getValue().stream()
                        .filter(tuple -> tuple.getKeyNode() instanceof ScalarNode name
                                && name.getValue().equals(key))
                        .findFirst()
                        .map(tuple -> new Value(tuple.getValueNode(), path + "." + key, "", notices))
                : Optional.empty();
    }

    private Optional<String> scalar(String kind) {
        if (!(node instanceof ScalarNode scalar)) {
            refuseKind(kind);
            return Optional.empty();
        }
        if (scalar.getTag().equals(Tag.NULL)) {
            refuse(NoticeCode.EMPTY_VALUE, "; it must be " + kind + "." + advice());
            return Optional.empty();
        }
        return Optional.of(scalar.getValue());
    }

    private void refuseKind(String kind) {
        boolean empty = node instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL);
        refuse(empty ? NoticeCode.EMPTY_VALUE : NoticeCode.WRONG_KIND, "; it must be " + kind + "." + advice());
    }
}
