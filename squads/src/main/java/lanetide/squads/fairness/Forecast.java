package lanetide.squads.fairness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Function;
import lanetide.des.random.RandomStreams;
import lanetide.des.stats.MeanEstimate;
import org.apache.commons.rng.sampling.distribution.NormalizedGaussianSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * How many rounds would decide. Given what is known, true advantages are drawn, from them what a longer study would
 * find, and the verdict rule is applied to that: the answer is the smallest length of study that decides with the
 * asked-for chance (assurance: A. O'Hagan, J. W. Stevens and M. J. Campbell, "Assurance in clinical trial design",
 * Pharmaceutical Statistics 4, 2005).
 */
final class Forecast {
    /** Drawn studies; what chance they decide with is known to about one in a hundred. */
    private static final int DRAWS = 1000;

    /**
     * The chance that is promised is 90 %; the rest allows for what the draws and the errors themselves leave
     * uncertain.
     */
    private static final double CHANCE = 0.93;

    /** Kinds with fewer classes do not show their own spread; that of all kinds together stands for it. */
    private static final int MIN_FOR_SHRINKAGE = 4;

    private static final double GROWTH = 1.25;
    private static final int MAX_TIMES = 1000;

    private final double marginPins;
    private final int rounds;
    private final int sets;
    private final List<Known> known = new ArrayList<>();

    /**
     * What is known of an advantage: the estimate, its error by luck, what no number of playings makes surer, and where
     * the mean over many playings may lie.
     */
    private record Known(double mean, double error, double unknown, double likely, double likelyError) {}

    Forecast(EffectEstimates found, double marginPins) {
        this.marginPins = marginPins;
        this.rounds = found.rounds();
        this.sets = found.sets();
        List<Estimate> estimates = List.copyOf(found.estimates().values());
        Shrinkage overall = Shrinkage.of(
                flat(estimates, Estimate::means), flat(estimates, Estimate::standardErrors), estimates.size());
        for (Estimate estimate : estimates) {
            boolean few = estimate.classes() < MIN_FOR_SHRINKAGE;
            learn(estimate, few ? overall : Shrinkage.of(estimate.means(), estimate.standardErrors(), 1));
        }
    }

    private static double[] flat(List<Estimate> estimates, Function<Estimate, double[]> of) {
        return estimates.stream()
                .flatMapToDouble(estimate -> Arrays.stream(of.apply(estimate)))
                .toArray();
    }

    private void learn(Estimate estimate, Shrinkage shrinkage) {
        double[] means = estimate.means();
        double[] errors = estimate.standardErrors();
        for (int c = 0; c < means.length; c++) {
            known.add(new Known(
                    means[c],
                    errors[c],
                    estimate.nested(c).withoutLuck().standardError(),
                    shrinkage.apply(means[c], errors[c]),
                    Math.sqrt(shrinkage.remainingVariance(errors[c]))));
        }
    }

    /**
     * Rounds in all. Where so little is known that no length is sure to decide, the advantages are taken to be what
     * they look like. Empty if not even a thousand times as many rounds would decide.
     */
    OptionalInt roundsToDecide(RandomStreams streams) {
        double[][][] draws = draws(streams);
        OptionalInt sure = roundsToDecide(draws, 1);
        return sure.isPresent() ? sure : roundsToDecide(draws, 0);
    }

    private OptionalInt roundsToDecide(double[][][] draws, double doubt) {
        for (double times = GROWTH; times <= MAX_TIMES; times *= GROWTH) {
            int all = (int) Math.ceil(rounds * times);
            if (chance(all, draws, doubt) >= CHANCE) {
                return OptionalInt.of(all);
            }
        }
        return OptionalInt.empty();
    }

    /** Two standard normal numbers for each advantage in each drawn study: for the truth, and for what is found. */
    private double[][][] draws(RandomStreams streams) {
        NormalizedGaussianSampler sampler = ZigguratSampler.NormalizedGaussian.of(streams.stream("fairness/forecast"));
        double[][][] draws = new double[DRAWS][known.size()][2];
        for (double[][] study : draws) {
            for (double[] effect : study) {
                effect[0] = sampler.sample();
                effect[1] = sampler.sample();
            }
        }
        return draws;
    }

    private double chance(int all, double[][][] draws, double doubt) {
        MeanEstimate standard = new MeanEstimate(0, 1, (sets == 1 ? all : sets) - 1.0);
        double fair = standard.interval(1 - 2 * VerdictRule.ALPHA).high();
        double unfair =
                standard.interval(1 - 2 * VerdictRule.ALPHA / known.size()).high();
        int decided = 0;
        for (double[][] study : draws) {
            decided += isDecided(study, all, fair, unfair, doubt) ? 1 : 0;
        }
        return (double) decided / DRAWS;
    }

    private boolean isDecided(double[][] study, int all, double fair, double unfair, double doubt) {
        double old = (double) rounds / all;
        boolean allFair = true;
        for (int i = 0; i < known.size(); i++) {
            Known effect = known.get(i);
            double truth = effect.likely() + doubt * effect.likelyError() * study[i][0];
            // The error of one round is error * sqrt(rounds); of the new ones alone it is that over sqrt(all - rounds).
            double newError = effect.error() * Math.sqrt(old / (1 - old));
            double found = old * effect.mean() + (1 - old) * (truth + newError * study[i][1]);
            double error = Math.sqrt(effect.error() * effect.error() * old + effect.unknown() * effect.unknown());
            if (Math.abs(found) - unfair * error > marginPins) {
                return true;
            }
            allFair &= Math.abs(found) + fair * error < marginPins;
        }
        return allFair;
    }
}
