package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.IntConsumer;
import lanetide.des.random.RandomStreams;
import lanetide.oilflow.unknown.ValueSet;
import lanetide.squads.study.Playable;
import lanetide.squads.unknown.SpreadOrder;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.PermutationSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Fits the sets of values to what was measured. Every member plays the days with luck of its own, and is moved toward
 * the readings in a few steps; then the laws of friction are weighed by how well they foretold them.
 */
public final class Fit {
    /** Numbers that sum up the readings, at most. */
    private static final int MOST_DIRECTIONS = 10;

    /** Members of the usual law for each of them, at least. */
    private static final int MEMBERS_A_DIRECTION = 6;

    private final List<FitDay> days;
    private final RandomStreams streams;
    private final List<Double> inflations;
    private final boolean checks;
    private final Playings playings;
    private final double[] observed;
    private final RealMatrix ownError;
    private final UniformRandomProvider chance;

    private Fit(List<FitDay> days, Map<ValueSet, Playable> known, FitPlan plan, IntConsumer onDone) {
        this.days = List.copyOf(days);
        this.streams = new RandomStreams(plan.seed());
        this.inflations = plan.inflations();
        this.checks = plan.checks();
        this.playings = new Playings(this.days, known, plan, onDone);
        this.observed = Playings.join(days.stream().map(FitDay::observed).toList());
        this.ownError = blocks(days.stream().map(FitDay::ownError).toList());
        this.chance = streams.stream("fit/steps");
    }

    /**
     * Playings that a fit takes of each day, for telling how far it is.
     *
     * @param members members of the ensemble
     * @param days days with readings
     * @param plan how it is made
     * @return playings in all
     */
    public static int playings(int members, int days, FitPlan plan) {
        return members * days * plan.playings();
    }

    /**
     * Fits.
     *
     * @param days days with readings, at least one reading in all
     * @param prior members before, at least twenty, equally likely
     * @param plan how
     * @param onDone told the number of playings done so far
     * @return what is left
     * @throws IllegalArgumentException if no day has a reading
     */
    public static FitResult run(List<FitDay> days, List<ValueSet> prior, FitPlan plan, IntConsumer onDone) {
        return run(days, prior, Map.of(), plan, onDone);
    }

    /** The same where some sets are ready to be played under the laws of the days. */
    static FitResult run(
            List<FitDay> days, List<ValueSet> prior, Map<ValueSet, Playable> known, FitPlan plan, IntConsumer onDone) {
        if (days.stream().allMatch(day -> day.readings().isEmpty())) {
            throw new IllegalArgumentException("none of " + days.size() + " days has a reading");
        }
        return new Fit(days, known, plan, onDone).run(prior);
    }

    private FitResult run(List<ValueSet> prior) {
        List<List<List<double[]>>> twice = playings.playTwice(prior);
        Ensemble before = new Ensemble(prior, asTheyStand(twice, 0));
        List<double[]> again = asTheyStand(twice, 1);
        RealMatrix luck = LuckCovariance.of(rows(before.said()), rows(again));
        Directions directions = new Directions(means(before.said(), again), luck.add(ownError), most(before));
        double otherLaw = otherLaw(before, directions);
        DoubleSupplier normal = ZigguratSampler.NormalizedGaussian.of(chance)::sample;
        Ensemble moved = before;
        int step = 0;
        for (double inflation : inflations) {
            RealMatrix noise = ownError.scalarMultiply(inflation).add(luck.scalarMultiply(inflation - 1));
            List<ValueSet> sets = moved.moved(directions, observed, noise, normal);
            boolean last = ++step == inflations.size();
            moved = new Ensemble(sets, last ? List.of() : playings.play(sets));
        }
        List<Integer> chosen = chosen(moved, otherLaw, prior.size());
        return new FitReport(
                        days.stream().flatMap(day -> day.readings().stream()).toList(),
                        ownError,
                        days.stream().flatMap(day -> day.freshLanes().stream()).toList())
                .of(before, moved.sets(), chosen, said(moved.sets(), chosen), otherLaw, suspicions(twice));
    }

    /** What the chosen members say of the readings, if that is looked at; a member that is chosen often plays once. */
    private List<double[]> said(List<ValueSet> sets, List<Integer> chosen) {
        if (!checks) {
            return List.of();
        }
        List<Integer> which = chosen.stream().distinct().sorted().toList();
        List<double[]> said = playings.play(sets, which);
        return chosen.stream().map(one -> said.get(which.indexOf(one))).toList();
    }

    private static int most(Ensemble before) {
        return Math.max(1, Math.min(MOST_DIRECTIONS, before.ofLaw(false).size() / MEMBERS_A_DIRECTION));
    }

    /** What each member says of the readings of all days, the first or the second time. */
    private List<double[]> asTheyStand(List<List<List<double[]>>> twice, int time) {
        return twice.stream()
                .map(member -> {
                    List<double[]> said = new ArrayList<>();
                    for (int day = 0; day < days.size(); day++) {
                        said.add(days.get(day)
                                .suspicions()
                                .asTheyStand(member.get(time).get(day)));
                    }
                    return Playings.join(said);
                })
                .toList();
    }

    private List<Suspicion> suspicions(List<List<List<double[]>>> twice) {
        List<Suspicion> all = new ArrayList<>();
        for (int d = 0; d < days.size(); d++) {
            FitDay day = days.get(d);
            if (day.readings().isEmpty()) {
                continue;
            }
            List<double[]> clean = new ArrayList<>();
            NormalErrors errors = new NormalErrors(day.ownError(), streams.stream("fit/clean"));
            ofDay(twice, 1, d).forEach(said -> clean.add(day.suspicions().read(said, errors)));
            all.addAll(day.suspicions()
                    .foretold(ofDay(twice, 0, d), clean, day.ownError())
                    .suspicions(d, day.observed()));
        }
        return all;
    }

    private static List<double[]> ofDay(List<List<List<double[]>>> twice, int time, int day) {
        return twice.stream().map(member -> member.get(time).get(day)).toList();
    }

    private static double[][] rows(List<double[]> said) {
        return said.toArray(double[][]::new);
    }

    private static double[][] means(List<double[]> one, List<double[]> other) {
        double[][] means = new double[one.size()][];
        for (int member = 0; member < means.length; member++) {
            means[member] = one.get(member).clone();
            for (int r = 0; r < means[member].length; r++) {
                means[member][r] = (means[member][r] + other.get(member)[r]) / 2;
            }
        }
        return means;
    }

    /** The chance of the other law of friction after the readings; as before them where either has few members. */
    private double otherLaw(Ensemble before, Directions directions) {
        int usual = before.ofLaw(false).size();
        int other = before.ofLaw(true).size();
        if (!before.hasEnough(false, directions.count()) || !before.hasEnough(true, directions.count())) {
            return (double) other / (usual + other);
        }
        double odds = StrictMath.exp(evidence(before, directions, true) - evidence(before, directions, false));
        return other * odds / (usual + other * odds);
    }

    private double evidence(Ensemble before, Directions directions, boolean other) {
        return LawEvidence.logarithm(
                before.along(directions, other), directions.along(observed), directions.along(ownError));
    }

    /** So many members of each law as it deserves, drawn by lot; all of them again where there are too few. */
    private List<Integer> chosen(Ensemble moved, double otherLaw, int count) {
        int others = moved.ofLaw(true).isEmpty() ? 0 : (int) Math.round(count * otherLaw);
        List<Integer> chosen = new ArrayList<>();
        chosen.addAll(drawn(moved.ofLaw(false), moved.ofLaw(false).isEmpty() ? 0 : count - others));
        chosen.addAll(drawn(moved.ofLaw(true), others));
        return SpreadOrder.of(chosen.stream()
                        .map(i -> NormalScores.of(moved.sets().get(i)))
                        .toList())
                .stream()
                .map(chosen::get)
                .toList();
    }

    private List<Integer> drawn(List<Integer> from, int count) {
        List<Integer> drawn = new ArrayList<>();
        while (drawn.size() < count) {
            List<Integer> round = new ArrayList<>(from);
            shuffle(round);
            drawn.addAll(round.subList(0, Math.min(round.size(), count - drawn.size())));
        }
        return drawn;
    }

    private void shuffle(List<Integer> list) {
        int[] order = PermutationSampler.natural(list.size());
        PermutationSampler.shuffle(chance, order);
        List<Integer> was = List.copyOf(list);
        for (int i = 0; i < order.length; i++) {
            list.set(i, was.get(order[i]));
        }
    }

    private static RealMatrix blocks(List<RealMatrix> blocks) {
        int size = blocks.stream().mapToInt(RealMatrix::getRowDimension).sum();
        RealMatrix all = new Array2DRowRealMatrix(size, size);
        int at = 0;
        for (RealMatrix block : blocks) {
            all.setSubMatrix(block.getData(), at, at);
            at += block.getRowDimension();
        }
        return all;
    }
}
