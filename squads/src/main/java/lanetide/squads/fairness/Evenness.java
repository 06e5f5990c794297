package lanetide.squads.fairness;

import java.util.Arrays;
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
        double[] means = groups.means();
        double[] errors = groups.standardErrors();
        double[] likely = Shrinkage.of(means, errors, 1).apply(means, errors);
        double least = Arrays.stream(likely).min().orElseThrow();
        double[] overWorst = Arrays.stream(likely).map(value -> value - least).toArray();
        double spread = Arrays.stream(overWorst).max().orElseThrow();
        double mean = Arrays.stream(overWorst).average().orElseThrow();
        boolean even = spread == 0;
        return new Evenness(
                spread, spread - mean, even ? 1 : Inequality.jain(overWorst), even ? 0 : Inequality.gini(overWorst));
    }
}
