package lanetide.cli.scenario.value;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Plausible;
import lanetide.cli.scenario.key.TextRule;
import lanetide.cli.scenario.key.Unit;
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
 * A value in a scenario that knows its path and place. Each typed getter returns the value, or adds a notice and
 * returns empty.
 *
 * @param node what stands in the file
 * @param path where the value stands, such as {@code squads[2].start}
 * @param hint what usually stands here
 * @param notices takes what is wrong
 */
public record Value(Node node, String path, String hint, Notices notices) {
    /** Line and column at which it begins. */
    public Place place() {
        return Place.of(node);
    }

    /** Whether it is a block of keys. */
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
        say(code, plain(), shown() + problem);
    }

    /** Adds a notice that this value is not what it must be, with what to try in a sentence of its own. */
    public void mustBe(NoticeCode code, String limit, String whatToTry) {
        notices.add(code, place(), path, plain(), limit, shown() + "; it must be " + limit + "." + whatToTry);
    }

    /** Adds a warning that this value is allowed and yet far from what is in use. */
    void farFetched(Plausible plausible, Unit unit) {
        String usual = plausible.range().inWords(unit);
        notices.add(
                NoticeCode.IMPLAUSIBLE_VALUE,
                place(),
                path,
                plain(),
                usual,
                shown() + ", which is far from what is usual, " + usual + ". " + plausible.reason()
                        + " Check the value; answers for it are a guess.");
    }

    private String shown() {
        String shown = isScalar() ? "`" + Notices.quote(written()) + "`" : isEmpty() ? "empty" : written();
        return (path.isEmpty() ? "The scenario" : path) + " is " + shown;
    }

    /** Adds a notice about this value in its own words. */
    public void say(NoticeCode code, String value, String message) {
        notices.add(code, place(), path, value, message);
    }

    /** Whether a single value stands here, not a list or a block. */
    public boolean isScalar() {
        return node instanceof ScalarNode && !isEmpty();
    }

    /** The value as the file has it, empty for a list or a block. */
    public String plain() {
        return isScalar() ? written() : "";
    }

    private boolean isEmpty() {
        return node instanceof ScalarNode scalar && scalar.getValue().isEmpty();
    }

    /** What usually stands here, as a sentence. */
    public String advice() {
        return hint.isEmpty() ? "" : " Typical: " + hint + ".";
    }

    /** A text. */
    public Optional<String> text() {
        return read(new Form.Text(false));
    }

    /** The value in a form that needs to know nothing else; empty, with a notice, if it is not in that form. */
    @SuppressWarnings({"unchecked", "OptionalMapToOptional"}) // each form is read into what its type says
    public <T> Optional<T> read(Form<T> form) {
        Optional<?> read;
        if (form instanceof Form.Quantity<?> quantity) {
            read = scalar("a number").flatMap(new QuantityReader<>(this, quantity)::read);
        } else if (form instanceof Form.OrNone<?> other) {
            read = written().equals(Form.OrNone.WORD)
                    ? Optional.of(Optional.empty())
                    : read(other.quantity()).map(Optional::of);
        } else if (form instanceof Form.Text text) {
            read = scalar("a text").filter(written -> isText(written, text));
        } else if (form instanceof Form.Choice<?> choice) {
            read = oneOf(choice.known(), choice.kind());
        } else if (form instanceof Form.Clock) {
            read = scalar("a time of day").flatMap(written -> TimeOfDay.read(written, this));
        } else {
            throw new IllegalStateException("`" + form.inWords() + "` has a reader of its own");
        }
        return (Optional<T>) read;
    }

    private boolean isText(String text, Form.Text form) {
        if (!TextRule.isText(text)) {
            mustBe(NoticeCode.BAD_TEXT, TextRule.TEXT_IN_WORDS, " Shorten or retype it.");
            return false;
        }
        if (form.isName() && !TextRule.isName(text)) {
            mustBe(NoticeCode.BAD_TEXT, TextRule.NAME_IN_WORDS, advice());
            return false;
        }
        return true;
    }

    /** The known thing of this name. */
    public <T> Optional<T> oneOf(Map<String, T> known, String kind) {
        return oneOf(known, kind, "");
    }

    /** The known thing of this name; if there is none, the notice has one more sentence. */
    public <T> Optional<T> oneOf(Map<String, T> known, String kind, String more) {
        Optional<String> name = scalar("a name");
        if (name.isPresent() && !known.containsKey(name.get())) {
            notices.add(
                    NoticeCode.UNKNOWN_NAME,
                    place(),
                    path,
                    plain(),
                    String.join(", ", known.keySet()),
                    shown() + unknown(name.get(), known.keySet(), kind) + more);
        }
        return name.map(known::get);
    }

    static String unknown(String name, Collection<String> known, String kind) {
        String nearest = Nearest.to(name, known)
                .map(near -> " Did you mean " + near + "?")
                .orElse("");
        return ", which is not a known " + kind + "." + nearest + " Known: " + String.join(", ", known) + ".";
    }

    /** The block that stands here, opened. */
    public Optional<Section> section(Block block) {
        return section(block, notices);
    }

    Optional<Section> section(Block block, Notices around) {
        if (!(node instanceof MappingNode mapping)) {
            refuseKind("a block of `key: value` lines");
            return Optional.empty();
        }
        return Optional.of(new Section(block, path, mapping, around));
    }

    /** The items of the list that stands here; empty, with a notice, if it is none. */
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
    public Optional<Value> child(Key<?> key) {
        return child(key.name());
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
        if (node instanceof ScalarNode scalar && !scalar.getTag().equals(Tag.NULL)) {
            return Optional.of(scalar.getValue());
        }
        refuseKind(kind);
        return Optional.empty();
    }

    private void refuseKind(String kind) {
        boolean empty = node instanceof ScalarNode scalar && scalar.getTag().equals(Tag.NULL);
        String whatToTry = empty && hint.isEmpty() ? " Fill it in, or take the line out." : advice();
        mustBe(empty ? NoticeCode.EMPTY_VALUE : NoticeCode.WRONG_KIND, kind, whatToTry);
    }
}
