package lanetide.squads.play;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.des.Resource;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.squads.model.Incidents;
import lanetide.squads.model.PlannedFault;
import lanetide.squads.result.LaneStop;

/**
 * Which lanes are out of order. A stop by chance comes as the pins should be set after a frame; every lane has streams
 * of its own for it. Whoever puts lanes in order says at once how long the work takes, and does one lane after another.
 */
final class Faults {
    private final Simulator simulator;
    private final Resource crews;
    private final Map<Integer, LaneService> lanes = new HashMap<>();
    private final List<LaneStop> stops = new ArrayList<>();

    Faults(Simulator simulator, Incidents incidents, List<LaneInPlay> lanes, RandomStreams streams) {
        this.simulator = simulator;
        this.crews = new Resource("repair crew", incidents.crews());
        for (LaneInPlay lane : lanes) {
            String key = "lane/" + lane.number() + "/";
            this.lanes.put(
                    lane.number(),
                    new LaneService(
                            new StopClock(incidents.jams(), streams, key + "jam"),
                            new StopClock(incidents.faults(), streams, key + "fault")));
        }
        for (PlannedFault fault : incidents.planned()) {
            simulator.scheduleAt(
                    fault.atMs(),
                    Phase.MACHINE,
                    "lane out of order",
                    () -> stop(fault.lane(), LaneStop.Kind.FAULT, fault.workMs()));
        }
    }

    /** All stops so far that have ended, in the order of their ends. */
    List<LaneStop> stops() {
        return stops;
    }

    boolean isOut(LaneInPlay lane) {
        return lanes.get(lane.number()).out;
    }

    /** How long the work takes that is going on, or waited for, on a lane (ms); 0 for a lane in order. */
    long workMs(LaneInPlay lane) {
        return lanes.get(lane.number()).workMs;
    }

    /** Runs an action when a lane that is out of order is in order again. */
    void whenBack(LaneInPlay lane, Runnable action) {
        lanes.get(lane.number()).whenBack.add(action);
    }

    /** A frame has been bowled on a lane, which may be too much for it. */
    void frameDone(LaneInPlay lane) {
        LaneService service = lanes.get(lane.number());
        boolean jam = service.jams.ticks();
        boolean fault = service.faults.ticks();
        if (fault) {
            stop(lane.number(), LaneStop.Kind.FAULT, service.faults.workMs());
        } else if (jam) {
            stop(lane.number(), LaneStop.Kind.JAM, service.jams.workMs());
        }
    }

    /** A lane that is out of order already is put in order once. */
    private void stop(int lane, LaneStop.Kind kind, long workMs) {
        LaneService service = lanes.get(lane);
        if (service.out) {
            return;
        }
        long startMs = simulator.nowMs();
        service.out = true;
        service.workMs = workMs;
        crews.acquire(() -> simulator.schedule(workMs, Phase.MACHINE, "lane " + lane, () -> {
            crews.release();
            stops.add(new LaneStop(lane, kind, startMs, simulator.nowMs()));
            service.backInOrder();
        }));
    }

    private static final class LaneService {
        private final StopClock jams;
        private final StopClock faults;
        private final List<Runnable> whenBack = new ArrayList<>();
        private boolean out;
        private long workMs;

        LaneService(StopClock jams, StopClock faults) {
            this.jams = jams;
            this.faults = faults;
        }

        void backInOrder() {
            out = false;
            workMs = 0;
            List<Runnable> actions = List.copyOf(whenBack);
            whenBack.clear();
            actions.forEach(Runnable::run);
        }
    }
}
