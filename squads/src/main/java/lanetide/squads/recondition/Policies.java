package lanetide.squads.recondition;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;

/** The best interval on every basis, from a set of playings. */
final class Policies {
    private static final double CONTROL_STEP_BOARDS = 0.25;

    private final Event event;
    private final ReoilPlan plan;
    private final int styles;
    private final int sets;
    private final double bowlers;

    Policies(Event event, ReoilPlan plan, int styles, int sets) {
        this.sets = sets;
        this.event = event;
        this.plan = plan;
        this.styles = styles;
        this.bowlers = event.squads().stream()
                .flatMap(squad -> squad.groups().stream())
                .mapToInt(group -> group.size())
                .average()
                .orElseThrow();
    }

    /** A best interval without its own uncertainty, and for a cycle what the other lengths cost. */
    record Best(double games, OptionalDouble costPerGame, Optional<Optimum> cycle, OptionalDouble controlBoards) {
        /** What costs about the same on the mean; empty where the basis knows no cycle. */
        Optional<Interval.Flat> flat() {
            return cycle.map(optimum -> optimum.flat(Interval.SAME_SHARE));
        }
    }

    AgeCurve curve(List<BlockPlaying> playings) {
        return new AgeCurve(playings, plan.games(), styles, sets);
    }

    /** What is best on the mean over the sets. */
    Map<Basis, Best> of(List<BlockPlaying> playings) {
        return of(curve(playings).spreadPins(), playings);
    }

    /** What is best under each set, by set. */
    List<Map<Basis, Best>> bySet(AgeCurve curve, List<BlockPlaying> playings) {
        return IntStream.range(0, curve.sets())
                .mapToObj(set -> of(
                        curve.spreadPins(set),
                        IntStream.range(0, playings.size())
                                .filter(number -> number % curve.sets() == set)
                                .mapToObj(playings::get)
                                .toList()))
                .toList();
    }

    /**
     * After how many games all lanes are to be oiled so that under the set of values where that is worst it costs least
     * above the best there (L. J. Savage, "The theory of statistical decision", 1951).
     */
    LeastRegret leastRegret(AgeCurve curve) {
        double[] regrets = new double[plan.games()];
        for (int set = 0; set < curve.sets(); set++) {
            Optimum there = CyclePolicy.growingLoss(allAtOnce(), loss(curve.spreadPins(set)));
            for (int games = 1; games <= regrets.length; games++) {
                regrets[games - 1] = Math.max(regrets[games - 1], there.rates().get(games - 1) - there.costPerGame());
            }
        }
        Optimum least = CyclePolicy.least(regrets);
        return new LeastRegret((int) least.games(), least.costPerGame());
    }

    private Map<Basis, Best> of(double[] spread, List<BlockPlaying> playings) {
        double[][] paths = AgeCurve.paths(playings, plan.games(), plan.limitBoards());
        Map<Basis, Best> best = new EnumMap<>(Basis.class);
        best.put(Basis.COST, best(CyclePolicy.growingLoss(allAtOnce(), loss(spread))));
        best.put(Basis.COST_LANE_BY_LANE, best(CyclePolicy.growingLoss(alone(), loss(spread))));
        best.put(Basis.THRESHOLD, threshold(spread));
        best.put(Basis.AGE, best(CyclePolicy.ageReplacement(survival(paths), alone(), unplanned())));
        best.put(Basis.CONDITION, condition(paths));
        return best;
    }

    /** What a change of scores costs in a pair's game, by age. */
    double[] loss(double[] spreadPins) {
        return Arrays.stream(spreadPins)
                .map(pins -> pins * bowlers * plan.costs().pin())
                .toArray();
    }

    double allAtOnce() {
        return new OilingCost(plan.costs(), event).pairAllAtOnce(Conditioning.STRIP_AND_OIL);
    }

    double alone() {
        return new OilingCost(plan.costs(), event).pairAlone(Conditioning.STRIP_AND_OIL);
    }

    private double unplanned() {
        return alone() * plan.costs().unplanned();
    }

    private static Best best(Optimum optimum) {
        return new Best(
                optimum.games(),
                OptionalDouble.of(optimum.costPerGame()),
                Optional.of(optimum),
                OptionalDouble.empty());
    }

    /** Games before the first in which scores have changed by more than the margin; at least one. */
    private Best threshold(double[] spread) {
        int games = 0;
        while (games < spread.length && spread[games] <= plan.marginPins()) {
            games++;
        }
        return new Best(Math.max(1, games), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty());
    }

    /** Share of lanes on which the windows have not moved by the limit after the first, the first two, ... games. */
    private double[] survival(double[][] paths) {
        double[] survival = new double[plan.games()];
        for (double[] path : paths) {
            for (int game = 0; game < survival.length && path[game] < plan.limitBoards(); game++) {
                survival[game] += 1.0 / paths.length;
            }
        }
        return survival;
    }

    private Best condition(double[][] paths) {
        int steps = (int) Math.floor(plan.limitBoards() / CONTROL_STEP_BOARDS + 1e-9);
        return IntStream.rangeClosed(1, Math.max(1, steps))
                .mapToObj(step -> ControlLimit.onPaths(
                        paths,
                        Math.min(plan.limitBoards(), step * CONTROL_STEP_BOARDS),
                        plan.limitBoards(),
                        alone(),
                        unplanned()))
                .reduce((best, next) -> next.costPerGame() < best.costPerGame() ? next : best)
                .map(limit -> new Best(
                        limit.meanGames(),
                        OptionalDouble.of(limit.costPerGame()),
                        Optional.empty(),
                        OptionalDouble.of(limit.control())))
                .orElseThrow();
    }
}
