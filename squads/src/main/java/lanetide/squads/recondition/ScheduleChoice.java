package lanetide.squads.recondition;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import lanetide.des.random.RandomStreams;
import lanetide.squads.machines.MachinePlan;
import lanetide.squads.machines.OilingCost;
import lanetide.squads.model.Centre;
import lanetide.squads.model.Conditioning;
import lanetide.squads.model.Event;
import org.apache.commons.rng.UniformRandomProvider;

/** The cheapest oilings of an event, from a set of playings. */
final class ScheduleChoice {
    private static final double MS_PER_HOUR = 3_600_000;

    private final Event event;
    private final ReoilPlan plan;
    private final int styles;
    private final int sets;
    private final OilingCost oiling;

    ScheduleChoice(Event event, ReoilPlan plan, int styles, int sets) {
        this.event = event;
        this.plan = plan;
        this.styles = styles;
        this.sets = sets;
        this.oiling = new OilingCost(plan.costs(), event);
    }

    OilingSchedules of(List<List<BlockPlaying>> playings, int mostOilings) {
        int most = Math.min(mostOilings, squads());
        SquadLosses losses = new SquadLosses(playings, styles, sets);
        Stretches.Cost cost = cost(losses::pinGames);
        List<List<Integer>> choices = choices(cost, most);
        Optimum optimum = optimum(choices, cost);
        List<Stretches.Cost> redrawn = redrawn(playings);
        List<Stretches.Cost> possible = sets == 1
                ? redrawn
                : IntStream.range(0, losses.sets())
                        .mapToObj(set -> cost(losses.under(set)::pinGames))
                        .toList();
        int best = (int) optimum.games();
        double[] number = Redrawing.interval(
                possible.stream()
                        .mapToDouble(one -> optimum(choices(one, most), one).games())
                        .toArray(),
                best);
        return new OilingSchedules(
                plan.replications(),
                sets,
                schedule(EventOiling.planned(event), losses, possible),
                choices.stream()
                        .map(choice -> schedule(choice, losses, possible))
                        .toList(),
                best,
                (int) number[0],
                (int) number[1],
                optimum.notShownToCostMore(
                        redrawn.stream()
                                .map(one -> optimum(choices, one).rates())
                                .toList(),
                        Interval.SAME_SHARE),
                sameSquads(choices.get(best - 1), redrawn));
    }

    private int squads() {
        return event.squads().size();
    }

    private List<Stretches.Cost> redrawn(List<List<BlockPlaying>> playings) {
        UniformRandomProvider stream = new RandomStreams(plan.seed()).stream("schedule/bootstrap");
        return IntStream.range(0, Redrawing.TIMES)
                .mapToObj(i -> new SquadLosses(Redrawing.of(playings, sets, stream), styles, sets))
                .map(losses -> cost(losses::pinGames))
                .toList();
    }

    /** Oiling once, and cleaning the ends of lanes where that is planned and they are not oiled. */
    private double machines(int start, int end) {
        return oiling.before(start, Conditioning.STRIP_AND_OIL)
                + IntStream.range(start + 1, end)
                        .filter(squad -> event.squads().get(squad).conditioning() == Conditioning.CLEAN_ENDS)
                        .mapToDouble(oiling::before)
                        .sum();
    }

    /** Oiling once, and playing a stretch on it; worked out once for all stretches. */
    private Stretches.Cost cost(Stretches.Cost pinGames) {
        double[][] costs = new double[squads()][squads() + 1];
        for (int start = 0; start < squads(); start++) {
            for (int end = start + 1; end <= squads(); end++) {
                costs[start][end] = machines(start, end) + plan.costs().pin() * pinGames.of(start, end);
            }
        }
        return (start, end) -> costs[start][end];
    }

    /** The cheapest choices with one, two, ... oilings. */
    private List<List<Integer>> choices(Stretches.Cost cost, int most) {
        return IntStream.rangeClosed(1, most)
                .mapToObj(oilings -> Stretches.cheapest(squads(), oilings, cost))
                .toList();
    }

    /** The best number of oilings, and what each number costs. */
    private Optimum optimum(List<List<Integer>> choices, Stretches.Cost cost) {
        return CyclePolicy.least(choices.stream()
                .mapToDouble(choice -> Stretches.sum(choice, squads(), cost))
                .toArray());
    }

    private double sameSquads(List<Integer> choice, List<Stretches.Cost> redrawn) {
        return redrawn.stream()
                        .filter(cost -> Stretches.cheapest(squads(), choice.size(), cost)
                                .equals(choice))
                        .count()
                / (double) redrawn.size();
    }

    private OilingSchedule schedule(List<Integer> choice, SquadLosses losses, List<Stretches.Cost> possible) {
        double pinGames = Stretches.sum(choice, squads(), losses::pinGames);
        double machines = Stretches.sum(choice, squads(), this::machines);
        double[] interval = Redrawing.interval(
                possible.stream()
                        .mapToDouble(cost -> Stretches.sum(choice, squads(), cost))
                        .toArray(),
                machines + plan.costs().pin() * pinGames);
        Centre centre = event.centre();
        double hours = centre.machines().most()
                * MachinePlan.of(centre.machines(), centre.laneNumbers(), Conditioning.STRIP_AND_OIL)
                        .durationMs()
                / MS_PER_HOUR;
        int worst = IntStream.range(0, squads())
                .boxed()
                .max(Comparator.comparingDouble(squad -> losses.spreadPins(squad, oiledBefore(choice, squad))))
                .orElseThrow();
        return new OilingSchedule(
                choice,
                machines,
                plan.costs().pin() * pinGames,
                interval[0],
                interval[1],
                choice.size() * litres(),
                choice.size() * hours,
                spreadPins(choice, losses),
                worst,
                losses.spreadPins(worst, oiledBefore(choice, worst)),
                paybacks(choice, losses));
    }

    private double litres() {
        return event.centre().laneNumbers().size() * event.pattern().volumeMl() / 1000;
    }

    /** Before which squad the oil was laid that a squad plays on. */
    private static int oiledBefore(List<Integer> choice, int squad) {
        return choice.stream()
                .filter(start -> start <= squad)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    private double spreadPins(List<Integer> choice, SquadLosses losses) {
        double squares = 0;
        double games = 0;
        for (int squad = 0; squad < squads(); squad++) {
            double pins = losses.spreadPins(squad, oiledBefore(choice, squad));
            squares += losses.games(squad) * pins * pins;
            games += losses.games(squad);
        }
        return Math.sqrt(squares / games);
    }

    private List<OilingSchedule.Payback> paybacks(List<Integer> choice, SquadLosses losses) {
        return IntStream.range(1, choice.size())
                .mapToObj(i -> payback(
                        choice.get(i - 1), choice.get(i), i + 1 < choice.size() ? choice.get(i + 1) : squads(), losses))
                .toList();
    }

    /** What an oiling saves in the squads up to the next, against the oil that was laid before it. */
    private OilingSchedule.Payback payback(int before, int start, int end, SquadLosses losses) {
        double[] saved = IntStream.range(start, end)
                .mapToDouble(squad -> plan.costs().pin()
                        * losses.games(squad)
                        * (losses.spreadPins(squad, before) - losses.spreadPins(squad, start)))
                .toArray();
        int payer = IntStream.range(0, saved.length)
                .boxed()
                .max(Comparator.comparingDouble(squad -> saved[squad]))
                .orElseThrow();
        return new OilingSchedule.Payback(
                start,
                oiling.before(start, Conditioning.STRIP_AND_OIL),
                Arrays.stream(saved).sum(),
                start + payer,
                saved[payer]);
    }
}
