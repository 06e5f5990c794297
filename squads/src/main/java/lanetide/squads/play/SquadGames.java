package lanetide.squads.play;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import lanetide.des.Simulator;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Remedy;
import lanetide.squads.model.Squad;
import lanetide.squads.rotation.Rotation;

/**
 * The games of a squad. A group leaves its pair when all its cards are in, takes a break if one is due, walks, and starts on the
 * next pair when its turn has come there. What becomes of it when a lane fails is the director's choice.
 */
final class SquadGames implements PairGame.Watcher {
    /** Lanes of a pair. */
    private static final long LANES = 2;

    /** A group that plays elsewhere than on the pair of its rotation. */
    private static final int ELSEWHERE = -1;

    private final Day day;
    private final Simulator simulator;
    private final Squad squad;
    private final Rotation rotation;
    private final List<GroupInPlay> groups;
    private final Stopwatch stopwatch;
    private final Runnable whenDone;
    private final Director director;
    private final ShotReporter reporter;
    private final PairTurns turns;
    private final SquadTimes times;
    private final Map<PairGame, Place> running = new LinkedHashMap<>();
    private int groupsDone;

    /** Where a game counts: the pair of the rotation whose turn it takes, and its number from 0. */
    private record Place(int pair, int game) {}

    SquadGames(Day day, int index, List<GroupInPlay> groups, Stopwatch stopwatch, Runnable whenDone) {
        this.day = day;
        this.simulator = day.simulator();
        this.squad = day.event().squads().get(index);
        this.rotation = day.event().rotations().get(index);
        this.groups = groups;
        this.stopwatch = stopwatch;
        this.whenDone = whenDone;
        this.director = day.director();
        this.reporter = new ShotReporter(day, squad.id());
        this.turns = new PairTurns(rotation);
        this.times = new SquadTimes(
                squad.id(), rotation.games(), squad.arrangements().breaks().size());
    }

    /** A group stands at the pair of a game. */
    void arrive(int group, int game) {
        turns.arrive(group, game);
        groups.get(group).arrive(game, simulator.nowMs());
        startGame(rotation.pairOf(game, group));
    }

    /** The games and breaks in order of start. */
    List<TimetableEntry> timetable() {
        return times.timetable();
    }

    @Override
    public void thrown(Player player, LaneInPlay lane, int frame, int ball, int standing, int left) {
        reporter.report(
                groups.get(player.group()).id(),
                player.member().bowler(),
                lane,
                new ShotReporter.Place(groups.get(player.group()).game() + 1, frame, ball),
                standing,
                left);
    }

    @Override
    public void finished(Player player) {
        int group = player.group();
        stopwatch.bowled();
        times.inGame(groups.get(group).game(), simulator.nowMs());
        if (groups.get(group).oneIsDone()) {
            groupDone(group);
        }
    }

    @Override
    public void over(PairGame game) {
        Place place = close(game);
        leave(game.lanes(), place.pair());
        finishIfDone();
    }

    @Override
    public void laneOut(PairGame game, LaneInPlay lane) {
        if (director.isAsked(lane)) {
            simulator.schedule(0, Phase.DIRECT, "director decides", () -> decide(game, lane));
        }
    }

    private void decide(PairGame game, LaneInPlay lane) {
        if (game.isGoingOn()
                && director.isAsked(lane)
                && director.hasPlace(running.keySet(), game.lanes(), game.players())) {
            game.stop(unfinished -> {
                Place place = close(game);
                relocate(unfinished, game.lanes(), place);
            });
        }
    }

    private void startGame(int pair) {
        turns.begin(pair).ifPresent(group -> {
            stopwatch.waited(
                    WaitCause.PREVIOUS_GROUP,
                    LANES * (simulator.nowMs() - groups.get(group).arrivedMs()));
            begin(group, new Place(pair, turns.game(pair)));
        });
    }

    private void begin(int group, Place place) {
        long nowMs = simulator.nowMs();
        PairLanes lanes = day.lanes().get(place.pair());
        OptionalLong firstThereMs = groups.get(group).firstThereMs(place.game());
        if (firstThereMs.orElse(0) > nowMs) {
            // Nobody of the group has come yet: its pair waits for the first who does.
            simulator.scheduleAt(
                    firstThereMs.getAsLong(), Phase.MOVE, "first of group there", () -> begin(group, place));
            return;
        }
        List<Player> players = groups.get(group).playing(place.game(), nowMs).stream()
                .map(member -> new Player(group, member))
                .toList();
        for (Player player : players) {
            player.member().begins(place.game());
            player.member().bowler().beginGame();
        }
        groups.get(group).begin(players);
        times.inGame(place.game(), nowMs);
        if (players.isEmpty()) {
            groupDone(group);
            leave(lanes, place.pair());
            finishIfDone();
        } else if (director.isAsked(lanes)) {
            simulator.schedule(0, Phase.DIRECT, "director decides", () -> relocate(players, lanes, place));
        } else {
            play(players, lanes, place);
        }
    }

    private void play(List<Player> players, PairLanes lanes, Place place) {
        PairGame game = new PairGame(day, lanes, stopwatch, this);
        running.put(game, place);
        for (Player player : players) {
            groups.get(player.group()).stands(lanes);
            player.member().goesTo(lanes);
        }
        game.play(players);
    }

    /** Lets players go on elsewhere if there is a place, else where they are. */
    private void relocate(List<Player> players, PairLanes from, Place place) {
        if (!director.hasPlace(running.keySet(), from, players.size())) {
            play(players, from, place);
            return;
        }
        if (director.remedy() == Remedy.SPARE) {
            moveToSpare(players, from, place);
        } else {
            players.forEach(player -> joinOthers(player, from));
        }
        leave(from, place.pair());
    }

    /** A group that has stayed on a spare pair since its last game goes on there. */
    private void moveToSpare(List<Player> players, PairLanes from, Place place) {
        PairLanes standsAt = groups.get(players.get(0).group())
                .at()
                .filter(director::isSpare)
                .orElse(from);
        PairLanes spare = director.takeSpare(standsAt).orElseThrow();
        long walkMs = walkMs(standsAt, spare);
        stopwatch.waited(WaitCause.FAULT, LANES * walkMs);
        simulator.schedule(
                walkMs,
                Phase.MOVE,
                "arrive at spare pair",
                () -> play(players, spare, new Place(ELSEWHERE, place.game())));
    }

    private void joinOthers(Player player, PairLanes from) {
        PairGame host = director.host(running.keySet(), from).orElseThrow();
        groups.get(player.group()).stands(from);
        host.expect();
        simulator.schedule(walkMs(from, host.lanes()), Phase.MOVE, "join other group", () -> {
            player.member().goesTo(host.lanes());
            host.join(player);
        });
    }

    /** Writes down what a game has made of its lanes. */
    private Place close(PairGame game) {
        Place place = running.remove(game);
        times.inGame(place.game(), simulator.nowMs());
        for (LaneInPlay lane : game.lanes().both()) {
            lane.countGames(1);
            day.recorder().record(lane, squad.id(), place.game() + 1);
        }
        return place;
    }

    /** Gives a pair free for the next group. */
    private void leave(PairLanes lanes, int pair) {
        if (pair == ELSEWHERE) {
            director.giveBack(lanes);
        } else {
            turns.end(pair);
            startGame(pair);
        }
    }

    private void groupDone(int group) {
        int next = groups.get(group).game() + 1;
        if (next == rotation.games()) {
            groupsDone++;
            return;
        }
        PairLanes to = day.lanes().get(rotation.pairOf(next, group));
        Optional<PairLanes> from = groups.get(group).at();
        boolean staysOnSpare = from.filter(director::isSpare).isPresent() && director.isAsked(to);
        long walkMs = staysOnSpare ? 0 : from.map(lanes -> walkMs(lanes, to)).orElse(0L);
        if (!staysOnSpare) {
            groups.get(group).members().forEach(member -> member.goesTo(to));
        }
        simulator.schedule(breakMs(group, next) + walkMs, Phase.MOVE, "arrive", () -> arrive(group, next));
    }

    private long breakMs(int group, int gamesDone) {
        long nowMs = simulator.nowMs();
        long sumMs = 0;
        for (int taken : groups.get(group).takeBreaks(gamesDone, nowMs)) {
            times.inBreak(taken, nowMs + sumMs);
            sumMs += squad.arrangements().breaks().get(taken).lengthMs();
            times.inBreak(taken, nowMs + sumMs);
        }
        return sumMs;
    }

    private long walkMs(PairLanes from, PairLanes to) {
        PaceOfPlay pace = day.event().pace();
        return from.equals(to) ? 0 : from.apart(to) * pace.movePerPairMs() / 2 + pace.settleMs();
    }

    private void finishIfDone() {
        if (groupsDone == groups.size() && running.isEmpty()) {
            whenDone.run();
        }
    }
}
