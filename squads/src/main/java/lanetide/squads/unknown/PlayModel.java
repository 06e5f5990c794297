package lanetide.squads.unknown;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lanetide.oilflow.ball.ReleaseSpread;
import lanetide.oilflow.film.OilPattern;
import lanetide.oilflow.unknown.OilModel;
import lanetide.oilflow.unknown.Unknowns;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.model.Adaptation;
import lanetide.squads.model.Arrangements;
import lanetide.squads.model.Bowler;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Event;
import lanetide.squads.model.Group;
import lanetide.squads.model.LanePatterns;
import lanetide.squads.model.Level;
import lanetide.squads.model.Levels;
import lanetide.squads.model.LineUpChange;
import lanetide.squads.model.PaceOfPlay;
import lanetide.squads.model.Reckoning;
import lanetide.squads.model.Squad;
import lanetide.squads.model.SquadPlan;

/**
 * An event under a set of values: the oil model's, and those of how bowlers scatter, follow the lanes and take their
 * time. Shipped levels, styles, covers and surfaces and the usual pace change with the set; what a scenario states of
 * its own does not.
 */
public final class PlayModel {
    /** The unknowns of play. */
    public static final Unknowns UNKNOWNS = new Unknowns(PlayModel.class);

    private static final Map<String, Level> SHIPPED = Levels.shipped();

    private final Event own;
    private final ValueSet set;
    private final OilModel oil;

    /**
     * An event and its bowlers under a set of values.
     *
     * @param own the event, as a scenario has it
     * @param set the values
     */
    public PlayModel(Event own, ValueSet set) {
        this(own, set, own.laws().withValues(set).oilModel());
    }

    /**
     * The same with an oil model that has been made already.
     *
     * @param own the event, as a scenario has it
     * @param set the values
     * @param oil the oil model under the event's laws with these values
     */
    public PlayModel(Event own, ValueSet set, OilModel oil) {
        this.own = own;
        this.set = set;
        this.oil = oil;
    }

    /**
     * An event under a set of values.
     *
     * @param event the event, as a scenario has it
     * @param set the values
     * @return the event as it would then be; itself where all are as usual
     */
    public static Event under(Event event, ValueSet set) {
        return new PlayModel(event, set).event();
    }

    /**
     * The event.
     *
     * @return the event as it would be with these values; the scenario's own where all are as usual and no lane's oil
     *     was measured
     */
    public Event event() {
        return set.isUsual() && own.centre().findings().laid().isEmpty() ? own : of(own);
    }

    /**
     * The oil model.
     *
     * @return what surfaces, covers, styles and patterns are with these values
     */
    public OilModel oil() {
        return oil;
    }

    private double value(String id) {
        return set.of(UNKNOWNS.of(id));
    }

    private Event of(Event event) {
        List<SquadPlan> plans = event.plans().stream().map(this::plan).toList();
        return new Event(
                event.name(),
                centre(event, plans),
                event.squads().stream().map(this::squad).toList(),
                plans,
                pace(event.pace(), set),
                event.laws().withValues(set),
                event.bowling(),
                event.incidents(),
                event.cut());
    }

    private Centre centre(Event event, List<SquadPlan> plans) {
        Centre known = event.centre().onSurface(oil.of(event.centre().surface()));
        return event.laws().lanesStay() ? known : new PossibleLanes(set).of(known, event.squads(), plans);
    }

    private Squad squad(Squad squad) {
        List<Group> groups = squad.groups().stream()
                .map(group -> new Group(
                        group.id(), group.bowlers().stream().map(this::bowler).toList()))
                .toList();
        Arrangements arrangements = squad.arrangements();
        return squad.withArrangements(Arrangements.NONE)
                .withGroups(groups)
                .withArrangements(arrangements.withChanges(
                        arrangements.changes().stream().map(this::change).toList()));
    }

    private LineUpChange change(LineUpChange change) {
        return change instanceof LineUpChange.Substitution in
                ? new LineUpChange.Substitution(in.bowler(), in.fromGame(), bowler(in.substitute()))
                : change;
    }

    private Bowler bowler(Bowler own) {
        return new Bowler(
                own.id(),
                own.hand(),
                oil.of(own.style()),
                level(own.level()),
                oil.of(own.cover()),
                oil.of(own.spareCover()),
                own.tempo(),
                own.secondCover().map(oil::of),
                own.handicapPins(),
                own.person(),
                own.partners());
    }

    private SquadPlan plan(SquadPlan plan) {
        LanePatterns patterns = plan.patterns();
        Map<Integer, OilPattern> others = new HashMap<>();
        patterns.others().forEach((lane, pattern) -> others.put(lane, oil.laid(pattern)));
        return plan.withPatterns(new LanePatterns(oil.laid(patterns.usual()), others));
    }

    /**
     * A level of skill.
     *
     * @param own a scenario's level
     * @return what it is with these values if it is a shipped one, else itself
     */
    public Level level(Level own) {
        if (set.isUsual() || !own.equals(SHIPPED.get(own.id()))) {
            return own;
        }
        ReleaseSpread spread = own.spread();
        double arrows = value("arrows-scatter");
        double release = value("release-scatter");
        return new Level(
                own.id(),
                new ReleaseSpread(
                        arrows * spread.laydownM(),
                        arrows * spread.launchRad(),
                        release * spread.speedShare(),
                        release * spread.spinShare()),
                adaptation(own.adaptation()),
                value("form"),
                own.source());
    }

    private Adaptation adaptation(Adaptation own) {
        Reckoning reckoning = own.reckoning();
        return new Adaptation(
                own.seesBoards() * value("sight"),
                own.deadBandBoards() * value("dead-band"),
                own.gain() * value("gain"),
                (int) Math.max(1, Math.round(own.patienceShots() * value("patience"))),
                new Reckoning(
                        reckoning.driftBoards() * value("drift"),
                        reckoning.deeperBoards() * value("deeper"),
                        atMost(reckoning.othersBoards() * value("others")),
                        atMost(reckoning.toldBoards() * value("told"))));
    }

    private static double atMost(double boards) {
        return Math.min(boards, Reckoning.NOT_AT_ALL_BOARDS);
    }

    /**
     * How long things take.
     *
     * @param own a scenario's pace
     * @param set a set of values
     * @return the pace with these values: times that are as usual change, those that a scenario states stay
     */
    public static PaceOfPlay pace(PaceOfPlay own, ValueSet set) {
        PaceOfPlay usual = PaceOfPlay.USUAL;
        return new PaceOfPlay(
                time(own.firstShotMs(), usual.firstShotMs(), set, "first-shot"),
                time(own.spareShotMs(), usual.spareShotMs(), set, "spare-shot"),
                own.spread(),
                own.pinsetterMs(),
                own.ballReturnMs(),
                own.movePerPairMs(),
                time(own.settleMs(), usual.settleMs(), set, "settling"),
                own.courtesy());
    }

    private static long time(long ownMs, long usualMs, ValueSet set, String id) {
        return ownMs == usualMs ? Math.round(usualMs * set.of(UNKNOWNS.of(id))) : ownMs;
    }
}
