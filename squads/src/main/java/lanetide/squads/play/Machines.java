package lanetide.squads.play;

import java.util.List;
import lanetide.des.Simulator;
import lanetide.oilflow.film.OilPattern;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LaneMachines;

/** Lane machines at work on all lanes, once. */
final class Machines {
    private final Simulator simulator;
    private final LaneMachines machines;
    private final OilPattern pattern;
    private final List<LaneInPlay> lanes;
    private int lanesDone;

    Machines(Simulator simulator, LaneMachines machines, OilPattern pattern, List<LaneInPlay> lanes) {
        this.simulator = simulator;
        this.machines = machines;
        this.pattern = pattern;
        this.lanes = lanes;
    }

    /** Conditions all lanes from now on; {@code whenDone} runs after the last. */
    void condition(Conditioning conditioning, Runnable whenDone) {
        for (int machine = 0; machine < machines.count(); machine++) {
            next(machine, conditioning, whenDone);
        }
    }

    /** A machine works on every count-th lane, so that the machines stay out of each other's way. */
    private void next(int index, Conditioning conditioning, Runnable whenDone) {
        if (index >= lanes.size()) {
            return;
        }
        LaneInPlay lane = lanes.get(index);
        long stripMs = conditioning == Conditioning.STRIP_AND_OIL ? machines.stripMsPerLane() : 0;
        simulator.schedule(stripMs, Phase.MACHINE, "lane stripped", () -> {
            if (conditioning == Conditioning.STRIP_AND_OIL) {
                lane.strip();
            }
            simulator.schedule(machines.oilMsPerLane(), Phase.MACHINE, "lane oiled", () -> {
                lane.oil(pattern);
                lanesDone++;
                if (lanesDone == lanes.size()) {
                    whenDone.run();
                }
                next(index + machines.count(), conditioning, whenDone);
            });
        });
    }
}
