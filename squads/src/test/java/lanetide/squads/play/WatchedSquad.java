package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import lanetide.des.Simulator;
import lanetide.des.TraceEntry;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.Levelling;
import lanetide.oilflow.film.OilAccount;
import lanetide.squads.equipment.Equipment;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.luck.Luck;
import lanetide.squads.luck.LuckSource;
import lanetide.squads.model.Event;
import lanetide.squads.model.LanePair;
import lanetide.squads.model.Squad;
import lanetide.squads.result.PaceKept;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.score.TenpinScore;
import lanetide.squads.watch.LaneObserver;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.ShotObserver;

/**
 * Plays an event's first squad one event of the simulator at a time and notes, from the outside, whose ball and which
 * film each of them changed.
 */
final class WatchedSquad {
    final List<Shot> shots = new ArrayList<>();
    final List<TraceEntry> trace = new ArrayList<>();
    final List<TimetableEntry> timetable = new ArrayList<>();
    /** Labels of the simulator's events that changed a film. */
    final Map<String, Integer> filmChanges = new LinkedHashMap<>();

    final List<PairLanes> lanes = new ArrayList<>();
    final List<List<BowlerInPlay>> groups = new ArrayList<>();
    long practiceStartMs = -1;
    long endMs = -1;
    PaceKept pace = PaceKept.NOTHING;

    private final List<LaneInPlay> allLanes = new ArrayList<>();
    private final List<double[]> films = new ArrayList<>();
    private final Map<BowlerInPlay, OilAccount> balls = new LinkedHashMap<>();
    private final Map<BowlerInPlay, Integer> framesDone = new LinkedHashMap<>();
    private final Map<BowlerInPlay, Integer> gamesDone = new LinkedHashMap<>();
    private final Simulator simulator = new Simulator();
    private Consumer<BowlerInPlay> onGameEnd = bowler -> {};
    private String running = "";
    private long runningMs;

    /**
     * A ball that was thrown.
     *
     * @param frame the frame it belongs to, 1 to 10; in practice 1
     * @param game games handed in before
     */
    record Shot(long timeMs, int lane, String bowler, int game, int frame) {}

    static WatchedSquad play(Event event, long seed) {
        return play(event, seed, (watched, bowler) -> {});
    }

    /** Also looks at every bowler right after each of his games. */
    static WatchedSquad play(Event event, long seed, BiConsumer<WatchedSquad, BowlerInPlay> onGameEnd) {
        WatchedSquad watched = new WatchedSquad();
        watched.run(event, seed, bowler -> onGameEnd.accept(watched, bowler));
        return watched;
    }

    private void run(Event event, long seed, Consumer<BowlerInPlay> atGameEnd) {
        onGameEnd = atGameEnd;
        StartingLines lines = new StartingLines(event, Events.PHYSICS);
        RandomStreams streams = new RandomStreams(seed).forReplication(0);
        for (LanePair pair : event.centre().pairs()) {
            lanes.add(PairLanes.bare(pair, event.centre(), Events.PHYSICS.grid()));
        }
        Squad squad = event.squads().get(0);
        List<GroupInPlay> members = squad.groups().stream()
                .map(group -> GroupInPlay.of(group, squad, (bowler, attendance) -> {
                    Luck luck = LuckSource.byBall(streams).of("A", bowler);
                    var player = StartingLines.player(bowler, event, Events.PHYSICS);
                    BowlerInPlay inPlay = new BowlerInPlay(
                            bowler,
                            player,
                            Equipment.of(bowler, event.centre().surface(), Events.PHYSICS),
                            new Agents(event, lines, Events.PHYSICS).of(bowler, player, event.pattern()),
                            event.bowling(),
                            luck);
                    return new Member(inPlay, event.pace(), attendance, luck);
                }))
                .toList();
        members.forEach(
                group -> groups.add(group.members().stream().map(Member::bowler).toList()));
        lanes.forEach(pair -> allLanes.addAll(pair.both()));
        allLanes.forEach(lane -> films.add(lane.film().cellsUm().clone()));
        groups.forEach(group -> group.forEach(this::note));
        ShotMaker maker = new ShotMaker(Events.PHYSICS);
        LaneRecorder recorder =
                new LaneRecorder(LaneRecords.FILMS, List.of(), lines, Events.PHYSICS, LaneObserver.NONE);
        simulator.addTraceListener(trace::add);
        Day day = Day.of(
                event, simulator, lanes, Levelling.usual(), maker, recorder, timetable, ShotObserver.NONE, streams);
        new SquadPlay(day, 0, members, (startMs, lastMs, kept) -> {
                    practiceStartMs = startMs;
                    endMs = lastMs;
                    pace = kept;
                })
                .begin();
        simulator.addTraceListener(entry -> {
            if (entry.happening() == TraceEntry.Happening.EXECUTED) {
                look();
                running = entry.label().replaceAll(",.*", "");
                runningMs = entry.clockMs();
            }
        });
        simulator.run();
        look();
    }

    /** What the event before has changed. */
    private void look() {
        int lane = -1;
        for (int i = 0; i < allLanes.size(); i++) {
            double[] cells = allLanes.get(i).film().cellsUm();
            if (!Arrays.equals(cells, films.get(i))) {
                films.set(i, cells.clone());
                filmChanges.merge(running, 1, Integer::sum);
                lane = allLanes.get(i).number();
            }
        }
        for (List<BowlerInPlay> group : groups) {
            for (BowlerInPlay bowler : group) {
                if (!bowler.account().equals(balls.get(bowler))) {
                    int frame = Math.min(framesDone.get(bowler) + 1, TenpinScore.FRAMES);
                    shots.add(new Shot(
                            runningMs,
                            lane,
                            bowler.bowler().id(),
                            bowler.result("", 0).scores().size(),
                            frame));
                }
                note(bowler);
            }
        }
    }

    private void note(BowlerInPlay bowler) {
        balls.put(bowler, bowler.account());
        if (gamesDone.merge(bowler, 0, Integer::sum)
                < bowler.result("", 0).scores().size()) {
            gamesDone.put(bowler, bowler.result("", 0).scores().size());
            onGameEnd.accept(bowler);
        }
        int done = 0;
        while (done < TenpinScore.FRAMES && bowler.frameComplete(done + 1)) {
            done++;
        }
        framesDone.put(bowler, done);
    }

    List<Shot> practice() {
        return shots.stream().filter(shot -> shot.timeMs() < firstReleaseMs()).toList();
    }

    List<Shot> game() {
        return shots.stream().filter(shot -> shot.timeMs() >= firstReleaseMs()).toList();
    }

    private long firstReleaseMs() {
        return trace.stream()
                .filter(entry -> entry.happening() == TraceEntry.Happening.EXECUTED
                        && entry.label().startsWith("release"))
                .mapToLong(TraceEntry::timeMs)
                .findFirst()
                .orElse(Long.MAX_VALUE);
    }
}
