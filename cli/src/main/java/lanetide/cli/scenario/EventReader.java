package lanetide.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationDesign;

/** Reads a whole scenario: each block by its own reader, then what must fit together. */
final class EventReader {
    private final Notices notices;
    private final Assumptions assumptions;
    private final OptionalLong seed;

    EventReader(Notices notices, Assumptions assumptions, OptionalLong seed) {
        this.notices = notices;
        this.assumptions = assumptions;
        this.seed = seed;
    }

    /** An event, the design of its rotations and the seed its field was drawn with. */
    record Planned(Event event, RotationDesign design, long seed) {}

    Optional<Planned> read(Section scenario) {
        String name = scenario.text("name");
        long chosenSeed = seed(scenario);
        Names names = new OwnNamesReader(notices).read(scenario);
        Optional<Centre> centre = scenario.require("centre")
                .flatMap(value -> value.section(Block.CENTRE))
                .flatMap(new CentreReader(notices, names, assumptions)::read);
        Optional<OilPattern> pattern = scenario.require("pattern")
                .flatMap(value -> value.section(Block.PATTERN))
                .flatMap(new PatternReader(notices, assumptions)::read);
        Optional<PaceOfPlay> pace = new PaceReader(notices, assumptions).read(scenario);
        List<SquadDraft> drafts = new SquadsReader(assumptions).read(scenario);
        Optional<RotationDesign> design = new RotationReader(notices, centre, assumptions).read(scenario);
        FieldReader fields = new FieldReader(notices, names, assumptions);
        SquadFiller filler = new SquadFiller(notices, fields, new EntriesReader(notices, names, fields));
        List<Optional<List<Group>>> groups = filler.fill(scenario, drafts, centre, new RandomStreams(chosenSeed));
        RotationPlanner planner = new RotationPlanner(notices, scenario, design);
        List<Rotation> rotations = new ArrayList<>();
        List<Squad> squads = new ArrayList<>();
        for (int i = 0; i < drafts.size(); i++) {
            SquadDraft draft = drafts.get(i);
            Optional<Squad> squad = groups.get(i).flatMap(present -> squad(draft, present));
            if (squad.isPresent() && centre.isPresent()) {
                planner.plan(squad.get(), draft.games(), centre.get()).ifPresent(rotations::add);
                squads.add(squad.get());
            }
        }
        if (squads.size() == drafts.size() && centre.isPresent() && pace.isPresent()) {
            new TimetableCheck(pace.get(), centre.get()).check(drafts, squads);
        }
        return event(
                scenario,
                () -> new Planned(
                        new Event(
                                name,
                                centre.orElseThrow(),
                                pattern.orElseThrow(),
                                squads,
                                rotations,
                                pace.orElseThrow()),
                        design.orElseThrow(),
                        chosenSeed));
    }

    private Optional<Planned> event(Section scenario, java.util.function.Supplier<Planned> event) {
        return notices.build(0, scenario.place(), "the scenario", event);
    }

    private long seed(Section scenario) {
        OptionalLong own = scenario.get("seed")
                .map(value -> value.wholeLong(Measure.NUMBER, 0, ScenarioReader.LARGEST_SEED))
                .orElse(OptionalLong.empty());
        if (seed.isPresent()) {
            return seed.getAsLong();
        }
        if (!scenario.has("seed")) {
            assumptions.add("seed", Defaults.SEED);
        }
        return own.orElse((long) Defaults.SEED.base());
    }

    private Optional<Squad> squad(SquadDraft draft, List<Group> groups) {
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
                        groups))
                : Optional.empty();
    }
}
