package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.NamedFiles;
import lanetide.cli.scenario.value.Section;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.film.PatternBands;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowling;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
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

/** Reads a whole scenario: each block by its own reader, then what must fit together. */
public final class EventReader {
    private final Notices notices;
    private final Assumptions assumptions;
    private final OptionalLong seed;
    private final NamedFiles files;

    public EventReader(Notices notices, Assumptions assumptions, OptionalLong seed, NamedFiles files) {
        this.notices = notices;
        this.assumptions = assumptions;
        this.seed = seed;
        this.files = files;
    }

    /** An event, the design of its rotations, the seed its field was drawn with, what it can name, and what its director sets. */
    public record Planned(
            Event event, RotationDesign design, long seed, PatternBands bands, Names names, Policy policy) {}

    public Optional<Planned> read(Section scenario) {
        String name = scenario.text("name");
        long chosenSeed = seed(scenario);
        Names names = new OwnNamesReader(notices, assumptions).read(scenario);
        CentreReader.Found found = block(scenario, "centre", Block.CENTRE)
                .map(new CentreReader(notices, names, assumptions, new RandomStreams(chosenSeed))::read)
                .orElse(CentreReader.Found.NOTHING);
        Optional<Centre> centre = found.centre();
        Lanes lanes = found.lanes();
        centre.ifPresent(known -> FrictionCheck.check(scenario, known.surface(), names));
        PatternReader patterns = new PatternReader(notices, assumptions, files);
        Optional<Section> patternBlock = block(scenario, "pattern", Block.PATTERN);
        Optional<OilPattern> pattern = patternBlock.flatMap(patterns::read);
        Optional<PatternBands> bands = patternBlock.flatMap(patterns::bands);
        Optional<PaceOfPlay> pace = new PaceReader(notices, assumptions).read(scenario);
        Optional<Laws> laws = new LawsReader(assumptions).read(scenario);
        Optional<Bowling> bowling = new BowlingReader(notices, assumptions).read(scenario);
        Optional<Policy> policy = new PolicyReader(notices).read(scenario);
        Optional<RotationReader.Choice> choice =
                new RotationReader(notices, lanes, assumptions, chosenSeed).read(scenario);
        List<SquadDraft> drafts = new SquadsReader(assumptions).read(scenario);
        FieldReader fields = new FieldReader(notices, names, assumptions);
        BowlerReader bowlers = new BowlerReader(notices, names, fields);
        EntriesReader entries = new EntriesReader(notices, bowlers, files);
        List<Optional<List<Group>>> drawn = new SquadFiller(notices, fields, entries)
                .fill(scenario, drafts, lanes.rotationPairs().size(), new RandomStreams(chosenSeed));
        List<Optional<List<Group>>> groups =
                new HandicapReader(notices, names.levels()).give(scenario, drawn, entries.averages());
        List<List<LineUpChange>> changes = new ChangesReader(notices, bowlers, drafts, groups).read(scenario);
        List<Squad> squads = squads(drafts, groups, changes, new ArrangementsReader(notices, centre));
        Optional<Incidents> incidents = new IncidentsReader(notices, assumptions, centre).read(scenario);
        List<Rotation> rotations = centre.map(known -> rotations(scenario, choice, drafts, squads, known))
                .orElse(List.of());
        checkTimetable(drafts, squads, centre, pace);
        return notices.build(
                0,
                scenario.place(),
                "the scenario",
                () -> new Planned(
                        new Event(
                                name,
                                centre.orElseThrow(),
                                squads,
                                plans(rotations, pattern.orElseThrow()),
                                pace.orElseThrow(),
                                laws.orElseThrow(),
                                bowling.orElseThrow(),
                                incidents.orElseThrow()),
                        choice.orElseThrow().design(),
                        chosenSeed,
                        bands.orElseThrow(),
                        names.unmodifiable(),
                        policy.orElseThrow()));
    }

    private static Optional<Section> block(Section scenario, String key, Block block) {
        return scenario.require(key).flatMap(value -> value.section(block));
    }

    /** The squads, if every one of them is known. */
    private static List<Squad> squads(
            List<SquadDraft> drafts,
            List<Optional<List<Group>>> groups,
            List<List<LineUpChange>> changes,
            ArrangementsReader arrangements) {
        List<Squad> squads = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            SquadDraft draft = drafts.get(i);
            Optional<Arrangements> arranged = arrangements.read(draft, changes.get(i));
            groups.get(i)
                    .flatMap(present -> arranged.flatMap(known -> squad(draft, present, known)))
                    .ifPresent(squads::add);
        }
        return squads.size() == drafts.size() ? squads : List.of();
    }

    private List<Rotation> rotations(
            Section scenario,
            Optional<RotationReader.Choice> choice,
            List<SquadDraft> drafts,
            List<Squad> squads,
            Centre centre) {
        RotationPlanner planner = new RotationPlanner(notices, scenario, choice);
        List<Rotation> rotations = new ArrayList<>();
        for (int i = 0; i < squads.size(); i++) {
            planner.plan(squads.get(i), drafts.get(i).games(), centre).ifPresent(rotations::add);
        }
        return rotations;
    }

    /** The event's one pattern before every squad on every lane. */
    private static List<SquadPlan> plans(List<Rotation> rotations, OilPattern pattern) {
        return rotations.stream()
                .map(rotation -> new SquadPlan(rotation, LanePatterns.everywhere(pattern)))
                .toList();
    }

    private static void checkTimetable(
            List<SquadDraft> drafts, List<Squad> squads, Optional<Centre> centre, Optional<PaceOfPlay> pace) {
        if (centre.isPresent() && pace.isPresent()) {
            new TimetableCheck(pace.get(), centre.get()).check(drafts, squads);
        }
    }

    private long seed(Section scenario) {
        OptionalLong own = scenario.get("seed")
                .map(value -> value.wholeLong(Measure.NUMBER, 0, EventKeys.MAX_SEED))
                .orElse(OptionalLong.empty());
        if (seed.isPresent()) {
            return seed.getAsLong();
        }
        if (!scenario.has("seed")) {
            assumptions.add("seed", Defaults.SEED);
        }
        return own.orElse((long) Defaults.SEED.base());
    }

    private static Optional<Squad> squad(SquadDraft draft, List<Group> groups, Arrangements arrangements) {
        boolean known = !draft.id().isEmpty()
                && draft.startMs().isPresent()
                && draft.conditioning().isPresent()
                && draft.games() > 0
                && !Double.isNaN(draft.practiceMs());
        return known
                ? Optional.of(new Squad(
                        draft.id(),
                        draft.startMs().get(),
                        draft.conditioning().get(),
                        Math.round(draft.practiceMs()),
                        groups,
                        arrangements))
                : Optional.empty();
    }
}
