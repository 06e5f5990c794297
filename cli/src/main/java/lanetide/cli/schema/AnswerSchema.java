package lanetide.cli.schema;

import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Turns the list of an answer's fields into a schema. A field is written {@code path type meaning}; {@code []} after a
 * name stands for each item of a list, {@code *} for any name, {@code ~} before a name for a field that may be missing,
 * {@code ?} after a type for a value that may be null.
 */
final class AnswerSchema {
    static final String DRAFT = "https://json-schema.org/draft/2020-12/schema";

    private AnswerSchema() {}

    static ObjectNode tree(Answer answer) {
        ObjectNode root = JsonNodeFactory.instance.objectNode();
        root.put("$schema", DRAFT);
        root.put("title", "Answer of lanetide " + answer.command() + " --format json");
        root.put("type", "object");
        answer.fields().forEach(line -> add(root, line));
        return root;
    }

    private static void add(ObjectNode root, String line) {
        String[] parts = line.strip().split("\\s+", 3);
        String[] names = parts[0].split("\\.", -1);
        ObjectNode at = root;
        for (int i = 0; i < names.length; i++) {
            boolean last = i == names.length - 1;
            boolean optional = names[i].startsWith("~");
            at = child(at, names[i].replaceAll("^~|\\[\\]", ""), optional);
            if (names[i].endsWith("[]")) {
                at = items(at, last ? "" : "object");
            }
            if (last) {
                describe(at, parts[1], parts.length > 2 ? parts[2] : "");
            } else if (!at.has("type")) {
                at.put("type", "object");
            }
        }
    }

    /**
     * The schema of a named field, made if it is new; each is required unless it is marked as one that may be missing.
     */
    private static ObjectNode child(ObjectNode parent, String name, boolean optional) {
        if (name.equals("*")) {
            return parent.withObject("/additionalProperties");
        }
        ObjectNode properties = parent.withObject("/properties");
        if (!properties.has(name)) {
            properties.putObject(name);
            if (!optional) {
                ArrayNode required =
                        parent.has("required") ? parent.withArray("/required") : parent.putArray("required");
                required.add(name);
            }
        }
        return (ObjectNode) properties.get(name);
    }

    private static ObjectNode items(ObjectNode list, String type) {
        list.put("type", "array");
        ObjectNode items = list.withObject("/items");
        if (!type.isEmpty() && !items.has("type")) {
            items.put("type", type);
        }
        return items;
    }

    private static void describe(ObjectNode field, String type, String meaning) {
        String base = type.replace("?", "");
        String name = base.equals("text") ? "string" : base;
        if (type.endsWith("?")) {
            field.putArray("type").add(name).add("null");
        } else {
            field.put("type", name);
        }
        if (!meaning.isEmpty()) {
            field.put("description", meaning);
        }
    }
}
