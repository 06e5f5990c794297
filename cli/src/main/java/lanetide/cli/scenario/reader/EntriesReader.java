package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.ByName;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.Group;
import lanetide.squads.score.ScoreCard;

/** Reads bowlers listed one by one. */
final class EntriesReader {
    private final Notices notices;
    private final BowlerReader bowlers;
    private final NamedFiles files;
    private final Map<String, List<Entry>> bySquad = new LinkedHashMap<>();
    private final Map<String, Integer> averages = new HashMap<>();
    private boolean faulty;

    EntriesReader(Notices notices, BowlerReader bowlers, NamedFiles files) {
        this.notices = notices;
        this.bowlers = bowlers;
        this.files = files;
    }

    /** One line of the list. */
    private record Entry(Bowler bowler, OptionalInt group, Section section) {}

    /** Reads the list, or the table that stands for it, and sorts it by squad. */
    void read(Value list, List<String> squads, int pairs) {
        int before = notices.errors();
        for (Section section : sections(list)) {
            entry(section, squads, pairs);
        }
        faulty = notices.errors() > before;
    }

    private List<Section> sections(Value list) {
        if (list.isScalar()) {
            return files.read(list)
                    .flatMap(bytes -> new EntriesCsv(notices.in(files.path(list.plain()))).read(bytes))
                    .orElse(List.of());
        }
        return list.list().orElse(List.of()).stream()
                .flatMap(item -> item.section(Block.ENTRY).stream())
                .toList();
    }

    /** The averages given in the list (pins), by bowler. */
    Map<String, Integer> averages() {
        return averages;
    }

    /** Whether a line of the list is wrong, so that who bowls where cannot be told. */
    boolean isFaulty() {
        return faulty;
    }

    /** Whether the list names a bowler of this squad. */
    boolean hasBowlersOf(String squad) {
        return bySquad.containsKey(squad);
    }

    /** The groups of a squad; empty with a notice if the list does not give them. */
    Optional<List<Group>> groups(String squad, int pairs) {
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
                    .ifPresent(entry -> entry.section().missing("group"));
            return Optional.empty();
        }
        return byNumber(entries);
    }

    private Optional<List<Group>> byNumber(List<Entry> entries) {
        Map<Integer, List<Bowler>> bowlers = new TreeMap<>();
        for (Entry entry : entries) {
            bowlers.computeIfAbsent(entry.group().getAsInt(), group -> new ArrayList<>())
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
                .filter(entry -> entry.group().getAsInt() == group)
                .findFirst()
                .flatMap(entry -> entry.section().get("group"))
                .ifPresent(value -> value.refuse(
                        NoticeCode.GROUP_MISSING,
                        ", but group " + missing
                                + " of this squad has no bowler; groups must be numbered from 1 without a"
                                + " gap. Use " + missing + ", or add bowlers to group " + missing + "."));
    }

    private void entry(Section section, List<String> squads, int pairs) {
        int before = notices.errors();
        Optional<Bowler> bowler = bowlers.read(section);
        OptionalInt average = section.get("average")
                .map(value -> value.whole(Measure.PINS, 0, ScoreCard.PERFECT))
                .orElse(OptionalInt.empty());
        bowler.ifPresent(known -> average.ifPresent(pins -> averages.put(known.id(), pins)));
        String squad = squad(section, squads);
        OptionalInt group = section.get("group")
                .map(value -> value.whole(1, Math.max(1, pairs)))
                .orElse(OptionalInt.empty());
        if (notices.errors() == before) {
            bowler.ifPresent(known ->
                    bySquad.computeIfAbsent(squad, key -> new ArrayList<>()).add(new Entry(known, group, section)));
        }
    }

    private static String squad(Section section, List<String> squads) {
        if (!section.has("squad") && squads.size() == 1) {
            return squads.get(0);
        }
        return section.require("squad")
                .flatMap(value -> value.oneOf(ByName.of(squads), "squad"))
                .orElse("");
    }
}
