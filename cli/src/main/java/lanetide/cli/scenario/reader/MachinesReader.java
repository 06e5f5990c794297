package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.CentreKeys;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.value.Section;
import lanetide.squads.model.LaneMachines;

/** Reads the lane machines: such as clean and oil, or cleaners and oilers apart. */
final class MachinesReader {
    /** Cleaning and oiling one lane takes under two minutes (trade article on dual patterns, 2008-09). */
    private static final long PUBLISHED_LANE_MS = 120_000;

    private MachinesReader() {}

    static Optional<LaneMachines> read(Section centre) {
        boolean apart = centre.has(CentreKeys.CLEANERS) || centre.has(CentreKeys.OILERS);
        if (apart) {
            requireBoth(centre);
        }
        Optional<LaneMachines> machines = centre.build(() -> {
            int combined = apart ? 0 : centre.get(CentreKeys.MACHINES);
            int cleaners = apart ? centre.get(CentreKeys.CLEANERS) : 0;
            int oilers = apart ? centre.get(CentreKeys.OILERS) : 0;
            long stripMs = centre.get(CentreKeys.STRIP_TIME);
            long oilMs = centre.get(CentreKeys.OIL_TIME);
            return new LaneMachines(combined, cleaners, oilers, stripMs, oilMs, centre.get(CentreKeys.MACHINE_WALK));
        });
        machines.filter(known -> known.stripMsPerLane() + known.oilMsPerLane() > PUBLISHED_LANE_MS)
                .ifPresent(known -> slow(centre, known));
        return machines;
    }

    private static void requireBoth(Section centre) {
        centre.require(CentreKeys.CLEANERS);
        centre.require(CentreKeys.OILERS);
        centre.refuse(
                CentreKeys.MACHINES,
                NoticeCode.CONFLICTING_KEYS,
                ", machines that clean and oil, but `cleaners` or `oilers` are given too; only one kind of fleet"
                        + " may be given. Remove one.");
    }

    private static void slow(Section centre, LaneMachines machines) {
        long seconds = (machines.stripMsPerLane() + machines.oilMsPerLane()) / 1000;
        centre.value(CentreKeys.OIL_TIME)
                .or(() -> centre.value(CentreKeys.STRIP_TIME))
                .ifPresent(value -> value.refuse(
                        NoticeCode.LANE_TIME_LONG,
                        ", so that cleaning and oiling a lane take " + seconds
                                + " s together; machines are published to take at most 120 s. Check both times."));
    }
}
