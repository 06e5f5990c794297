package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;

/**
 * The squads that a list of entries names, whether or not the scenario has them.
 *
 * @param entries how many entries name each, in the order of the list
 */
record ListedSquads(Map<String, Integer> entries) {
    /** More than these are only counted: they are no squads, but something else in that column. */
    private static final int MAX_TOLD = 12;

    static ListedSquads of(List<Section> entries) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        entries.stream()
                .flatMap(entry -> entry.value(BowlerKeys.SQUAD).stream())
                .filter(Value::isScalar)
                .forEach(squad -> counts.merge(squad.plain(), 1, Integer::sum));
        return new ListedSquads(counts);
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    /** What the list has, as a sentence to follow another one; empty if it names none. */
    String sentence() {
        return isEmpty() ? "" : " Your list has " + inWords() + ".";
    }

    /** The squads with how many entries each has, such as {@code squads A (60), B (58) and C (61)}. */
    private String inWords() {
        List<String> told = new ArrayList<>(entries.entrySet().stream()
                .limit(MAX_TOLD)
                .map(squad -> Notices.quote(squad.getKey()) + " (" + squad.getValue() + ")")
                .toList());
        if (entries.size() > MAX_TOLD) {
            told.add((entries.size() - MAX_TOLD) + " more");
        }
        int last = told.size() - 1;
        String before = String.join(", ", told.subList(0, last));
        return (last == 0 ? "squad " : "squads " + before + " and ") + told.get(last);
    }
}
