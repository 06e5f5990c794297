package lanetide.cli.scenario.reader;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lanetide.cli.scenario.key.EventKeys;
import lanetide.cli.scenario.key.IncidentKeys;
import lanetide.cli.scenario.key.Key;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.Centre;
import lanetide.squads.model.FaultResponse;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.PlannedFault;
import lanetide.squads.model.Stops;
import lanetide.squads.score.TenpinScore;

/** Reads what can go wrong with lanes, and what is done then. */
record IncidentsReader(Optional<Centre> centre) {
    Optional<Incidents> read(Section scenario) {
        if (!scenario.has(EventKeys.INCIDENTS)) {
            scenario.assume(EventKeys.INCIDENTS, "none: all lanes are in order all day", "assumption");
            return Optional.of(Incidents.NONE);
        }
        return scenario.block(EventKeys.INCIDENTS).flatMap(this::incidents);
    }

    private Optional<Incidents> incidents(Section section) {
        Optional<Stops> jams = stops(section, IncidentKeys.JAMS_KEY, IncidentKeys.JAMS);
        Optional<Stops> faults = stops(section, IncidentKeys.FAULTS_KEY, IncidentKeys.FAULTS);
        List<PlannedFault> planned = section.blocks(IncidentKeys.PLANNED_KEY).stream()
                .flatMap(block -> fault(block).stream())
                .toList();
        checkPlace(section);
        return section.build(() -> new Incidents(
                jams.orElseThrow(),
                faults.orElseThrow(),
                planned,
                section.get(IncidentKeys.CREWS),
                section.get(IncidentKeys.REMEDY),
                section.get(IncidentKeys.PATIENCE)));
    }

    /** A group that is to move must have a pair to move to. */
    private void checkPlace(Section section) {
        boolean nowhere = centre.isPresent() && centre.get().spare().isEmpty();
        if (nowhere
                && section.find(IncidentKeys.REMEDY)
                        .filter(FaultResponse.SPARE::equals)
                        .isPresent()) {
            section.refuse(
                    IncidentKeys.REMEDY,
                    NoticeCode.NO_SPARE_PAIR,
                    ", but a group whose lane fails would have no pair to go to; the centre must keep one spare. Name"
                            + " a pair under `spare` in `centre`, or write `wait` or `split`.");
        }
    }

    private static Optional<Stops> stops(Section section, Key<Void> key, IncidentKeys.Stoppages keys) {
        return section.has(key)
                ? section.block(key)
                        .flatMap(block -> block.build(() -> new Stops(
                                block.get(keys.every()) * TenpinScore.FRAMES,
                                block.get(keys.work()),
                                block.get(keys.spread()))))
                : Optional.of(Stops.NEVER);
    }

    private Optional<PlannedFault> fault(Section section) {
        section.find(IncidentKeys.LANE)
                .ifPresent(lane -> centre.filter(known -> !known.laneNumbers().contains(lane))
                        .ifPresent(known -> unknown(section, known)));
        return section.build(() -> new PlannedFault(
                section.get(IncidentKeys.LANE), section.get(IncidentKeys.AT), section.get(IncidentKeys.WORK)));
    }

    private static void unknown(Section section, Centre centre) {
        section.refuse(
                IncidentKeys.LANE,
                NoticeCode.UNKNOWN_LANE,
                ", but the centre's lanes are "
                        + centre.pairs().stream().map(pair -> pair.id()).collect(Collectors.joining(", "))
                        + "; a fault must be on one of them. Correct the number.");
    }
}
