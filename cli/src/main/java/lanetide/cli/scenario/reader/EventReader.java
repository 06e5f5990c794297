package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lanetide.cli.scenario.entries.DrawnTraits;
import lanetide.cli.scenario.entries.EntriesReader;
import lanetide.cli.scenario.entries.FieldReader;
import lanetide.cli.scenario.entries.NamedFields;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.RuleKeys;
import lanetide.cli.scenario.lanes.Lanes;
import lanetide.cli.scenario.measured.MeasuredFiles;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.pattern.NamedPatterns;
import lanetide.cli.scenario.pattern.PatternReader;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;
import lanetide.squads.change.WaitingList;
import lanetide.squads.measured.Measurements;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Cut;
import lanetide.squads.model.DrawnField;
import lanetide.squads.model.Event;
import lanetide.squads.model.FieldMix;
import lanetide.squads.model.Group;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.Laws;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.design.RotationDesign;
import lanetide.squads.study.DayClock;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/**
 * Reads a whole scenario: each block by its own reader, then what must fit together.
 *
 * @param notices takes what is wrong, and what is left to assumptions
 * @param seed the seed to use in place of the scenario's own, if any
 * @param files opens what the scenario names
 */
public record EventReader(Notices notices, OptionalLong seed, NamedFiles files) {
    /**
     * An event, what was measured at it, the designs of its rotations squad by squad, the seed its field was drawn
     * with, what it can name, what its director sets, what of its listed bowlers was drawn and is written, and its
     * clock if it had to be played.
     */
    public record Planned(
            Event event,
            Measurements measurements,
            List<RotationDesign> designs,
            long seed,
            PatternBands bands,
            Names names,
            Policy policy,
            DrawnTraits drawn,
            Map<String, Map<String, MappingNode>> entries,
            List<WaitingList.Waiting> waiting,
            Optional<DayClock> clock) {
        private Planned with(Measurements known, FindingsReader findings, Optional<DayClock> played) {
            Event applied = findings.applied(event, known);
            return new Planned(
                    applied,
                    known,
                    designs,
                    seed,
                    bands,
                    names,
                    policy,
                    drawn,
                    entries,
                    waiting,
                    played.filter(any -> applied.equals(event)));
        }
    }

    /** What the blocks say, each by itself; empty where something is wrong. */
    private record Parts(
            Names names,
            CentreReader.Found lanes,
            Optional<PatternBands> bands,
            Optional<PaceOfPlay> pace,
            Optional<Laws> laws,
            Optional<Bowling> bowling,
            Optional<Policy> policy,
            SquadMoves moves,
            List<SquadDraft> drafts,
            List<Optional<LanePatterns>> patterns,
            Manned manned,
            Optional<Incidents> incidents,
            Optional<Cut> cut) {}

    /** The squads with their bowlers, if every one of them is known, and what of these was drawn. */
    private record Manned(
            List<Squad> squads,
            DrawnTraits drawn,
            Map<String, Map<String, MappingNode>> entries,
            List<WaitingList.Waiting> waiting) {}

    /**
     * Reads a scenario in five steps: what each block says, what must fit together, the event, its clock, what was
     * measured at it.
     *
     * @param scenario the whole file
     * @return the event; empty, with notices, if something is wrong
     */
    public Optional<Planned> read(Section scenario) {
        long chosenSeed = seed(scenario);
        Parts parts = parts(scenario, chosenSeed);
        List<Rotation> rotations = checkedAcross(scenario, parts);
        Optional<Planned> planned =
                notices.build(scenario.place(), "the scenario", () -> planned(scenario, chosenSeed, parts, rotations));
        Optional<DayClock> clock = planned.filter(sound -> !notices.hasErrors())
                .flatMap(sound -> new ClockCheck(
                                sound.event(),
                                chosenSeed,
                                parts.drafts(),
                                parts.lanes().closes())
                        .check());
        Measurements measured = new MeasuredFiles(files).read(scenario, planned.map(Planned::event), chosenSeed, clock);
        FindingsReader findings =
                new FindingsReader(notices.assumptions(), parts.lanes().fitted());
        return planned.filter(sound -> !notices.hasErrors()).map(sound -> sound.with(measured, findings, clock));
    }

    private Parts parts(Section scenario, long chosenSeed) {
        RandomStreams streams = new RandomStreams(chosenSeed);
        Names names = OwnNamesReader.read(scenario, files);
        CentreReader.Found lanes = scenario.block(EventKeys.CENTRE)
                .map(new CentreReader(names, streams, files)::read)
                .orElse(CentreReader.Found.NOTHING);
        Optional<Section> patternBlock = scenario.block(EventKeys.PATTERN);
        Optional<OilPattern> pattern = patternBlock.flatMap(new PatternReader(files)::read);
        Optional<PatternBands> bands = patternBlock.flatMap(PatternReader::bands);
        Optional<PaceOfPlay> pace = PaceReader.read(scenario);
        Optional<Laws> laws = scenario.blockOrUsual(EventKeys.LAWS).flatMap(EventReader::laws);
        Optional<Bowling> bowling = BowlingReader.read(scenario);
        Optional<Policy> policy = PolicyReader.read(scenario);
        List<SquadDraft> drafts = new SquadsReader().read(scenario, lanes.lanes());
        NamedPatterns named = NamedPatterns.read(scenario, files, pattern);
        List<Optional<LanePatterns>> patterns = new SquadPatterns(scenario, lanes.lanes(), named, pattern).read(drafts);
        if (!patterns.isEmpty() && patterns.stream().allMatch(Optional::isPresent)) {
            named.remarkUnused(scenario);
        }
        SquadMoves moves = new SquadMoves(notices, scenario, drafts, lanes.lanes(), chosenSeed);
        Manned manned = squads(scenario, names, lanes, drafts, streams);
        Optional<Incidents> incidents = new IncidentsReader(lanes.centre()).read(scenario);
        Lanes ofLast =
                drafts.isEmpty() ? lanes.lanes() : drafts.get(drafts.size() - 1).lanes();
        Optional<Cut> cut = CutReader.read(scenario, drafts, manned.squads(), ofLast);
        return new Parts(
                names, lanes, bands, pace, laws, bowling, policy, moves, drafts, patterns, manned, incidents, cut);
    }

    private static Optional<Laws> laws(Section section) {
        return section.build(() -> new Laws(section.get(RuleKeys.FRICTION), section.get(RuleKeys.SPLIT)));
    }

    private Manned squads(
            Section scenario, Names names, CentreReader.Found lanes, List<SquadDraft> drafts, RandomStreams streams) {
        FieldReader fields = new FieldReader(names);
        EntriesReader entries = EntriesReader.of(scenario, names, streams, files);
        NamedFields named = NamedFields.read(
                scenario,
                fields,
                drafts.stream().flatMap(draft -> draft.fieldName().stream()).collect(Collectors.toSet()));
        List<Optional<SquadFiller.Filled>> filled =
                new SquadFiller(fields, named, entries).fill(scenario, drafts, streams);
        List<WaitingList.Waiting> waiting = entries.waiting();
        List<Optional<List<Group>>> withThoseWhoWait = withHandicaps(scenario, names, drafts, filled, entries);
        List<Optional<List<Group>>> groups = withThoseWhoWait.subList(0, drafts.size());
        List<List<LineUpChange>> changes = new ChangesReader(entries.bowlers(), drafts, groups).read(scenario);
        ArrangementsReader arrangements = new ArrangementsReader(lanes.centre());
        List<Squad> squads = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            SquadDraft draft = drafts.get(i);
            Optional<FieldMix> mix = filled.get(i).flatMap(SquadFiller.Filled::mix);
            Optional<Arrangements> arranged = arrangements.read(draft, changes.get(i));
            groups.get(i)
                    .flatMap(present -> arranged.flatMap(known -> draft.with(present, known))
                            .map(squad -> mix.map(
                                            shares -> squad.drawnFrom(DrawnField.of(draft.called(), shares, present)))
                                    .orElse(squad)))
                    .ifPresent(squads::add);
        }
        return new Manned(
                squads.size() == drafts.size() ? squads : List.of(),
                entries.drawn(),
                entries.written(),
                WaitingGroup.again(waiting, withThoseWhoWait.get(drafts.size())));
    }

    /** The groups of all squads under their names, and last those who wait. */
    private static List<Optional<List<Group>>> withHandicaps(
            Section scenario,
            Names names,
            List<SquadDraft> drafts,
            List<Optional<SquadFiller.Filled>> filled,
            EntriesReader entries) {
        Stream<Optional<List<Group>>> named = IntStream.range(0, drafts.size())
                .mapToObj(squad -> filled.get(squad).map(known -> GroupNames.given(drafts.get(squad), known.groups())));
        return new HandicapReader(names.levels())
                .give(
                        scenario,
                        Stream.concat(named, Stream.of(WaitingGroup.of(entries.waiting())))
                                .toList(),
                        entries.averages());
    }

    /** Checks what must fit together, as far as it is known, and plans the rotations. */
    private List<Rotation> checkedAcross(Section scenario, Parts parts) {
        List<Rotation> rotations = new ArrayList<>();
        parts.lanes().centre().ifPresent(centre -> {
            FrictionCheck.check(scenario, centre.surface(), parts.names());
            rotations.addAll(parts.moves().planned(parts.manned().squads(), centre));
            parts.pace()
                    .ifPresent(pace -> new TimetableCheck(pace, centre)
                            .check(parts.drafts(), parts.manned().squads()));
        });
        return rotations;
    }

    private static Planned planned(Section scenario, long chosenSeed, Parts parts, List<Rotation> rotations) {
        return new Planned(
                new Event(
                        scenario.get(EventKeys.NAME),
                        parts.lanes().centre().orElseThrow(),
                        parts.manned().squads(),
                        plans(rotations, parts),
                        parts.pace().orElseThrow(),
                        parts.laws().orElseThrow(),
                        parts.bowling().orElseThrow(),
                        parts.incidents().orElseThrow(),
                        parts.cut().map(cut -> cut.with(Optional.empty()))),
                Measurements.NONE,
                parts.moves().designs().orElseThrow(),
                chosenSeed,
                parts.bands().orElseThrow(),
                parts.names().unmodifiable(),
                parts.policy().orElseThrow().with(parts.cut().flatMap(Cut::finals)),
                parts.manned().drawn(),
                parts.manned().entries(),
                parts.manned().waiting(),
                Optional.empty());
    }

    private static List<SquadPlan> plans(List<Rotation> rotations, Parts parts) {
        Centre centre = parts.lanes().centre().orElseThrow();
        return IntStream.range(0, rotations.size())
                .mapToObj(squad -> new SquadPlan(
                        rotations.get(squad),
                        parts.patterns().get(squad).orElseThrow(),
                        parts.drafts().get(squad).own(centre)))
                .toList();
    }

    private long seed(Section scenario) {
        return seed.isPresent()
                ? seed.getAsLong()
                : scenario.find(EventKeys.SEED).or(EventKeys.SEED::usual).orElseThrow();
    }
}
