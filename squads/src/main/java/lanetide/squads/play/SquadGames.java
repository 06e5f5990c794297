package lanetide.squads.play;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lanetide.des.Simulator;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;
import lanetide.squads.play.RunningGames.Place;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.result.WaitCause;
import lanetide.squads.rotation.Rotation;

/**
 * The games of a squad. A group leaves its pair when all its cards are in, takes a break if one is due, walks, and
 * starts on the next pair when its turn has come there. What becomes of it when a lane fails is the director's choice.
 */
final class SquadGames implements PairGame.Watcher {
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
    private final RunningGames running;
    private final Relocation relocation;
    private int groupsDone;

    SquadGames(
            Day day, Squad squad, SquadPlan planned, List<GroupInPlay> groups, Stopwatch stopwatch, Runnable whenDone) {
        this.day = day;
        this.simulator = day.simulator();
        this.squad = squad;
        this.rotation = planned.rotation();
        this.groups = groups;
        this.stopwatch = stopwatch;
        this.whenDone = whenDone;
        this.director = day.director(planned);
        this.reporter = new ShotReporter(day, squad.id());
        this.turns = new PairTurns(rotation);
        this.times = new SquadTimes(
                squad.id(), rotation.games(), squad.arrangements().breaks().size());
        this.running = new RunningGames(day, squad.id(), groups, stopwatch, this);
        this.relocation = new Relocation(day, director, groups, stopwatch, running);
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
    public void thrown(BowlerInGame player, LaneInPlay lane, int frame, int ball, int standing, int left) {
        reporter.report(
                groups.get(player.group()).id(),
                player.member().bowler(),
                lane,
                new ShotReporter.Place(groups.get(player.group()).game() + 1, frame, ball),
                standing,
                left);
    }

    @Override
    public void finished(BowlerInGame player) {
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
        if (game.isGoingOn() && director.isAsked(lane) && relocation.hasPlace(game.lanes(), game.players())) {
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
                    PairLanes.LANES * (simulator.nowMs() - groups.get(group).arrivedMs()));
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
        List<BowlerInGame> players = groups.get(group).playing(place.game(), nowMs).stream()
                .map(member -> new BowlerInGame(group, member))
                .toList();
        for (BowlerInGame player : players) {
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
            running.play(players, lanes, place);
        }
    }

    /** Lets players go on elsewhere if there is a place, else where they are. */
    private void relocate(List<BowlerInGame> players, PairLanes from, Place place) {
        if (relocation.hasPlace(from, players.size())) {
            relocation.send(players, from, place.game());
            leave(from, place.pair());
        } else {
            running.play(players, from, place);
        }
    }

    private Place close(PairGame game) {
        Place place = running.close(game);
        times.inGame(place.game(), simulator.nowMs());
        return place;
    }

    /** Gives a pair free for the next group. */
    private void leave(PairLanes lanes, int pair) {
        if (pair == RunningGames.ELSEWHERE) {
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
        long walkMs = staysOnSpare
                ? 0
                : from.map(lanes -> lanes.walkMs(to, day.event().pace())).orElse(0L);
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

    private void finishIfDone() {
        if (groupsDone == groups.size() && running.isEmpty()) {
            whenDone.run();
        }
    }
}
