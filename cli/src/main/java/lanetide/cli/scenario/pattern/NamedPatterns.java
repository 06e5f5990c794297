package lanetide.cli.scenario.pattern;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.key.PatternKeys;
import lanetide.cli.scenario.key.TextRule;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.NamedValue;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.oilflow.film.OilPattern;

/** The patterns of a scenario by name, and which of them are ever laid. */
public final class NamedPatterns {
    private final Map<String, Optional<OilPattern>> known = new LinkedHashMap<>();
    private final Map<String, NamedValue> further = new LinkedHashMap<>();
    private final Set<OilPattern> laid = new LinkedHashSet<>();

    private NamedPatterns() {}

    /**
     * Reads the further patterns.
     *
     * @param scenario the whole file
     * @param files opens what the scenario names
     * @param first the first pattern; empty if it is wrong
     */
    public static NamedPatterns read(Section scenario, NamedFiles files, Optional<OilPattern> first) {
        NamedPatterns patterns = new NamedPatterns();
        first.ifPresent(pattern -> patterns.known.put(pattern.id(), first));
        scenario.value(EventKeys.PATTERNS)
                .flatMap(Value::named)
                .ifPresent(all -> all.forEach((name, block) -> patterns.add(name, block, files)));
        return patterns;
    }

    private void add(String name, NamedValue block, NamedFiles files) {
        if (!TextRule.isName(name)) {
            block.refuse(NoticeCode.BAD_TEXT, "; it must be " + TextRule.NAME_IN_WORDS + ". Rename it.");
        }
        if (known.containsKey(name)) {
            block.refuse(
                    NoticeCode.DUPLICATE_NAME,
                    ", the name of the first pattern too; each pattern must have a name alone. Choose another.");
            return;
        }
        known.put(
                name,
                block.value()
                        .section(PatternKeys.FURTHER)
                        .flatMap(section -> new PatternReader(files).read(section, name)));
        further.put(name, block);
    }

    /** The pattern that a key names; empty if it is left out, or with a notice wrong. */
    public Optional<OilPattern> find(Section section, Key<String> key) {
        return section.oneOf(key, known).flatMap(pattern -> pattern);
    }

    /** Notes what is laid somewhere. */
    public void laid(List<OilPattern> patterns) {
        laid.addAll(patterns);
    }

    /** Says of each pattern that is never laid that it is not; to be asked where all squads are sound. */
    public void remarkUnused(Section scenario) {
        known.forEach((name, pattern) -> pattern.filter(sound -> !laid.contains(sound))
                .ifPresent(unused -> Optional.ofNullable(further.get(name))
                        .map(NamedValue::value)
                        .or(() -> scenario.value(EventKeys.PATTERN))
                        .ifPresent(value -> value.say(
                                NoticeCode.VALUE_WITHOUT_EFFECT,
                                name,
                                "The pattern " + name + " is laid before no squad on any lane. Name it in a squad's"
                                        + " `pattern` or in `lanePatterns`, or leave it out."))));
    }
}
