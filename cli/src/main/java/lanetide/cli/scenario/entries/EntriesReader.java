package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.ByName;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.Group;

/** Reads bowlers listed one by one. */
public final class EntriesReader {
    private final BowlerReader bowlers;
    private final NamedFiles files;
    private final Map<String, List<Entry>> bySquad = new LinkedHashMap<>();
    private final Map<String, Integer> averages = new HashMap<>();
    private boolean faulty;

    /** A reader of lists, in the scenario or in a file beside it. */
    public EntriesReader(BowlerReader bowlers, NamedFiles files) {
        this.bowlers = bowlers;
        this.files = files;
    }

    /** One line of the list. */
    private record Entry(Bowler bowler, Optional<Integer> group, Section section) {}

    /** Reads the list, or the table that stands for it, and sorts it by squad. */
    public void read(Section scenario, List<String> squads, int pairs) {
        Section list = scenario.ofPart();
        sections(list).forEach(section -> entry(section, squads, pairs));
        faulty = list.notices().hasErrors();
    }

    private List<Section> sections(Section scenario) {
        Optional<Value> name = scenario.value(EventKeys.ENTRIES).filter(Value::isScalar);
        return name.isEmpty()
                ? scenario.blocks(EventKeys.ENTRIES)
                : files.read(name.get())
                        .flatMap(bytes -> new EntriesCsv(scenario.notices()
                                        .in(files.path(name.get().plain())))
                                .read(bytes))
                        .orElse(List.of());
    }

    /** The averages given in the list (pins), by bowler. */
    public Map<String, Integer> averages() {
        return averages;
    }

    /** Whether a line of the list is wrong, so that who bowls where cannot be told. */
    public boolean isFaulty() {
        return faulty;
    }

    /** Whether the list names a bowler of this squad. */
    public boolean hasBowlersOf(String squad) {
        return bySquad.containsKey(squad);
    }

    /** The groups of a squad; empty with a notice if the list does not give them. */
    public Optional<List<Group>> groups(String squad, int pairs) {
        List<Entry> entries = bySquad.get(squad);
        long numbered =
                entries.stream().filter(entry -> entry.group().isPresent()).count();
        if (numbered == 0) {
            List<Bowler> bowlers = entries.stream().map(Entry::bowler).toList();
            return Optional.of(FieldMix.spread(bowlers, Math.min(pairs, bowlers.size())));
        }
        if (numbered < entries.size()) {
            entries.stream()
                    .filter(entry -> entry.group().isEmpty())
                    .findFirst()
                    .ifPresent(entry -> entry.section().missing(BowlerKeys.GROUP));
            return Optional.empty();
        }
        return byNumber(entries);
    }

    private Optional<List<Group>> byNumber(List<Entry> entries) {
        Map<Integer, List<Bowler>> bowlers = new TreeMap<>();
        for (Entry entry : entries) {
            bowlers.computeIfAbsent(entry.group().orElseThrow(), group -> new ArrayList<>())
                    .add(entry.bowler());
        }
        List<Group> groups = new ArrayList<>();
        for (Map.Entry<Integer, List<Bowler>> group : bowlers.entrySet()) {
            if (group.getKey() != groups.size() + 1) {
                skipped(entries, group.getKey(), groups.size() + 1);
                return Optional.empty();
            }
            groups.add(new Group(String.valueOf(group.getKey()), group.getValue()));
        }
        return Optional.of(groups);
    }

    private static void skipped(List<Entry> entries, int group, int missing) {
        entries.stream()
                .filter(entry -> entry.group().orElseThrow() == group)
                .findFirst()
                .flatMap(entry -> entry.section().value(BowlerKeys.GROUP))
                .ifPresent(value -> value.refuse(
                        NoticeCode.GROUP_MISSING,
                        ", but group " + missing
                                + " of this squad has no bowler; groups must be numbered from 1 without a"
                                + " gap. Use " + missing + ", or add bowlers to group " + missing + "."));
    }

    private void entry(Section section, List<String> squads, int pairs) {
        Optional<Integer> average = section.find(BowlerKeys.AVERAGE);
        Optional<Bowler> bowler = bowlers.read(section, average);
        Optional<String> squad = squad(section, squads);
        Optional<Integer> group = section.within(BowlerKeys.GROUP, Range.between(1, Math.max(1, pairs)));
        bowler.ifPresent(known -> average.ifPresent(pins -> averages.put(known.id(), pins)));
        if (!section.notices().hasErrors()) {
            bowler.ifPresent(known -> bySquad.computeIfAbsent(squad.orElseThrow(), key -> new ArrayList<>())
                    .add(new Entry(known, group, section)));
        }
    }

    private static Optional<String> squad(Section section, List<String> squads) {
        if (section.has(BowlerKeys.SQUAD)) {
            return section.oneOf(BowlerKeys.SQUAD, ByName.of(squads));
        }
        if (squads.size() != 1) {
            section.missing(BowlerKeys.SQUAD);
        }
        return squads.stream().findFirst();
    }
}
