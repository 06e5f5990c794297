package lanetide.squads.play;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import lanetide.oilflow.film.OilAccount;
import lanetide.oilflow.line.Player;
import lanetide.squads.bowler.AgentByPattern;
import lanetide.squads.bowler.BowlerAgent;
import lanetide.squads.equipment.Equipment;
import lanetide.squads.equipment.Physics;
import lanetide.squads.equipment.StartingLines;
import lanetide.squads.equipment.TypicalPlayer;
import lanetide.squads.luck.Luck;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Cut;
import lanetide.squads.model.Event;
import lanetide.squads.model.Finals;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.Squad;
import lanetide.squads.qualifying.People;
import lanetide.squads.qualifying.Qualifying;
import lanetide.squads.result.BowlerResult;
import lanetide.squads.result.BrokenRuleException;
import lanetide.squads.result.EventResult;
import lanetide.squads.result.Rules;
import lanetide.squads.result.SquadResult;
import lanetide.squads.result.TimetableEntry;
import lanetide.squads.watch.LaneRecords;
import lanetide.squads.watch.Observers;
import org.apache.commons.rng.sampling.ListSampler;

/**
 * Plays an event once: squads one after another on the same lanes, every ball on the film that the balls before it
 * left.
 *
 * <p>A squad starts when it is planned, or later if the one before has not left or the lanes are not ready. One object
 * plays one event once.
 */
public final class TournamentSimulation {
    /** What keys the luck of the finals; no squad may be called so. */
    private static final String FINALS = "cut/finals";

    private final Setup setup;
    private final Day day;
    /** What came of the squads that are done, by their places. */
    private final SortedMap<Integer, SquadResult> results = new TreeMap<>();

    private final Set<Integer> begun = new HashSet<>();
    private OilAccount oilOnBalls = OilAccount.EMPTY;
    private Optional<FinalsPlay> finals = Optional.empty();

    /**
     * Prepares a playing.
     *
     * @param setup what it takes
     */
    public TournamentSimulation(Setup setup) {
        this.setup = setup;
        Event event = setup.event();
        Physics physics = setup.physics();
        List<PairLanes> lanes = event.centre().pairs().stream()
                .map(pair -> PairLanes.bare(pair, event.centre(), physics.grid()))
                .toList();
        List<TypicalPlayer> players = setup.records() == LaneRecords.WINDOWS
                ? TypicalPlayer.of(event, physics, setup.startingLines())
                : List.of();
        Observers observers = setup.observers();
        LaneRecorder recorder =
                new LaneRecorder(setup.records(), players, setup.startingLines(), physics, observers.lanes());
        this.day = Day.of(
                event,
                setup.simulator(),
                lanes,
                physics.model().levelling(),
                setup.balls().of(setup),
                recorder,
                new ArrayList<>(),
                observers.shots(),
                setup.luck().lanes());
        observers.traces().forEach(setup.simulator()::addTraceListener);
    }

    /**
     * Plays the event.
     *
     * @return what happened
     * @throws IllegalStateException if called a second time
     * @throws BrokenRuleException if something happened that never may
     */
    public EventResult play() {
        if (day.simulator().executedEvents() > 0) {
            throw new IllegalStateException(
                    "event " + setup.event().name() + " has been played; make a new simulation");
        }
        beginThoseWhoCan();
        day.simulator().run();
        finals.ifPresent(over -> over.bowlers().forEach(bowler -> oilOnBalls = oilOnBalls.plus(bowler.account())));
        OilAccount oil = account();
        Rules.requireClosed(oil);
        return new EventResult(
                List.copyOf(results.values()),
                timetable(),
                day.recorder().states(),
                oil,
                day.balls().thrown(),
                day.faults().stops(),
                finals.map(FinalsPlay::result));
    }

    /** What happened when; squads that play at one time are told one after the other. */
    private List<TimetableEntry> timetable() {
        Event event = setup.event();
        return event.sharesAllLanes()
                ? day.timetable()
                : day.timetable().stream()
                        .sorted(Comparator.comparingInt((TimetableEntry entry) -> event.squad(entry.squad()))
                                .thenComparingLong(TimetableEntry::startMs))
                        .toList();
    }

    /** Squads begin in their order, each when all before it that need one of its lanes are done. */
    private void beginThoseWhoCan() {
        Event event = setup.event();
        int squads = event.squads().size();
        if (results.size() == squads) {
            event.cut().ifPresent(cut -> cut.finals().ifPresent(plan -> playFinals(cut, plan)));
            return;
        }
        for (int s = 0; s < squads; s++) {
            int squad = s;
            boolean waits = IntStream.range(0, squad)
                    .anyMatch(before -> !results.containsKey(before) && event.shareLanes(before, squad));
            if (!waits && begun.add(squad)) {
                playSquad(squad);
            }
        }
    }

    private void playSquad(int index) {
        Squad planned = setup.event().squads().get(index);
        List<GroupInPlay> groups = planned.groups().stream()
                .map(group -> GroupInPlay.of(group, planned, (bowler, attendance) -> member(bowler, attendance, index)))
                .toList();
        SquadPlay squad = new SquadPlay(day, index, groups, (startMs, endMs, pace) -> {
            SquadResult result = new SquadResult(planned.id(), startMs, endMs, bowlers(groups), pace);
            Rules.requirePossible(result, setup.event().rotations().get(index).games());
            results.put(index, result);
            beginThoseWhoCan();
        });
        squad.begin();
    }

    /** Whom no rule of the cut parts stand in an order drawn by lot. */
    private void playFinals(Cut cut, Finals plan) {
        People people = new People(setup.event());
        List<Integer> lot =
                new ArrayList<>(IntStream.range(0, people.count()).boxed().toList());
        ListSampler.shuffle(setup.luck().lanes().stream(FINALS + "/lot"), lot);
        List<Bowler> seeds =
                Qualifying.of(
                                cut,
                                people.asDrawn(List.copyOf(results.values()), cut)
                                        .people())
                        .order(lot)
                        .stream()
                        .limit(plan.seeds())
                        .map(person -> people.bowlers().get(person))
                        .toList();
        int last = setup.event().squads().size() - 1;
        FinalsPlay play = new FinalsPlay(
                day.unwatched(setup),
                plan,
                cut.withHandicap(),
                setup.event().plans().get(last),
                seeds,
                bowler -> member(bowler, Member.Attendance.ALWAYS, FINALS, last));
        finals = Optional.of(play);
        play.begin();
    }

    private Member member(Bowler bowler, Member.Attendance attendance, int squad) {
        return member(bowler, attendance, setup.event().squads().get(squad).id(), squad);
    }

    private Member member(Bowler bowler, Member.Attendance attendance, String luckOf, int squad) {
        Event event = setup.event();
        Luck his = setup.luck().of(luckOf, bowler);
        Player player = StartingLines.player(bowler, event, setup.physics());
        BowlerInPlay inPlay = new BowlerInPlay(
                bowler,
                player,
                Equipment.of(bowler, event.centre().surface(), setup.physics()),
                agent(bowler, player, event.plans().get(squad).patterns()),
                event.bowling(),
                his);
        return new Member(inPlay, event.pace(), attendance, his);
    }

    private BowlerAgent agent(Bowler bowler, Player player, LanePatterns patterns) {
        return patterns.others().isEmpty()
                ? setup.agents().of(bowler, player, patterns.usual())
                : new AgentByPattern<>(
                        patterns.usual(),
                        patterns::on,
                        pattern -> setup.agents().of(bowler, player, pattern));
    }

    /** Those who bowled, and what is left of the oil on everybody's balls. */
    private List<BowlerResult> bowlers(List<GroupInPlay> groups) {
        List<BowlerResult> bowlers = new ArrayList<>();
        for (GroupInPlay group : groups) {
            for (Member member : group.members()) {
                BowlerInPlay bowler = member.bowler();
                oilOnBalls = oilOnBalls.plus(bowler.account());
                member.firstGame().ifPresent(game -> bowlers.add(bowler.result(group.id(), game)));
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
