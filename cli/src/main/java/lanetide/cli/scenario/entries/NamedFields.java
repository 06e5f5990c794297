package lanetide.cli.scenario.entries;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.TextRule;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedValue;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.FieldMix;

/**
 * The fields of bowlers that a scenario names, for squads to be drawn from.
 *
 * @param fields the fields by name; empty where one is wrong
 */
public record NamedFields(Map<String, Optional<FieldMix>> fields) {
    /**
     * Reads all of them; squads that name a faulty one are not told a second time.
     *
     * @param scenario the whole file
     * @param reader reads each
     * @param named the names that squads have
     */
    public static NamedFields read(Section scenario, FieldReader reader, Set<String> named) {
        Map<String, Optional<FieldMix>> fields = new LinkedHashMap<>();
        scenario.value(EventKeys.FIELDS)
                .flatMap(Value::named)
                .ifPresent(all -> all.forEach((id, field) -> {
                    refuseBadName(id, field);
                    if (!named.contains(id)) {
                        field.refuse(
                                NoticeCode.VALUE_WITHOUT_EFFECT,
                                ", but no squad is drawn from it. Name it as the `field` of a squad, or take it out.");
                    }
                    fields.put(id, field.value().section(BowlerKeys.FIELD).flatMap(reader::read));
                }));
        return new NamedFields(fields);
    }

    private static void refuseBadName(String id, NamedValue named) {
        if (!TextRule.isName(id)) {
            named.refuse(NoticeCode.BAD_TEXT, "; it must be " + TextRule.NAME_IN_WORDS + ". Rename it.");
        }
    }

    /** The field that a squad names; empty, with a notice, if there is none of that name. */
    public Optional<FieldMix> of(Value name) {
        if (fields.isEmpty()) {
            name.refuse(
                    NoticeCode.UNKNOWN_NAME,
                    ", the name of a field, but the scenario has no `fields`. Add them, or write the field itself here.");
            return Optional.empty();
        }
        return name.oneOf(fields, "field").flatMap(field -> field);
    }
}
