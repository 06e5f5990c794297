package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntConsumer;
import lanetide.des.random.RandomStreams;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import lanetide.squads.study.Execution;
import lanetide.squads.study.PossibleEvents;
import org.apache.commons.rng.UniformRandomProvider;

/** Plays an event on and on without oiling, and works out from the curves when oiling pays. */
public final class ReoilStudy {
    private static final double MS_PER_MINUTE = 60_000;

    private final PossibleEvents events;
    private final Event event;
    private final ReoilPlan plan;
    private final int sets;

    private ReoilStudy(PossibleEvents events, ReoilPlan plan) {
        this.events = events;
        this.event = events.event();
        this.plan = plan;
        this.sets = events.sets();
    }

    /**
     * Playings a study takes, for telling how far it is.
     *
     * @param plan the plan
     * @return playings of three blocks
     */
    public static int playings(ReoilPlan plan) {
        return plan.replications() + 2 * few(plan);
    }

    private static int few(ReoilPlan plan) {
        return Math.max(ReoilPlan.MIN_REPLICATIONS, plan.replications() / 2);
    }

    /**
     * Studies an event; the result does not depend on the number of threads.
     *
     * @param event the event: who plays, on which lanes, how they move
     * @param plan how it is studied
     * @param threads threads to play on, at least 1
     * @param onDone told the number of playings done so far
     * @return curves and intervals
     */
    public static ReoilResult run(Event event, ReoilPlan plan, int threads, IntConsumer onDone) {
        return run(new PossibleEvents(event, 1), plan, Execution.on(threads), onDone);
    }

    /**
     * The same under sets of values, which the playings go through in turn.
     *
     * @param events the event under its sets: who plays, on which lanes, how they move
     * @param plan how it is studied
     * @param execution how, as the next studies of its run
     * @param onDone told the number of playings done so far
     * @return curves, and what is best on the mean over the sets, with intervals for luck and the choice of sets
     */
    public static ReoilResult run(PossibleEvents events, ReoilPlan plan, Execution execution, IntConsumer onDone) {
        return new ReoilStudy(events, plan).run(execution, onDone);
    }

    private ReoilResult run(Execution execution, IntConsumer onDone) {
        BlockStudy study =
                new BlockStudy(events, LongBlock.onOneOiling(event, plan.games()), plan.games(), true, plan.seed());
        List<BlockPlaying> playings = study.run(plan.replications(), execution, onDone);
        Policies policies = new Policies(event, plan, study.styles().size(), sets);
        AgeCurve ages = policies.curve(playings);
        double[] loss = policies.loss(ages.spreadPins());
        List<Integer> games = gamesOfSquads();
        return new ReoilResult(
                plan,
                sets,
                intervals(policies, ages, playings),
                sets == 1 ? Optional.empty() : Optional.of(policies.leastRegret(ages)),
                curve(ages, playings, loss, policies.allAtOnce()),
                oilOver(policies, execution, onDone),
                EventOiling.of(EventOiling.planned(event), games, loss, policies.allAtOnce()),
                EventOiling.best(games, loss, policies.allAtOnce()),
                policies.allAtOnce(),
                policies.alone());
    }

    private List<Interval> intervals(Policies policies, AgeCurve ages, List<BlockPlaying> playings) {
        Map<Basis, Policies.Best> best = policies.of(playings);
        Map<Basis, double[]> resampled = new EnumMap<>(Basis.class);
        best.keySet().forEach(basis -> resampled.put(basis, new double[Redrawing.TIMES]));
        UniformRandomProvider stream = new RandomStreams(plan.seed()).stream("reoil/bootstrap");
        List<List<Double>> costs = new ArrayList<>();
        for (int i = 0; i < Redrawing.TIMES; i++) {
            int sample = i;
            Map<Basis, Policies.Best> redrawn = policies.of(Redrawing.of(playings, sets, stream));
            redrawn.forEach((basis, found) -> resampled.get(basis)[sample] = found.games());
            costs.add(redrawn.get(Basis.COST).cycle().orElseThrow().rates());
        }
        Interval.Flat same = best.get(Basis.COST).cycle().orElseThrow().notShownToCostMore(costs, Interval.SAME_SHARE);
        List<Map<Basis, Policies.Best>> bySet = policies.bySet(ages, playings);
        List<Interval> intervals = new ArrayList<>();
        best.forEach((basis, found) -> {
            double[] luck = Redrawing.interval(resampled.get(basis), found.games());
            double[] truth = sets == 1
                    ? luck
                    : Redrawing.interval(
                            bySet.stream()
                                    .mapToDouble(ofSet -> ofSet.get(basis).games())
                                    .toArray(),
                            found.games());
            intervals.add(new Interval(
                    basis,
                    found.games(),
                    truth[0],
                    truth[1],
                    luck[0],
                    luck[1],
                    basis == Basis.COST ? Optional.of(same) : found.flat(),
                    found.games() >= plan.games(),
                    found.costPerGame(),
                    found.controlBoards()));
        });
        return intervals;
    }

    private List<CurvePoint> curve(AgeCurve ages, List<BlockPlaying> playings, double[] loss, double oiling) {
        double[] spread = ages.spreadPins();
        double[] level = ages.levelPins();
        WindowCurve windows = new WindowCurve(playings, plan.games(), plan.limitBoards());
        List<CurvePoint> curve = new ArrayList<>();
        double spent = oiling;
        for (int age = 0; age < plan.games(); age++) {
            spent += loss[age];
            curve.add(new CurvePoint(
                    age + 1,
                    windows.shiftBoards(age + 1),
                    windows.widthBoards(age + 1),
                    windows.pocketShare(age + 1),
                    windows.paceBoards(age + 1),
                    spread[age],
                    level[age],
                    spent / (age + 1)));
        }
        return curve;
    }

    /** Games a pair sees in each squad, rounded where some pairs stay empty. */
    private List<Integer> gamesOfSquads() {
        List<Integer> games = new ArrayList<>();
        for (int s = 0; s < event.squads().size(); s++) {
            games.add((int) Math.max(1, Math.round(event.gamesOnPair(s))));
        }
        return games;
    }

    private OilOver oilOver(Policies policies, Execution execution, IntConsumer onDone) {
        int few = few(plan);
        double strip =
                laterSpread(Conditioning.STRIP_AND_OIL, execution, done -> onDone.accept(plan.replications() + done));
        double over =
                laterSpread(Conditioning.OIL_OVER, execution, done -> onDone.accept(plan.replications() + few + done));
        int games = event.rotations().get(0).games();
        OilingCost costs = new OilingCost(plan.costs(), event);
        List<Integer> lanes = event.centre().laneNumbers();
        return new OilOver(
                games,
                strip,
                over,
                policies.loss(new double[] {strip})[0] + costs.pairAllAtOnce(Conditioning.STRIP_AND_OIL) / games,
                policies.loss(new double[] {over})[0] + costs.pairAllAtOnce(Conditioning.OIL_OVER) / games,
                MachinePlan.of(event.centre().machines(), lanes, Conditioning.STRIP_AND_OIL)
                                .durationMs()
                        / MS_PER_MINUTE,
                MachinePlan.of(event.centre().machines(), lanes, Conditioning.OIL_OVER)
                                .durationMs()
                        / MS_PER_MINUTE);
    }

    /** Mean spread in the second and third of three equal squads, with the lanes done in some way between them. */
    private double laterSpread(Conditioning how, Execution execution, IntConsumer onDone) {
        LongBlock block = LongBlock.repeated(event, how).withoutTheFirst();
        int games = event.rotations().get(0).games();
        BlockStudy study = new BlockStudy(events.amongFirst(few(plan)), block, games, false, plan.seed());
        List<BlockPlaying> playings = study.run(few(plan), execution, onDone);
        return Arrays.stream(
                        new AgeCurve(playings, games, study.styles().size(), Math.min(sets, few(plan))).spreadPins())
                .average()
                .orElseThrow();
    }
}
