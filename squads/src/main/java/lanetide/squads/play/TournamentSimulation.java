package lanetide.squads.play;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import lanetide.des.Simulator;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.film.OilFilm;
import lanetide.oilflow.line.Player;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Event;
import lanetide.squads.model.Squad;

/**
 * Plays an event once: squads one after another on the same lanes, every ball on the film that the balls before it left.
 *
 * <p>A squad starts when it is planned, or later if the one before has not left or the lanes are not ready. One object plays
 * one event once.
 */
public final class TournamentSimulation {
    private final Event event;
    private final Physics physics;
    private final BiFunction<Bowler, Player, BowlerAgent> agents;
    private final LuckSource luck;
    private final Day day;
    private final List<SquadResult> results = new ArrayList<>();
    private OilAccount oilOnBalls = OilAccount.EMPTY;

    /**
     * Prepares a playing.
     *
     * @param event what is played
     * @param physics under which laws
     * @param startingLines the lines bowlers bring
     * @param streams source of all chance
     * @param withWindows whether exit windows are worked out after every game, which takes longer than the play itself
     */
    public TournamentSimulation(
            Event event, Physics physics, StartingLines startingLines, RandomStreams streams, boolean withWindows) {
        this(event, physics, startingLines, streams, withWindows, Observers.NONE);
    }

    /**
     * Prepares a playing whose lanes are looked at.
     *
     * @param event what is played
     * @param physics under which laws
     * @param startingLines the lines bowlers bring
     * @param streams source of all chance
     * @param withWindows whether exit windows are worked out after every game
     * @param observer is shown the lanes
     */
    public TournamentSimulation(
            Event event,
            Physics physics,
            StartingLines startingLines,
            RandomStreams streams,
            boolean withWindows,
            LaneObserver observer) {
        this(event, physics, startingLines, streams, withWindows, Observers.of(observer));
    }

    /**
     * Prepares a playing that is watched.
     *
     * @param event what is played
     * @param physics under which laws
     * @param startingLines the lines bowlers bring
     * @param streams source of all chance
     * @param withWindows whether exit windows are worked out after every game
     * @param observers who watch
     */
    public TournamentSimulation(
            Event event,
            Physics physics,
            StartingLines startingLines,
            RandomStreams streams,
            boolean withWindows,
            Observers observers) {
        this(event, physics, startingLines, streams, withWindows, observers, new Simulator());
    }

    /**
     * Prepares a playing under given luck that is looked at.
     *
     * @param event what is played
     * @param physics under which laws
     * @param startingLines the lines bowlers bring; they must know the kinds of bowlers of the event
     * @param luck source of all chance
     * @param withWindows whether exit windows are worked out after every game
     * @param observer is shown the lanes
     */
    public TournamentSimulation(
            Event event,
            Physics physics,
            StartingLines startingLines,
            LuckSource luck,
            boolean withWindows,
            LaneObserver observer) {
        this(
                event,
                physics,
                startingLines,
                new Agents(event, startingLines, physics)::of,
                luck,
                withWindows,
                Observers.of(observer),
                new Simulator());
    }

    /** On a given clock, such as one that permutes events of the same time and phase. */
    TournamentSimulation(
            Event event,
            Physics physics,
            StartingLines startingLines,
            RandomStreams streams,
            boolean withWindows,
            Observers observers,
            Simulator simulator) {
        this(
                event,
                physics,
                startingLines,
                new Agents(event, startingLines, physics)::of,
                LuckSource.byBall(streams),
                withWindows,
                observers,
                simulator);
    }

    /** The same with other agents, to compare one bowler's ways among bowlers who keep theirs. */
    TournamentSimulation(
            Event event,
            Physics physics,
            StartingLines startingLines,
            BiFunction<Bowler, Player, BowlerAgent> agents,
            LuckSource luck,
            boolean withWindows,
            Observers observers,
            Simulator simulator) {
        this.event = event;
        this.physics = physics;
        this.agents = agents;
        this.luck = luck;
        List<PairLanes> lanes = event.centre().pairs().stream()
                .map(pair -> PairLanes.bare(pair, event.centre(), physics.grid()))
                .toList();
        ShotMaker shots = new ShotMaker(physics, OilFilm.fresh(event.pattern(), physics.grid()));
        List<TypicalPlayer> players = withWindows ? TypicalPlayer.of(event, physics, startingLines) : List.of();
        LaneRecorder recorder = new LaneRecorder(event.pattern(), players, physics, observers.lanes());
        this.day = Day.of(event, simulator, lanes, shots, recorder, new ArrayList<>(), observers.shots(), luck.lanes());
        observers.traces().forEach(simulator::addTraceListener);
    }

    /**
     * Plays the event.
     *
     * @return what happened
     * @throws IllegalStateException if called a second time
     */
    public EventResult play() {
        if (day.simulator().executedEvents() > 0) {
            throw new IllegalStateException("event " + event.name() + " has been played; make a new simulation");
        }
        playSquad(0);
        day.simulator().run();
        return new EventResult(
                results,
                day.timetable(),
                day.recorder().states(),
                account(),
                day.shots().shots(),
                day.faults().stops());
    }

    private void playSquad(int index) {
        if (index == event.squads().size()) {
            return;
        }
        Squad planned = event.squads().get(index);
        List<GroupInPlay> groups = planned.groups().stream()
                .map(group -> GroupInPlay.of(
                        group, planned, (bowler, attendance) -> member(bowler, attendance, planned.id())))
                .toList();
        SquadPlay squad = new SquadPlay(day, index, groups, (startMs, endMs, pace) -> {
            results.add(new SquadResult(planned.id(), startMs, endMs, bowlers(groups), pace));
            playSquad(index + 1);
        });
        squad.begin();
    }

    private Member member(Bowler bowler, Member.Attendance attendance, String squad) {
        Luck his = luck.of(squad, bowler);
        var player = StartingLines.player(bowler, event, physics);
        BowlerInPlay inPlay = new BowlerInPlay(
                bowler,
                player,
                Equipment.of(bowler, event.centre().surface(), physics),
                agents.apply(bowler, player),
                event.bowling(),
                his);
        return new Member(inPlay, event.pace(), attendance, his);
    }

    /** Those who bowled, and what is left of the oil on everybody's balls. */
    private List<BowlerResult> bowlers(List<GroupInPlay> groups) {
        List<BowlerResult> bowlers = new ArrayList<>();
        for (GroupInPlay group : groups) {
            for (Member member : group.members()) {
                BowlerInPlay bowler = member.bowler();
                oilOnBalls = oilOnBalls.plus(bowler.account());
                if (member.firstGame() >= 0) {
                    bowlers.add(bowler.result(group.id(), member.firstGame()));
                }
            }
        }
        return bowlers;
    }

    private OilAccount account() {
        OilAccount sum = oilOnBalls;
        for (LaneInPlay lane : day.allLanes()) {
            sum = sum.plus(lane.account());
        }
        return sum;
    }
}
