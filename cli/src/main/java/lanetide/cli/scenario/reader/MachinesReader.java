package lanetide.cli.scenario.reader;

import java.util.Optional;
import lanetide.cli.scenario.key.Default;
import lanetide.cli.scenario.key.Defaults;
import lanetide.cli.scenario.key.Measure;
import lanetide.cli.scenario.key.Range;
import lanetide.cli.scenario.notice.Assumptions;
import lanetide.cli.scenario.notice.NoticeCode;
import lanetide.cli.scenario.notice.Notices;
import lanetide.cli.scenario.value.Section;
import lanetide.cli.scenario.value.Value;
import lanetide.squads.model.LaneMachines;

/** Reads the lane machines: such as clean and oil, or cleaners and oilers apart. */
final class MachinesReader {
    /** Most machines of a kind. */
    static final int MOST_MACHINES = 20;

    private static final double LONGEST_LANE_TIME_MS = 30 * 60_000;

    /** Cleaning and oiling one lane takes under two minutes (trade article on dual patterns, 2008-09). */
    private static final long PUBLISHED_LANE_MS = 120_000;

    private final Notices notices;
    private final Assumptions assumptions;

    MachinesReader(Notices notices, Assumptions assumptions) {
        this.notices = notices;
        this.assumptions = assumptions;
    }

    Optional<LaneMachines> read(Section centre) {
        int before = notices.errors();
        boolean apart = centre.has("cleaners") || centre.has("oilers");
        int combined = apart ? 0 : combined(centre);
        int cleaners = apart ? centre.whole("cleaners", 1, MOST_MACHINES) : 0;
        int oilers = apart ? centre.whole("oilers", 1, MOST_MACHINES) : 0;
        if (apart) {
            centre.get("machines").ifPresent(MachinesReader::bothKinds);
        }
        long stripMs = timeMs(centre, "stripTime", Defaults.STRIP_TIME);
        long oilMs = timeMs(centre, "oilTime", Defaults.OIL_TIME);
        long walkMs = timeMs(centre, "machineWalk", Defaults.MACHINE_WALK);
        Optional<LaneMachines> machines =
                centre.build(before, () -> new LaneMachines(combined, cleaners, oilers, stripMs, oilMs, walkMs));
        machines.filter(known -> known.stripMsPerLane() + known.oilMsPerLane() > PUBLISHED_LANE_MS)
                .ifPresent(known -> slow(centre, known));
        return machines;
    }

    private int combined(Section centre) {
        if (centre.has("machines")) {
            return centre.whole("machines", 1, MOST_MACHINES);
        }
        assumptions.add(centre.pathOf("machines"), Defaults.MACHINES);
        return (int) Defaults.MACHINES.base();
    }

    private static void bothKinds(Value machines) {
        machines.refuse(
                NoticeCode.CONFLICTING_KEYS,
                ", machines that clean and oil, but `cleaners` or `oilers` are given too; only one kind of fleet may be"
                        + " given. Remove one.");
    }

    private static void slow(Section centre, LaneMachines machines) {
        long seconds = (machines.stripMsPerLane() + machines.oilMsPerLane()) / 1000;
        centre.get("oilTime")
                .or(() -> centre.get("stripTime"))
                .ifPresent(value -> value.refuse(
                        NoticeCode.LANE_TIME_LONG,
                        ", so that cleaning and oiling a lane take " + seconds
                                + " s together; machines are published to take at most 120 s. Check both times."));
    }

    private long timeMs(Section section, String key, Default otherwise) {
        return Math.round(
                section.quantity(key, Measure.TIME, Range.between(0, LONGEST_LANE_TIME_MS), otherwise, assumptions));
    }
}
