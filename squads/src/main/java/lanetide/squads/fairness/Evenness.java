package lanetide.squads.fairness;

import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import lanetide.des.stats.Inequality;

/**
 * How evenly expected advantages are spread over the groups, after the noise of estimating has been taken out. Indices
 * are of each group's advantage over the worst placed group, since advantages themselves add up to zero; of raw scores
 * they would always be close to even.
 *
 * @param spreadPins largest less smallest advantage (pins a game); it is also the largest envy, what the worst placed
 *     group would gain in the place of the best
 * @param meanEnvyPins what a group would gain on average in the place of the best (pins a game)
 * @param jain Jain's index, from 1 over the number of groups (one group has it all) to 1 (even)
 * @param gini Gini's coefficient, from 0 (even) upwards
 */
public record Evenness(double spreadPins, double meanEnvyPins, double jain, double gini) {
    static Evenness of(Estimate groups) {
        return groups.sets() == 1 ? of(groups.means(), groups.standardErrors()) : of(groups, groups.luckVariance());
    }

    /**
     * The mean over the sets of values of how even each is, since under one set another group may be worst placed than
     * under the next, and on the mean all would look even.
     */
    static Evenness of(Estimate groups, double luckVariance) {
        return mean(bySet(groups, luckVariance));
    }

    /** How even each set of values makes it. */
    static List<Evenness> bySet(Estimate groups, double luckVariance) {
        return Arrays.stream(groups.likelyBySet(luckVariance))
                .map(Evenness::ofLikely)
                .toList();
    }

    private static Evenness mean(List<Evenness> all) {
        return new Evenness(
                mean(all, Evenness::spreadPins),
                mean(all, Evenness::meanEnvyPins),
                mean(all, Evenness::jain),
                mean(all, Evenness::gini));
    }

    private static double mean(List<Evenness> all, ToDoubleFunction<Evenness> of) {
        return all.stream().mapToDouble(of).average().orElseThrow();
    }

    private static Evenness of(double[] means, double[] errors) {
        return ofLikely(Shrinkage.of(means, errors, 1).apply(means, errors));
    }

    private static Evenness ofLikely(double[] likely) {
        double least = Arrays.stream(likely).min().orElseThrow();
        double[] overWorst = Arrays.stream(likely).map(value -> value - least).toArray();
        double spread = Arrays.stream(overWorst).max().orElseThrow();
        double mean = Arrays.stream(overWorst).average().orElseThrow();
        boolean even = spread == 0;
        return new Evenness(
                spread, spread - mean, even ? 1 : Inequality.jain(overWorst), even ? 0 : Inequality.gini(overWorst));
    }
}
