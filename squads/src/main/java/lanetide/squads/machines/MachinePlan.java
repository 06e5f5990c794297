package lanetide.squads.machines;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import lanetide.des.Resource;
import lanetide.des.Simulator;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;

/**
 * When each lane is cleaned and oiled: lanes are worked on from left to right, each by the machine that is free first,
 * which walks there from the lane it has done. Nothing in this is left to chance, so that the plan is what will happen.
 *
 * @param lanes the lanes in the order in which they are done
 */
public record MachinePlan(List<LaneTimes> lanes) {
    private static final int NOWHERE = -1;

    /** Copies the list. */
    public MachinePlan {
        lanes = List.copyOf(lanes);
    }

    /**
     * One lane.
     *
     * @param lane lane number
     * @param machine the machine that oils it, from 1
     * @param beganMs when the work on it begins, from the start (ms)
     * @param strippedMs when it is clean, from the start (ms); at the beginning where it is not cleaned
     * @param oiledMs when it is oiled, from the start (ms); when it is clean where it is not oiled
     */
    public record LaneTimes(int lane, int machine, long beganMs, long strippedMs, long oiledMs) {}

    /**
     * Plans the work.
     *
     * @param machines the machines
     * @param lanes lane numbers from left to right, at least one
     * @param conditioning what is done to the lanes
     * @return the plan; without lanes where nothing is done
     */
    public static MachinePlan of(LaneMachines machines, List<Integer> lanes, Conditioning conditioning) {
        return new MachinePlan(
                conditioning == Conditioning.NONE ? List.of() : new Work(machines, conditioning).on(lanes));
    }

    /**
     * Plans the work before a squad of an event.
     *
     * @param event the event
     * @param squad the squad's place in it
     * @return the plan, from the machines' start
     */
    public static MachinePlan of(Event event, int squad) {
        return of(event.centre(), event.squads().get(squad), event.plans().get(squad));
    }

    /**
     * Plans the work before a squad, on its lanes, with the machines that it has.
     *
     * @param centre the centre
     * @param squad a squad
     * @param planned what is planned for it
     * @return the plan, from the machines' start
     */
    public static MachinePlan of(Centre centre, Squad squad, SquadPlan planned) {
        LaneMachines all = centre.machines();
        LaneMachines fleet = all.only(squad.arrangements().machines().orElse(all.combined()));
        return of(fleet, planned.lanes(centre), squad.conditioning());
    }

    /**
     * When the last lane is done.
     *
     * @return the time from the start (ms); 0 for nothing done
     */
    public long durationMs() {
        return lanes.stream().mapToLong(LaneTimes::oiledMs).max().orElse(0);
    }

    /** The work itself, with the machines as resources that lanes wait for. */
    private static final class Work {
        private final Simulator simulator = new Simulator();
        private final LaneMachines machines;
        private final Conditioning conditioning;
        private final Fleet oilers;
        private final List<LaneTimes> done = new ArrayList<>();

        Work(LaneMachines machines, Conditioning conditioning) {
            this.machines = machines;
            this.conditioning = conditioning;
            this.oilers = new Fleet("oilers", machines.combined() + machines.oilers());
        }

        List<LaneTimes> on(List<Integer> lanes) {
            if (!conditioning.laysOil()) {
                Fleet cleaners = new Fleet("cleaners", machines.combined() + machines.cleaners());
                lanes.forEach(lane -> cleaners.work(
                        lane,
                        machines.stripMsPerLane(),
                        (cleaner, beganMs) -> oiled(lane, cleaner, beganMs, simulator.nowMs())));
            } else if (conditioning.cleans() && machines.combined() == 0) {
                Fleet cleaners = new Fleet("cleaners", machines.cleaners());
                lanes.forEach(lane -> cleaners.work(
                        lane, machines.stripMsPerLane(), (cleaner, beganMs) -> oilStripped(lane, beganMs)));
            } else {
                long stripMs = conditioning.cleans() ? machines.stripMsPerLane() : 0;
                lanes.forEach(lane -> oilers.work(
                        lane,
                        stripMs + machines.oilMsPerLane(),
                        (machine, beganMs) -> oiled(lane, machine, beganMs, beganMs + stripMs)));
            }
            simulator.run();
            return done;
        }

        private void oilStripped(int lane, long beganMs) {
            long strippedMs = simulator.nowMs();
            oilers.work(
                    lane, machines.oilMsPerLane(), (machine, oilingMs) -> oiled(lane, machine, beganMs, strippedMs));
        }

        private void oiled(int lane, int machine, long beganMs, long strippedMs) {
            done.add(new LaneTimes(lane, machine, beganMs, strippedMs, simulator.nowMs()));
        }

        /** Machines of one kind, which of them are idle, and at which lanes they stand. */
        private final class Fleet {
            private final Resource resource;
            private final Deque<Idle> idle = new ArrayDeque<>();

            Fleet(String name, int count) {
                this.resource = new Resource(name, count);
                for (int machine = 1; machine <= count; machine++) {
                    idle.add(new Idle(machine, NOWHERE));
                }
            }

            /** The first lane of every machine costs no walk. */
            void work(int lane, long workMs, WhenDone whenDone) {
                resource.acquire(() -> {
                    Idle one = idle.remove();
                    long walkMs = one.at() == NOWHERE ? 0 : machines.walkMsPerPair() * Math.abs(lane - one.at()) / 2;
                    simulator.schedule(walkMs + workMs, 0, "lane done", () -> {
                        idle.add(new Idle(one.machine(), lane));
                        whenDone.accept(one.machine(), simulator.nowMs() - workMs);
                        resource.release();
                    });
                });
            }
        }
    }

    /** A machine that waits for work at the lane it has done. */
    private record Idle(int machine, int at) {}

    /** Told which machine has done a lane, and when it began there. */
    private interface WhenDone {
        void accept(int machine, long beganMs);
    }
}
