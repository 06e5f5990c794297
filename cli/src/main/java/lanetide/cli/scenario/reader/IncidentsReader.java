package lanetide.cli.scenario.reader;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.Block;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Names;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.PlannedFault;
import lanetide.squads.model.Remedy;
import lanetide.squads.model.Stops;
import lanetide.squads.score.TenpinScore;

/** Reads what can go wrong with lanes, and what is done then. */
final class IncidentsReader {
    private static final int MOST_GAMES_BETWEEN = 1_000_000;
    private static final int MOST_CREWS = 100;
    private static final Range WORK = Range.between(0, 24 * 3_600_000.0);
    private static final Range SPREAD = Range.between(0, 3);

    private final Notices notices;
    private final Assumptions assumptions;
    private final Optional<Centre> centre;

    IncidentsReader(Notices notices, Assumptions assumptions, Optional<Centre> centre) {
        this.notices = notices;
        this.assumptions = assumptions;
        this.centre = centre;
    }

    Optional<Incidents> read(Section scenario) {
        if (!scenario.has("incidents")) {
            assumptions.add("incidents", "none: all lanes are in order all day", "assumption");
            return Optional.of(Incidents.NONE);
        }
        return scenario.block("incidents", Block.INCIDENTS).flatMap(this::incidents);
    }

    private Optional<Incidents> incidents(Section section) {
        int before = notices.errors();
        Optional<Stops> jams = stops(section, "jams", Block.JAMS);
        Optional<Stops> faults = stops(section, "faults", Block.FAULTS);
        List<PlannedFault> planned = planned(section);
        int crews = section.has("crews") ? section.whole("crews", 1, MOST_CREWS) : (int) Defaults.CREWS.base();
        Optional<Remedy> remedy = section.has("remedy")
                ? section.get("remedy").flatMap(value -> value.oneOf(Names.REMEDIES, "remedy"))
                : Optional.of(Names.REMEDIES.get(Defaults.REMEDY));
        double patienceMs = section.quantity(
                "patience", Measure.TIME, Range.between(0, 24 * 3_600_000.0), Defaults.PATIENCE, assumptions);
        checkPlace(section, remedy);
        return section.build(
                before,
                () -> new Incidents(
                        jams.orElseThrow(),
                        faults.orElseThrow(),
                        planned,
                        crews,
                        remedy.orElseThrow(),
                        Math.round(patienceMs)));
    }

    /** A group that is to move must have a pair to move to. */
    private void checkPlace(Section section, Optional<Remedy> remedy) {
        boolean nowhere = centre.isPresent() && centre.get().spare().isEmpty();
        if (nowhere && remedy.filter(Remedy.SPARE::equals).isPresent()) {
            section.get("remedy")
                    .ifPresent(value -> value.refuse(
                            NoticeCode.NO_SPARE_PAIR,
                            ", but a group whose lane fails would have no pair to go to; the centre must keep one spare. Name"
                                    + " a pair under `spare` in `centre`, or write `wait` or `split`."));
        }
    }

    private Optional<Stops> stops(Section section, String key, Block block) {
        return section.has(key) ? section.block(key, block).flatMap(this::stops) : Optional.of(Stops.NEVER);
    }

    private Optional<Stops> stops(Section section) {
        int before = notices.errors();
        double games = section.quantity("every", Measure.GAMES, Range.between(0.1, MOST_GAMES_BETWEEN));
        double workMs = section.quantity("work", Measure.TIME, WORK);
        double spread = section.quantity("spread", Measure.SHARE, SPREAD, Defaults.WORK_SPREAD, assumptions);
        return section.build(before, () -> new Stops(games * TenpinScore.FRAMES, Math.round(workMs), spread));
    }

    private List<PlannedFault> planned(Section section) {
        List<PlannedFault> faults = new ArrayList<>();
        section.get("planned")
                .flatMap(Value::list)
                .ifPresent(list -> list.forEach(
                        item -> item.section(Block.PLANNED).flatMap(this::fault).ifPresent(faults::add)));
        return faults;
    }

    private Optional<PlannedFault> fault(Section section) {
        int before = notices.errors();
        int lane = section.whole("lane", 1, PairList.MOST_LANES);
        OptionalLong atMs = section.require("at").map(Value::timeOfDay).orElse(OptionalLong.empty());
        double workMs = section.quantity("work", Measure.TIME, WORK);
        centre.filter(known -> lane > 0 && !known.laneNumbers().contains(lane))
                .ifPresent(known -> unknown(section, known));
        return section.build(before, () -> new PlannedFault(lane, atMs.orElseThrow(), Math.round(workMs)));
    }

    private static void unknown(Section section, Centre centre) {
        section.get("lane")
                .ifPresent(value -> value.refuse(
                        NoticeCode.UNKNOWN_LANE,
                        ", but the centre's lanes are "
                                + centre.pairs().stream().map(pair -> pair.id()).collect(Collectors.joining(", "))
                                + "; a fault must be on one of them. Correct the number."));
    }
}
