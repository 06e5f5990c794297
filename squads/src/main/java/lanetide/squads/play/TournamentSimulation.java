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
import lanetide.squads.model.Group;

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
        this(event, physics, startingLines, streams, withWindows, LaneObserver.NONE);
    }

    /**
     * Prepares a playing that is looked at.
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
        this(event, physics, startingLines, LuckSource.byBall(streams), withWindows, observer);
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
        this(event, physics, startingLines, new Agents(event, startingLines, physics)::of, luck, withWindows, observer);
    }

    /** The same with other agents, to compare one bowler's ways among bowlers who keep theirs. */
    TournamentSimulation(
            Event event,
            Physics physics,
            StartingLines startingLines,
            BiFunction<Bowler, Player, BowlerAgent> agents,
            LuckSource luck,
            boolean withWindows,
            LaneObserver observer) {
        this.event = event;
        this.physics = physics;
        this.agents = agents;
        this.luck = luck;
        List<PairLanes> lanes = event.centre().pairs().stream()
                .map(pair -> PairLanes.bare(pair, event.centre(), physics.grid()))
                .toList();
        ShotMaker shots = new ShotMaker(physics, OilFilm.fresh(event.pattern(), physics.grid()));
        List<TypicalPlayer> players = withWindows ? TypicalPlayer.of(event, physics, startingLines) : List.of();
        LaneRecorder recorder = new LaneRecorder(event.pattern(), players, physics, observer);
        this.day = new Day(event, new Simulator(), lanes, shots, recorder, new ArrayList<>());
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
                day.shots().shots());
    }

    private void playSquad(int index) {
        if (index == event.squads().size()) {
            return;
        }
        List<List<Member>> groups = new ArrayList<>();
        for (Group group : event.squads().get(index).groups()) {
            groups.add(group.bowlers().stream()
                    .map(bowler -> member(bowler, event.squads().get(index).id()))
                    .toList());
        }
        SquadPlay squad = new SquadPlay(day, index, groups, (startMs, endMs, pace) -> {
            results.add(new SquadResult(event.squads().get(index).id(), startMs, endMs, bowlers(index, groups), pace));
            playSquad(index + 1);
        });
        squad.begin();
    }

    private Member member(Bowler bowler, String squad) {
        Luck his = luck.of(squad, bowler);
        var player = StartingLines.player(bowler, event, physics);
        BowlerInPlay inPlay = new BowlerInPlay(
                bowler,
                player,
                Equipment.of(bowler, event.centre().surface(), physics),
                agents.apply(bowler, player),
                event.bowling(),
                his);
        return new Member(inPlay, event.pace(), his);
    }

    private List<BowlerResult> bowlers(int index, List<List<Member>> groups) {
        List<BowlerResult> bowlers = new ArrayList<>();
        for (int g = 0; g < groups.size(); g++) {
            String group = event.squads().get(index).groups().get(g).id();
            for (Member member : groups.get(g)) {
                BowlerInPlay bowler = member.bowler();
                bowlers.add(bowler.result(group));
                oilOnBalls = oilOnBalls.plus(bowler.account());
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
