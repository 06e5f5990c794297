package lanetide.cli.schema;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Blocks;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Form;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Range;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * The schema of scenarios, from the blocks and keys that the reader knows. Editors complete and check a scenario with
 * it.
 */
final class ScenarioSchema {
    private static final String NUMBER = "[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?";
    private static final String FILE = "^[A-Za-z0-9].*\\.[A-Za-z0-9]{1,5}$";
    private static final String MATCH = "^[wWlL]?\\d{1,4}\\s*-\\s*[wWlL]?\\d{1,4}$";
    private static final String LANE_RANGE = "^\\d{1,6} to \\d{1,6}$";
    private static final String PAIR = "^\\d{1,6} ?- ?\\d{1,6}$";

    private ScenarioSchema() {}

    static ObjectNode tree() {
        ObjectNode root = block(EventKeys.SCENARIO);
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", AnswerSchema.DRAFT);
        schema.put("title", "Scenario of lanetide");
        schema.setAll(root);
        ObjectNode definitions = schema.putObject("$defs");
        for (Block block : Blocks.ALL) {
            if (!block.equals(EventKeys.SCENARIO)) {
                definitions.set(block.name(), block(block));
            }
        }
        return schema;
    }

    private static ObjectNode block(Block block) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        for (Key<?> key : block.keys()) {
            ObjectNode property = value(block, key);
            String limits = key.form().limits();
            property.put(
                    "description",
                    key.meaning() + (limits.isEmpty() ? "" : ". Limits: " + limits) + ". Typical: " + key.typical()
                            + ". If left out: " + key.otherwise());
            properties.set(key.name(), property);
        }
        ArrayNode required = schema.putArray("required");
        block.keys().stream().filter(Key::isRequired).forEach(key -> required.add(key.name()));
        return schema;
    }

    private static ObjectNode value(Block block, Key<?> key) {
        if (key.form() instanceof Form.Structure structure) {
            return switch (structure) {
                case BLOCK -> blockUnder(block, key);
                case LIST -> list(blockUnder(block, key));
                case NAME_OR_BLOCK -> either(text(), blockUnder(block, key));
                case LIST_OR_FILE ->
                    either(list(blockUnder(block, key)), pattern(FILE), blockInPlaceOfList(block, key));
                case FILES -> either(list(pattern(FILE)), pattern(FILE));
                case FILE -> pattern(FILE);
                case LANES -> pattern(LANE_RANGE);
                case PAIRS -> list(pattern(PAIR));
                case SOME_PAIRS -> either(pattern(LANE_RANGE), list(pattern(PAIR)));
                case SOME_LANES ->
                    either(
                            pattern(LANE_RANGE),
                            pattern("^(odd pairs|even pairs|left lanes|right lanes)$"),
                            list(either(pattern(PAIR), pattern("^\\d{1,6}$"), type("integer"))));
                case MATCHES -> list(list(pattern(MATCH)));
                case TABLE -> list(list(text()));
            };
        }
        if (key.form() instanceof Form.Each<?> each) {
            return list(scalar(each.item()));
        }
        if (key.form() instanceof Form.Shares<?> shares) {
            ObjectNode schema = type("object");
            schema.set("additionalProperties", scalar(shares.item()));
            return schema;
        }
        return scalar(key.form());
    }

    /** The block under a key, or named blocks of its kind. */
    private static ObjectNode blockUnder(Block around, Key<?> key) {
        Block block = Blocks.under(around, key).orElseThrow();
        ObjectNode reference = reference(block);
        if (!Blocks.isNamed(around, key)) {
            return reference;
        }
        ObjectNode schema = type("object");
        schema.set("additionalProperties", reference);
        return schema;
    }

    private static ObjectNode blockInPlaceOfList(Block around, Key<?> key) {
        return reference(Blocks.inPlaceOfList(around, key).orElseThrow());
    }

    private static ObjectNode reference(Block block) {
        return JsonNodeFactory.instance.objectNode().put("$ref", "#/$defs/" + block.name());
    }

    private static ObjectNode scalar(Form<?> form) {
        if (form instanceof Form.Quantity<?> quantity) {
            return quantity.measure().hasUnit() ? pattern("^" + quantity(quantity) + "$") : number(quantity);
        }
        if (form instanceof Form.OrNone<?> other) {
            return pattern("^(" + quantity(other.quantity()) + "|" + Form.OrNone.WORD + ")$");
        }
        return form instanceof Form.Clock ? pattern("^(day \\d{1,2} )?([01]?\\d|2[0-3]):[0-5]\\d$") : text();
    }

    private static ObjectNode number(Form.Quantity<?> form) {
        ObjectNode schema = type(form.isWhole() ? "integer" : "number");
        Range range = form.range();
        schema.put(
                range.lowAllowed() ? "minimum" : "exclusiveMinimum",
                BigDecimal.valueOf(range.low()).stripTrailingZeros());
        schema.put("maximum", BigDecimal.valueOf(range.high()).stripTrailingZeros());
        return schema;
    }

    /** A number with any unit of its kind. */
    private static String quantity(Form.Quantity<?> form) {
        String any = form.measure().spellings().stream()
                .map(ScenarioSchema::quoted)
                .collect(Collectors.joining("|", "(", ")"));
        String one = (form.isWhole() ? "\\d+" : NUMBER) + "\\s*" + any;
        return one + "(\\s+" + one + ")*";
    }

    /** A word inside a regular expression that every dialect reads alike. */
    private static String quoted(String word) {
        return Pattern.compile("([\\\\.\\[\\](){}*+?^$|])").matcher(word).replaceAll("\\\\$1");
    }

    private static ObjectNode text() {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.putArray("type").add("string").add("number").add("boolean");
        return schema;
    }

    private static ObjectNode type(String type) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("type", type);
        return schema;
    }

    private static ObjectNode pattern(String pattern) {
        ObjectNode schema = type("string");
        schema.put("pattern", pattern);
        return schema;
    }

    private static ObjectNode list(ObjectNode items) {
        ObjectNode schema = type("array");
        schema.put("minItems", 1);
        schema.set("items", items);
        return schema;
    }

    private static ObjectNode either(ObjectNode... any) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.putArray("anyOf").addAll(List.of(any));
        return schema;
    }
}
