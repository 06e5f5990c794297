package lanetide.squads.play;

import java.util.Arrays;
import java.util.List;
import lanetide.des.Simulator;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.LaneMachines;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/**
 * One squad from the lane machines to its last ball. A group leaves its pair when its game is done, walks, and starts on the
 * next pair when its turn has come there.
 */
final class SquadPlay {
    /** Lanes of a pair. */
    private static final long LANES = 2;

    private final Day day;
    private final Simulator simulator;
    private final Squad squad;
    private final Rotation rotation;
    private final List<List<Member>> groups;
    private final WhenDone whenDone;
    private final PairTurns turns;
    private final Stopwatch stopwatch = new Stopwatch();
    private final long[] arrivedMs;
    private final long[] gameStartMs;
    private final long[] gameEndMs;
    private long beganMs;
    private long practiceStartMs;
    private int groupsPractised;
    private int groupsDone;

    SquadPlay(Day day, int index, List<List<Member>> groups, WhenDone whenDone) {
        this.day = day;
        this.simulator = day.simulator();
        this.squad = day.event().squads().get(index);
        this.rotation = day.event().rotations().get(index);
        this.groups = groups;
        this.whenDone = whenDone;
        this.turns = new PairTurns(rotation);
        this.arrivedMs = new long[rotation.groups()];
        this.gameStartMs = new long[rotation.games()];
        Arrays.fill(gameStartMs, Long.MAX_VALUE);
        this.gameEndMs = new long[rotation.games()];
    }

    /**
     * Plans the machines so that they end at the squad's start, or begins at once if that is past. Until then lanes rest, and what
     * no machine cleans off levels.
     */
    void begin() {
        List<LaneInPlay> lanes = day.allLanes();
        LaneMachines fleet = day.event().centre().machines();
        long machinesMs = fleet.durationMs(lanes.size(), squad.conditioning());
        Machines machines = new Machines(simulator, fleet, day.event().pattern(), lanes);
        beganMs = Math.max(simulator.nowMs(), squad.startMs() - machinesMs);
        long restMs = beganMs - simulator.nowMs();
        simulator.scheduleAt(beganMs, Phase.MACHINE, "squad " + squad.id() + " due", () -> {
            if (squad.conditioning() != Conditioning.STRIP_AND_OIL) {
                lanes.forEach(lane -> lane.rest(restMs));
            }
            if (squad.conditioning() == Conditioning.NONE) {
                practise();
            } else {
                machines.condition(squad.conditioning(), this::conditioned);
            }
        });
    }

    private void conditioned() {
        enter(TimetableEntry.Activity.CONDITIONING, 0, beganMs, simulator.nowMs());
        long startMs = Math.max(simulator.nowMs(), squad.startMs());
        simulator.scheduleAt(startMs, Phase.MOVE, "practice", this::practise);
    }

    /** A late start is put down to the squad before as far as it was still there, and to the machines for the rest. */
    private void lateBy(long lateMs) {
        long laneMs = LANES * groups.size();
        long previousMs = Math.min(lateMs, Math.max(0, beganMs - squad.startMs()));
        stopwatch.waited(WaitCause.PREVIOUS_SQUAD, laneMs * previousMs);
        stopwatch.waited(WaitCause.MACHINES, laneMs * (lateMs - previousMs));
    }

    private void practise() {
        practiceStartMs = simulator.nowMs();
        lateBy(practiceStartMs - squad.startMs());
        day.allLanes().forEach(lane -> day.recorder().record(lane, squad.id(), 0));
        long untilMs = practiceStartMs + squad.practiceMs();
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            PairLanes lanes = day.lanes().get(rotation.pairOf(0, g));
            new PairPractice(day, lanes, groups.get(g), untilMs, () -> practised(group)).practise();
        }
    }

    private void practised(int group) {
        groupsPractised++;
        if (groupsPractised == groups.size() && squad.practiceMs() > 0) {
            enter(TimetableEntry.Activity.PRACTICE, 0, practiceStartMs, simulator.nowMs());
        }
        arrive(group, 0);
    }

    private void arrive(int group, int game) {
        turns.arrive(group, game);
        arrivedMs[group] = simulator.nowMs();
        startGame(rotation.pairOf(game, group));
    }

    private void startGame(int pair) {
        turns.begin(pair).ifPresent(group -> {
            int game = turns.game(pair);
            long startMs = simulator.nowMs();
            gameStartMs[game] = Math.min(gameStartMs[game], startMs);
            stopwatch.waited(WaitCause.PREVIOUS_GROUP, LANES * (startMs - arrivedMs[group]));
            PairLanes lanes = day.lanes().get(pair);
            new PairGame(day, lanes, groups.get(group), stopwatch, () -> {
                        stopwatch.played(
                                simulator.nowMs() - startMs, groups.get(group).size());
                        endGame(pair, group, game);
                    })
                    .play();
        });
    }

    private void endGame(int pair, int group, int game) {
        gameEndMs[game] = Math.max(gameEndMs[game], simulator.nowMs());
        for (LaneInPlay lane : day.lanes().get(pair).both()) {
            lane.countGames(1);
            day.recorder().record(lane, squad.id(), game + 1);
        }
        turns.end(pair);
        if (game + 1 < rotation.games()) {
            walk(group, pair, game + 1);
        } else {
            groupsDone++;
        }
        startGame(pair);
        if (groupsDone == groups.size()) {
            finish();
        }
    }

    private void walk(int group, int pair, int game) {
        int to = rotation.pairOf(game, group);
        PaceOfPlay pace = day.event().pace();
        long walkMs = 0;
        if (to != pair) {
            groups.get(group).forEach(member -> member.bowler().agent().moveOn());
            walkMs = lanesApart(pair, to) * pace.movePerPairMs() / 2 + pace.settleMs();
        }
        simulator.schedule(walkMs, Phase.MOVE, "arrive", () -> arrive(group, game));
    }

    /** By lane numbers, since pairs of the list need not be neighbours. */
    private int lanesApart(int pair, int other) {
        return Math.abs(day.lanes().get(pair).left().number()
                - day.lanes().get(other).left().number());
    }

    private void finish() {
        for (int game = 0; game < rotation.games(); game++) {
            enter(TimetableEntry.Activity.GAME, game + 1, gameStartMs[game], gameEndMs[game]);
        }
        whenDone.accept(practiceStartMs, simulator.nowMs(), stopwatch.kept());
    }

    private void enter(TimetableEntry.Activity what, int game, long startMs, long endMs) {
        day.timetable().add(new TimetableEntry(squad.id(), what, game, startMs, endMs));
    }

    /** Told when the squad is done: when its practice started, when its last ball was scored, and how its time was spent. */
    interface WhenDone {
        void accept(long startMs, long endMs, PaceKept pace);
    }
}
