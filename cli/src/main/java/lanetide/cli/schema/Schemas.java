package lanetide.cli.schema;

import java.util.ArrayList;
import java.util.List;
import lanetide.cli.report.JsonAnswer;

/** The schemas by name: {@code scenario}, and each command that answers in JSON. */
public final class Schemas {
    /** The schema of scenario files. */
    public static final String SCENARIO = "scenario";

    private Schemas() {}

    /**
     * The names.
     *
     * @return the scenario first
     */
    public static List<String> names() {
        List<String> names = new ArrayList<>(List.of(SCENARIO));
        Answer.all().stream().map(Answer::command).forEach(names::add);
        return names;
    }

    /**
     * Writes a schema.
     *
     * @param name one of {@link #names()}
     * @return the schema as JSON
     * @throws IllegalArgumentException if there is no such schema
     */
    public static String write(String name) {
        if (name.equals(SCENARIO)) {
            return JsonAnswer.write(ScenarioSchema.tree());
        }
        return Answer.all().stream()
                .filter(answer -> answer.command().equals(name))
                .findFirst()
                .map(answer -> JsonAnswer.write(AnswerSchema.tree(answer)))
                .orElseThrow(() -> new IllegalArgumentException("there is no schema " + name + ", only " + names()));
    }
}
