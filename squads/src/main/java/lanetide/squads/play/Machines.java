package lanetide.squads.play;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import lanetide.des.Simulator;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.LanePatterns;

/** Lane machines at work on all lanes, once, as planned. */
final class Machines {
    private final Simulator simulator;
    private final LaneMachines machines;
    private final LanePatterns patterns;
    private final Map<Integer, LaneInPlay> lanes;
    /** Each pattern as it lies on a bare lane. */
    private final Map<OilPattern, OilFilm> fresh = new HashMap<>();

    Machines(Simulator simulator, LaneMachines machines, LanePatterns patterns, List<LaneInPlay> lanes) {
        this.simulator = simulator;
        this.machines = machines;
        this.patterns = patterns;
        this.lanes = lanes.stream().collect(Collectors.toMap(LaneInPlay::number, Function.identity()));
    }

    /** Carries out a plan from now on; {@code whenDone} runs after the last lane. */
    void condition(MachinePlan plan, Conditioning conditioning, Runnable whenDone) {
        for (MachinePlan.LaneTimes times : plan.lanes()) {
            LaneInPlay lane = lanes.get(times.lane());
            if (conditioning == Conditioning.STRIP_AND_OIL) {
                simulator.schedule(times.strippedMs(), Phase.MACHINE, "lane stripped", lane::strip);
            }
            if (conditioning == Conditioning.CLEAN_ENDS) {
                simulator.schedule(times.strippedMs(), Phase.MACHINE, "end of lane cleaned", lane::cleanEnds);
            }
            if (conditioning.laysOil()) {
                simulator.schedule(times.oiledMs(), Phase.MACHINE, "lane oiled", () -> oil(lane));
            }
        }
        simulator.schedule(plan.durationMs(), Phase.MACHINE, "lanes ready", whenDone);
    }

    private void oil(LaneInPlay lane) {
        OilPattern pattern = patterns.on(lane.number());
        lane.oil(
                pattern,
                fresh.computeIfAbsent(
                        pattern, each -> OilFilm.fresh(each, lane.film().grid())),
                machines.laid(lane.number()));
    }
}
