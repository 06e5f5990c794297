package lanetide.cli.scenario.entries;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import lanetide.cli.scenario.key.BowlerKeys;
import lanetide.cli.scenario.key.ByName;
import lanetide.cli.scenario.key.DrawKeys;
import lanetide.cli.scenario.key.EntryListKeys;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Presence;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.des.random.RandomStreams;
import lanetide.squads.change.WaitingList;
import lanetide.squads.draw.GroupDraw;
import lanetide.squads.draw.Partners;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Group;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/** Reads bowlers listed one by one. */
public final class EntriesReader {
    private final BowlerReader bowlers;
    private final Blanks blanks;
    private final LevelLimits limits;
    private final NamedFiles files;
    private final Map<String, List<Entry>> bySquad = new LinkedHashMap<>();
    private final Map<String, List<Entry>> waiting = new TreeMap<>();
    private final Map<Presence, Map<String, List<Entry>>> lists =
            Map.of(Presence.YES, bySquad, Presence.NO, new LinkedHashMap<>(), Presence.WAITING, waiting);
    private final Map<String, Integer> averages = new HashMap<>();
    private final Map<DrawnTraits.Who, String> teams = new LinkedHashMap<>();
    private final Optional<EntryDraw> draw;
    private boolean faulty;

    private EntriesReader(
            BowlerReader bowlers, Blanks blanks, LevelLimits limits, NamedFiles files, Optional<EntryDraw> draw) {
        this.draw = draw;
        this.bowlers = bowlers;
        this.blanks = blanks;
        this.limits = limits;
        this.files = files;
    }

    /**
     * A reader of the list of a scenario, and what draws what the list does not say.
     *
     * @param scenario the whole file, of which the field is read if it stands beside entries
     * @param names what the scenario can name
     * @param streams family to draw from, outside any replication
     * @param files opens what the scenario names
     */
    public static EntriesReader of(Section scenario, Names names, RandomStreams streams, NamedFiles files) {
        FieldReader fields = new FieldReader(names);
        Optional<Section> field = scenario.has(EventKeys.ENTRIES) ? scenario.block(EventKeys.FIELD) : Optional.empty();
        LevelLimits limits = LevelLimits.read(scenario, names);
        Blanks blanks = new Blanks(fields.besideEntries(field), streams);
        return new EntriesReader(
                new BowlerReader(names, fields, limits, blanks),
                blanks,
                limits,
                files,
                EntryDraw.read(scenario, streams));
    }

    /** Reads bowlers who are not listed; none may have the name of another. */
    public BowlerReader bowlers() {
        return bowlers;
    }

    /** What of the listed bowlers is not known. */
    public DrawnTraits drawn() {
        return blanks.drawnTraits().with(teams);
    }

    /**
     * A squad, and how many bowlers a draw may put into it.
     *
     * @param squad its name
     * @param places at most so many
     */
    public record Room(String squad, int places) {}

    /** One line of the list. */
    record Entry(Bowler bowler, Optional<Integer> group, Section section) {
        /** The same as one of several of a person, if he is listed in several squads. */
        Entry of(Map<String, String> people) {
            String person = people.get(bowler.id());
            return person == null ? this : new Entry(bowler.ofPerson(person), group, section);
        }
    }

    /**
     * Reads the list, or the table that stands for it, and sorts it by squad.
     *
     * @param scenario the whole file
     * @param rooms the squads in order
     * @param pairs pairs in use
     */
    public void read(Section scenario, List<Room> rooms, int pairs) {
        List<String> squads = rooms.stream().map(Room::squad).toList();
        Section list = scenario.ofPart();
        Optional<SquadLots> lots = SquadLots.of(draw, rooms);
        Optional<List<Section>> read = sections(list, squads.size() > 1 && lots.isEmpty());
        List<Section> sections = read.orElse(List.of());
        ListedSquads named = ListedSquads.of(sections);
        if (squads.isEmpty() && !named.isEmpty()) {
            suggest(named, list);
        }
        List<Optional<String>> drawn = lots.map(all -> all.drawn(sections)).orElse(List.of());
        for (int i = 0; i < sections.size(); i++) {
            Section section = sections.get(i);
            boolean names = drawn.isEmpty() || section.has(BowlerKeys.SQUAD);
            entry(section, names ? squad(section, squads, named) : drawn.get(i), pairs);
        }
        Map<String, String> people = bowlers.people();
        lists.values().forEach(part -> part.values().forEach(entries -> entries.replaceAll(one -> one.of(people))));
        PartnersCheck.check(bySquad);
        faulty = read.isEmpty() || list.notices().hasErrors();
        list.value(EventKeys.ENTRIES).ifPresent(bowlers::tellWhoBowlsAgain);
        blanks.tell(limits, scenario.notices().assumptions());
    }

    private static void suggest(ListedSquads named, Section list) {
        list.value(EventKeys.ENTRIES)
                .ifPresent(value -> value.say(
                        NoticeCode.SQUADS_IN_LIST,
                        "",
                        named.sentence().strip()
                                + " Name each of them by its `id` under `squads`, in order of" + " start, such as "
                                + EventKeys.SQUADS.typical() + "."));
    }

    /** What the scenario or the table says of each bowler; empty, with notices, if the table cannot be read. */
    private Optional<List<Section>> sections(Section scenario, boolean needsSquads) {
        Optional<Value> written = scenario.value(EventKeys.ENTRIES);
        if (written.filter(Value::isBlock).isPresent()) {
            return scenario.blockInPlaceOfList(EventKeys.ENTRIES)
                    .flatMap(table -> table.value(EntryListKeys.FILE)
                            .flatMap(file ->
                                    rows(file, table.block(EntryListKeys.COLUMNS), needsSquads, table.notices())));
        }
        return written.filter(Value::isScalar).isPresent()
                ? rows(written.get(), Optional.empty(), needsSquads, scenario.notices())
                : Optional.of(scenario.blocks(EventKeys.ENTRIES));
    }

    private Optional<List<Section>> rows(Value file, Optional<Section> columns, boolean needsSquads, Notices notices) {
        boolean drawsLevels = !blanks.shares().levels().kinds().isEmpty();
        return files.read(file)
                .flatMap(bytes -> new EntriesCsv(
                                notices.in(files.path(file.plain())),
                                new ColumnTitles(columns),
                                drawsLevels,
                                needsSquads)
                        .read(bytes));
    }

    /** Who waits for a place, by squad in alphabetical order, each in the order of the list. */
    public List<WaitingList.Waiting> waiting() {
        return waiting.entrySet().stream()
                .flatMap(squad ->
                        squad.getValue().stream().map(entry -> new WaitingList.Waiting(squad.getKey(), entry.bowler())))
                .toList();
    }

    /** What is written of each bowler, those who stay away too, by squad, then by what the event calls him. */
    public Map<String, Map<String, MappingNode>> written() {
        Map<String, Map<String, MappingNode>> written = new LinkedHashMap<>();
        for (Map<String, List<Entry>> part : List.of(bySquad, lists.get(Presence.NO), waiting)) {
            part.forEach((squad, entries) ->
                    entries.forEach(entry -> written.computeIfAbsent(squad, key -> new LinkedHashMap<>())
                            .put(entry.bowler().id(), entry.section().node())));
        }
        return written;
    }

    /** The averages given in the list (pins), by bowler. */
    public Map<String, Integer> averages() {
        return averages;
    }

    /** Whether a line of the list is wrong, so that who bowls where cannot be told. */
    public boolean isFaulty() {
        return faulty;
    }

    /** Whether entries that name no squad are drawn into one. */
    public boolean drawsSquads() {
        return draw.filter(asked -> asked.section().get(DrawKeys.SQUADS)).isPresent();
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
        if (draw.isPresent()) {
            return drawn(squad, entries, pairs);
        }
        if (numbered == 0) {
            List<Bowler> bowlers = entries.stream().map(Entry::bowler).toList();
            return Optional.of(Partners.filled(bowlers, pairs));
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

    /** A draw has no use for groups that are listed. */
    private Optional<List<Group>> drawn(String squad, List<Entry> entries, int pairs) {
        Optional<Entry> numbered =
                entries.stream().filter(entry -> entry.group().isPresent()).findFirst();
        if (numbered.isPresent()) {
            numbered.get()
                    .section()
                    .refuse(
                            BowlerKeys.GROUP,
                            NoticeCode.CONFLICTING_KEYS,
                            ", but `draw` asks the lot for groups. Remove the groups of the entries, or `draw`.");
            return Optional.empty();
        }
        List<GroupDraw.Entry> listed = entries.stream()
                .map(entry -> new GroupDraw.Entry(
                        entry.bowler(), average(entry.bowler().id())))
                .toList();
        return draw.map(lot -> lot.groups(squad, listed, Math.min(pairs, listed.size())));
    }

    private OptionalInt average(String bowler) {
        Integer pins = averages.get(bowler);
        return pins == null ? OptionalInt.empty() : OptionalInt.of(pins);
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

    private void entry(Section section, Optional<String> squad, int pairs) {
        Optional<Integer> average = section.find(BowlerKeys.AVERAGE);
        Optional<Bowler> bowler = bowlers.listed(section, squad.or(() -> written(section)), average);
        Optional<Integer> group = section.within(BowlerKeys.GROUP, Range.between(1, Math.max(1, pairs)));
        Optional<String> partners = section.find(BowlerKeys.PARTNERS);
        bowler.ifPresent(known -> average.ifPresent(pins -> averages.put(known.id(), pins)));
        Optional<String> team = section.find(BowlerKeys.TEAM);
        bowler.ifPresent(known ->
                squad.ifPresent(id -> team.ifPresent(name -> teams.put(new DrawnTraits.Who(id, known.id()), name))));
        if (!section.notices().hasErrors()) {
            Presence comes = section.find(BowlerKeys.COMES).orElse(Presence.YES);
            bowler.ifPresent(known -> squad.ifPresent(id -> lists.get(comes)
                    .computeIfAbsent(id, key -> new ArrayList<>())
                    .add(new Entry(known.with(partners), group, section))));
        }
    }

    private static Optional<String> written(Section section) {
        return section.value(BowlerKeys.SQUAD).map(Value::plain);
    }

    /** The squad of an entry; whatever it names if the scenario has no squads, which a notice tells already. */
    private static Optional<String> squad(Section section, List<String> squads, ListedSquads named) {
        if (squads.isEmpty()) {
            return written(section);
        }
        if (section.has(BowlerKeys.SQUAD)) {
            return section.value(BowlerKeys.SQUAD).orElseThrow().oneOf(ByName.of(squads), "squad", named.sentence());
        }
        if (squads.size() > 1) {
            section.missing(BowlerKeys.SQUAD);
            return Optional.empty();
        }
        return squads.stream().findFirst();
    }
}
