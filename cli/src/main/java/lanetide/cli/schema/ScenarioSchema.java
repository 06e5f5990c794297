package lanetide.cli.schema;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.Spellings;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The schema of scenarios, from the blocks and keys that the reader knows. Editors complete and check a scenario with it. */
final class ScenarioSchema {
    private static final String NAMED = ".NAME";
    /** Units of what is counted, so that only whole numbers of them make sense. */
    private static final Set<String> COUNTS = Set.of("pins", "shots");

    private static final String NUMBER = "[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?";
    private static final String PAIR = "^\\d{1,6} ?- ?\\d{1,6}$";

    private ScenarioSchema() {}

    static ObjectNode tree() {
        ObjectNode root = block(Block.SCENARIO);
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("$schema", AnswerSchema.DRAFT);
        schema.put("title", "Scenario of lanetide");
        schema.setAll(root);
        ObjectNode definitions = schema.putObject("$defs");
        for (Block block : Block.values()) {
            if (block != Block.SCENARIO) {
                definitions.set(block.path(), block(block));
            }
        }
        return schema;
    }

    private static ObjectNode block(Block block) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.put("type", "object");
        schema.put("additionalProperties", false);
        ObjectNode properties = schema.putObject("properties");
        for (Key key : block.keys()) {
            ObjectNode property = value(block, key);
            property.put(
                    "description", key.meaning() + ". Typical: " + key.typical() + ". If left out: " + key.otherwise());
            properties.set(key.name(), property);
        }
        ArrayNode required = schema.putArray("required");
        block.keys().stream().filter(Key::isRequired).forEach(key -> required.add(key.name()));
        return schema;
    }

    private static ObjectNode value(Block block, Key key) {
        String path = block.path().isEmpty() ? key.name() : block.path() + "." + key.name();
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        boolean sharesByName = key.typical().startsWith("{") && !key.unit().equals("block");
        if (sharesByName) {
            schema.put("type", "object");
            schema.set("additionalProperties", scalar(key.unit()));
            return schema;
        }
        return switch (key.unit()) {
            case "block" -> blockAt(path);
            case "list" -> list(blockAt(path));
            case "name or block" -> either(text(), blockAt(path));
            case "list or file name" -> either(list(blockAt(path)), pattern("^[A-Za-z0-9].*\\.[A-Za-z0-9]{1,5}$"));
            case "list of pairs" -> list(pattern(PAIR));
            case "list of lists" -> list(list(scalar("text")));
            case "list of boards", "list of numbers" -> list(scalar("number"));
            default -> scalar(key.unit());
        };
    }

    /** The block at a path, or named blocks of its kind. */
    private static ObjectNode blockAt(String path) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        if (hasBlock(path)) {
            schema.put("$ref", "#/$defs/" + path);
            return schema;
        }
        schema.put("type", "object");
        if (hasBlock(path + NAMED)) {
            schema.putObject("additionalProperties").put("$ref", "#/$defs/" + path + NAMED);
        }
        return schema;
    }

    private static boolean hasBlock(String path) {
        return Arrays.stream(Block.values()).anyMatch(block -> block.path().equals(path));
    }

    private static ObjectNode scalar(String unit) {
        return switch (unit) {
            case "text", "name" -> text();
            case "whole number" -> type("integer");
            case "number" -> type("number");
            case "lane range" -> pattern("^\\d{1,6} to \\d{1,6}$");
            case "file name" -> pattern("^[A-Za-z0-9].*\\.[A-Za-z0-9]{1,5}$");
            case "time of day" -> pattern("^(day \\d{1,2} )?([01]?\\d|2[0-3]):[0-5]\\d$");
            default -> quantity(unit);
        };
    }

    /** A number with any unit of its kind, or one of the words that may stand in its place. */
    private static ObjectNode quantity(String unit) {
        List<String> words = List.of(unit.split(", or |, | or ", -1));
        Optional<List<String>> spellings = words.stream()
                .flatMap(word -> Spellings.ofKindWith(word).stream())
                .findFirst();
        if (spellings.isEmpty()) {
            throw new IllegalStateException("the schema does not know the form `" + unit + "`");
        }
        String any = spellings.get().stream().map(ScenarioSchema::quoted).collect(Collectors.joining("|", "(", ")"));
        String one = (COUNTS.contains(unit) ? "\\d+" : NUMBER) + "\\s*" + any;
        String others = words.stream()
                .filter(word -> Spellings.ofKindWith(word).isEmpty())
                .map(word -> "|" + quoted(word))
                .collect(Collectors.joining());
        return pattern("^(" + one + "(\\s+" + one + ")*" + others + ")$");
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

    private static ObjectNode either(ObjectNode one, ObjectNode other) {
        ObjectNode schema = JsonNodeFactory.instance.objectNode();
        schema.putArray("anyOf").add(one).add(other);
        return schema;
    }
}
