package lanetide.squads.play;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import lanetide.des.Simulator;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/**
 * One squad from the lane machines to its last ball.
 *
 * <p>A group leaves its pair when its game is done, walks, and starts on the next pair when that is free and has served the
 * games before. Pairs serve games in order, so that no group overtakes and nobody waits for ever.
 */
final class SquadPlay {
    private static final int NOBODY_YET = -1;

    private final Simulator simulator;
    private final Event event;
    private final Squad squad;
    private final Rotation rotation;
    private final List<PairLanes> lanes;
    private final List<List<BowlerInPlay>> groups;
    private final ShotMaker shots;
    private final LaneRecorder recorder;
    private final List<TimetableEntry> timetable;
    private final WhenDone whenDone;
    private final int[] readyForGame;
    private final int[] gameOnPair;
    private final boolean[] pairBusy;
    private final long[] gameStartMs;
    private final long[] gameEndMs;
    private long practiceStartMs;
    private int groupsPractised;
    private int groupsDone;

    SquadPlay(
            Simulator simulator,
            Event event,
            int index,
            List<PairLanes> lanes,
            List<List<BowlerInPlay>> groups,
            ShotMaker shots,
            LaneRecorder recorder,
            List<TimetableEntry> timetable,
            WhenDone whenDone) {
        this.simulator = simulator;
        this.event = event;
        this.squad = event.squads().get(index);
        this.rotation = event.rotations().get(index);
        this.lanes = lanes;
        this.groups = groups;
        this.shots = shots;
        this.recorder = recorder;
        this.timetable = timetable;
        this.whenDone = whenDone;
        this.readyForGame = new int[groups.size()];
        Arrays.fill(readyForGame, NOBODY_YET);
        this.gameOnPair = new int[rotation.pairs()];
        this.pairBusy = new boolean[rotation.pairs()];
        this.gameStartMs = new long[rotation.games()];
        Arrays.fill(gameStartMs, Long.MAX_VALUE);
        this.gameEndMs = new long[rotation.games()];
    }

    /** Plans the machines so that they end at the squad's start, or begins at once if that is past. */
    void begin() {
        List<LaneInPlay> all =
                lanes.stream().flatMap(pair -> pair.both().stream()).toList();
        long machinesMs = Machines.durationMs(event.centre().machines(), all.size(), squad.conditioning());
        long beginMs = Math.max(simulator.nowMs(), squad.startMs() - machinesMs);
        long restMs = beginMs - simulator.nowMs();
        simulator.scheduleAt(beginMs, Phase.MACHINE, "squad " + squad.id() + " due", () -> {
            if (squad.conditioning() != Conditioning.STRIP_AND_OIL) {
                all.forEach(lane -> lane.rest(restMs));
            }
            if (squad.conditioning() == Conditioning.NONE) {
                practise();
            } else {
                new Machines(simulator, event.centre().machines(), event.pattern(), all)
                        .condition(squad.conditioning(), () -> conditioned(beginMs));
            }
        });
    }

    private void conditioned(long beganMs) {
        enter(TimetableEntry.Activity.CONDITIONING, 0, beganMs, simulator.nowMs());
        long startMs = Math.max(simulator.nowMs(), squad.startMs());
        simulator.scheduleAt(startMs, Phase.MOVE, "practice", this::practise);
    }

    private void practise() {
        practiceStartMs = simulator.nowMs();
        lanes.forEach(pair -> pair.both().forEach(lane -> recorder.record(lane, squad.id(), 0)));
        long untilMs = practiceStartMs + squad.practiceMs();
        for (int g = 0; g < groups.size(); g++) {
            int group = g;
            pairPlay(rotation.pairOf(0, g), g, () -> practised(group)).practise(untilMs);
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
        readyForGame[group] = game;
        startGame(rotation.pairOf(game, group));
    }

    /** Starts the pair's next game if the pair is free and the group whose turn it is has come. */
    private void startGame(int pair) {
        OptionalInt next = nextGroup(pair);
        int game = gameOnPair[pair];
        if (pairBusy[pair] || next.isEmpty() || readyForGame[next.getAsInt()] != game) {
            return;
        }
        int group = next.getAsInt();
        pairBusy[pair] = true;
        gameStartMs[game] = Math.min(gameStartMs[game], simulator.nowMs());
        pairPlay(pair, group, () -> endGame(pair, group, game)).playGame();
    }

    /** The group that plays the pair's next game, skipping games in which the pair stays empty. */
    private OptionalInt nextGroup(int pair) {
        while (gameOnPair[pair] < rotation.games()) {
            OptionalInt group = rotation.groupOn(gameOnPair[pair], pair);
            if (group.isPresent()) {
                return group;
            }
            gameOnPair[pair]++;
        }
        return OptionalInt.empty();
    }

    private void endGame(int pair, int group, int game) {
        long nowMs = simulator.nowMs();
        gameEndMs[game] = Math.max(gameEndMs[game], nowMs);
        for (LaneInPlay lane : lanes.get(pair).both()) {
            lane.countGames(1);
            recorder.record(lane, squad.id(), game + 1);
        }
        pairBusy[pair] = false;
        gameOnPair[pair]++;
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
        PaceOfPlay pace = event.pace();
        long walkMs = 0;
        if (to != pair) {
            groups.get(group).forEach(bowler -> bowler.agent().moveOn());
            walkMs = lanesApart(pair, to) * pace.movePerPairMs() / 2 + pace.settleMs();
        }
        simulator.schedule(walkMs, Phase.MOVE, "arrive", () -> arrive(group, game));
    }

    /** By lane numbers, since pairs of the list need not be neighbours. */
    private int lanesApart(int pair, int other) {
        return Math.abs(
                lanes.get(pair).left().number() - lanes.get(other).left().number());
    }

    private void finish() {
        for (int game = 0; game < rotation.games(); game++) {
            enter(TimetableEntry.Activity.GAME, game + 1, gameStartMs[game], gameEndMs[game]);
        }
        whenDone.accept(practiceStartMs, simulator.nowMs());
    }

    private void enter(TimetableEntry.Activity what, int game, long startMs, long endMs) {
        timetable.add(new TimetableEntry(squad.id(), what, game, startMs, endMs));
    }

    private PairPlay pairPlay(int pair, int group, Runnable done) {
        return new PairPlay(simulator, event.pace(), shots, lanes.get(pair), groups.get(group), done);
    }

    /** Told when the squad is done: when its practice started and when its last ball was scored. */
    interface WhenDone {
        void accept(long startMs, long endMs);
    }
}
