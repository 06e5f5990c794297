package lanetide.squads.play;

import java.util.List;
import lanetide.des.Simulator;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.WaitCause;

/** One squad from the lane machines over practice to its last ball. */
final class SquadPlay {
    private final Day day;
    private final Simulator simulator;
    private final Squad squad;
    private final SquadPlan planned;
    private final List<LaneInPlay> lanes;
    private final List<GroupInPlay> groups;
    private final WhenDone whenDone;
    private final Stopwatch stopwatch = new Stopwatch();
    private final ShotReporter reporter;
    private final SquadGames games;
    private long beganMs;
    private long practiceStartMs;
    private int groupsPractised;

    /** A squad of the event. */
    SquadPlay(Day day, int index, List<GroupInPlay> groups, WhenDone whenDone) {
        this(day, day.event().squads().get(index), day.event().plans().get(index), groups, whenDone);
    }

    /** Any squad that can bowl on these lanes. */
    SquadPlay(Day day, Squad squad, SquadPlan planned, List<GroupInPlay> groups, WhenDone whenDone) {
        this.day = day;
        this.simulator = day.simulator();
        this.squad = squad;
        this.planned = planned;
        this.lanes = day.lanes(planned);
        this.groups = groups;
        this.whenDone = whenDone;
        this.reporter = new ShotReporter(day, squad.id());
        this.games = new SquadGames(day, squad, planned, groups, stopwatch, this::finish);
    }

    /**
     * Plans the machines so that they end at the squad's start, or earlier if the oil is to rest, or begins at once if
     * that is past. Until then lanes rest, and what no machine cleans off levels.
     */
    void begin() {
        MachinePlan plan = MachinePlan.of(day.event().centre(), squad, planned);
        long dueMs = squad.conditioning() == Conditioning.NONE
                ? squad.startMs()
                : squad.arrangements().oiling().beginMs(squad.startMs(), plan.durationMs());
        beganMs = Math.max(simulator.nowMs(), dueMs);
        simulator.scheduleAt(beganMs, Phase.MACHINE, "squad " + squad.id() + " due", () -> {
            if (squad.conditioning() == Conditioning.NONE) {
                LaneInPlay.rest(lanes, day.levelling(), simulator.nowMs());
                practise();
            } else {
                day.machines().acquire(() -> condition(plan));
            }
        });
    }

    /** The machines are free for it. */
    private void condition(MachinePlan plan) {
        beganMs = simulator.nowMs();
        if (squad.conditioning() != Conditioning.STRIP_AND_OIL) {
            LaneInPlay.rest(lanes, day.levelling(), beganMs);
        }
        new Machines(simulator, day.event().centre().machines(), planned.patterns(), lanes)
                .condition(plan, squad.conditioning(), this::conditioned);
    }

    private void conditioned() {
        long doneMs = simulator.nowMs();
        enter(TimetableEntry.Activity.CONDITIONING, beganMs, doneMs);
        lanes.forEach(lane -> lane.leftAt(doneMs));
        long startMs = Math.max(doneMs + squad.arrangements().oiling().restMs(), squad.startMs());
        simulator.scheduleAt(startMs, Phase.MOVE, "practice", () -> {
            if (startMs > doneMs) {
                LaneInPlay.rest(lanes, day.levelling(), startMs);
            }
            practise();
        });
        day.machines().release();
    }

    private void practise() {
        practiceStartMs = simulator.nowMs();
        lateBy(practiceStartMs - squad.startMs());
        lanes.forEach(lane -> {
            lane.foundBy(squad.id());
            day.recorder().record(lane, squad.id(), 0);
        });
        long untilMs = practiceStartMs + squad.practiceMs();
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            PairLanes pair = day.lanes().get(planned.rotation().pairOf(0, g));
            List<Member> there = groups.get(g).playing(0, practiceStartMs);
            there.forEach(member -> member.goesTo(pair));
            String id = groups.get(g).id();
            PairPractice.ShotWatcher watcher = (bowler, lane, standing, left) ->
                    reporter.report(id, bowler, lane, ShotReporter.Place.PRACTICE, standing, left);
            new PairPractice(day, pair, there, untilMs, watcher, () -> practised(group)).practise();
        }
    }

    /** A late start is put down to the squad before as far as it was still there, and to the machines for the rest. */
    private void lateBy(long lateMs) {
        long laneMs = PairLanes.LANES * groups.size();
        long previousMs = Math.min(lateMs, Math.max(0, beganMs - squad.startMs()));
        stopwatch.waited(WaitCause.PREVIOUS_SQUAD, laneMs * previousMs);
        stopwatch.waited(WaitCause.MACHINES, laneMs * (lateMs - previousMs));
    }

    private void practised(int group) {
        groupsPractised++;
        if (groupsPractised == groups.size() && squad.practiceMs() > 0) {
            enter(TimetableEntry.Activity.PRACTICE, practiceStartMs, simulator.nowMs());
        }
        games.arrive(group, 0);
    }

    private void finish() {
        day.timetable().addAll(games.timetable());
        lanes.forEach(lane -> lane.leftAt(simulator.nowMs()));
        whenDone.accept(practiceStartMs, simulator.nowMs(), stopwatch.kept());
    }

    private void enter(TimetableEntry.Activity what, long startMs, long endMs) {
        day.timetable().add(new TimetableEntry(squad.id(), what, 0, startMs, endMs));
    }

    /**
     * Told when the squad is done: when its practice started, when its last ball was scored, and how its time was
     * spent.
     */
    interface WhenDone {
        void accept(long startMs, long endMs, PaceKept pace);
    }
}
