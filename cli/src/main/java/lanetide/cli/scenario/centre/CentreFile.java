package lanetide.cli.scenario.centre;

import java.util.List;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.measured.Measurements;
import lanetide.squads.measured.TapeTaken;
import lanetide.squads.model.Findings;

/**
 * What a fit leaves for other commands.
 *
 * @param startedFrom mark of the shipped sets that it started from
 * @param refit the command that makes it again
 * @param days days that it was fitted to, each with all that was measured
 * @param sets sets of values, equally likely, the first few spread like all
 */
public record CentreFile(String startedFrom, String refit, List<Day> days, List<ValueSet> sets) {
    /** Copies the lists. */
    public CentreFile {
        days = List.copyOf(days);
        sets = List.copyOf(sets);
    }

    /**
     * A day.
     *
     * @param scenario name of its scenario, without folder
     * @param sha256 SHA-256 of the scenario
     * @param event what its event is called
     * @param pattern mark of the pattern that was laid
     * @param measured what was measured
     * @param fresh which of the tapes were taken on oil that nobody had played on
     */
    public record Day(
            String scenario,
            String sha256,
            String event,
            String pattern,
            Measurements measured,
            List<TapeTaken> fresh) {
        /** Copies the list. */
        public Day {
            fresh = List.copyOf(fresh);
        }
    }

    /**
     * What it tells of the lanes of an event.
     *
     * @param pattern mark of the event's pattern; tapes of another pattern say nothing of what lies on its lanes
     * @return the sets, and what was read on fresh oil of that pattern
     */
    public Findings findings(String pattern) {
        return new Findings(
                sets,
                days.stream()
                        .filter(day -> day.pattern().equals(pattern))
                        .flatMap(day -> day.fresh().stream())
                        .toList(),
                List.of());
    }
}
