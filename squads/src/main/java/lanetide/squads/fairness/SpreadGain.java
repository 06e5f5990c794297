package lanetide.squads.fairness;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import lanetide.des.stats.ConfidenceInterval;
import lanetide.des.stats.NestedMean;

/**
 * How much smaller a change makes the largest difference between two groups' advantages, from a study of the event and
 * one of the changed event whose rounds met the same luck and the same values. Under sets of values it is the mean of
 * the gains under each. With one set a round's part is its pseudo-value (J. W. Tukey's jackknife; B. Efron and C.
 * Stein, "The jackknife estimate of variance", 1981).
 *
 * @param errorPins standard error of the gain, with luck and what is not known (pins a game)
 * @param ci90 interval of the gain
 * @param bySet gain under each set of values, with its luck (pins a game); a single one if all values were as usual
 * @param shownShare share of the sets in which there is a gain; luck alone would give one in half of them. With one set
 *     1 if the gain exceeds its luck (one-sided, 95 %), else 0
 */
public record SpreadGain(double errorPins, ConfidenceInterval ci90, List<Double> bySet, double shownShare) {
    private static final double LEVEL = 0.9;
    /** Standard errors beyond which a gain is shown: the 95 % point of the normal distribution. */
    private static final double SHOWN_ERRORS = 1.645;
    /** Fewest rounds for a jackknife. */
    private static final int MIN_ROUNDS = 3;

    /** Copies the list. */
    public SpreadGain {
        bySet = List.copyOf(bySet);
    }

    /** The same gain on another scale. */
    SpreadGain times(double scale) {
        return new SpreadGain(
                scale * errorPins,
                new ConfidenceInterval(scale * ci90.low(), scale * ci90.high(), LEVEL),
                bySet.stream().map(gain -> scale * gain).toList(),
                shownShare);
    }

    /** Nothing changed, nothing gained, whatever is true. */
    static SpreadGain none(int sets) {
        return new SpreadGain(0, new ConfidenceInterval(0, 0, LEVEL), Collections.nCopies(sets, 0.0), 0);
    }

    /** From the groups of both studies over the same rounds, which go through the same sets, more than one. */
    static SpreadGain underSets(Estimate before, Estimate after, double luckVariance) {
        int sets = Math.min(before.sets(), after.sets());
        List<Evenness> was = Evenness.bySet(before, luckVariance);
        List<Evenness> is = Evenness.bySet(after, luckVariance);
        double[] gains = IntStream.range(0, sets)
                .mapToDouble(s -> was.get(s).spreadPins() - is.get(s).spreadPins())
                .toArray();
        NestedMean found = NestedMean.of(gains, sets);
        long shown = Arrays.stream(gains).filter(gain -> gain > 0).count();
        return new SpreadGain(
                found.truth().standardError(),
                found.truth().interval(LEVEL),
                Arrays.stream(gains).boxed().toList(),
                (double) shown / sets);
    }

    /** From the groups of both studies over the same rounds, all values as usual; empty for fewer than three. */
    static Optional<SpreadGain> of(Estimate before, Estimate after) {
        int rounds = before.rounds();
        if (rounds < MIN_ROUNDS) {
            return Optional.empty();
        }
        double all = gain(before, after);
        double[] pseudo = new double[rounds];
        for (int r = 0; r < rounds; r++) {
            pseudo[r] = rounds * all - (rounds - 1) * gain(before.without(r), after.without(r));
        }
        NestedMean found = NestedMean.of(pseudo, 1);
        double luck = SHOWN_ERRORS * found.luck().standardError();
        return Optional.of(new SpreadGain(
                found.truth().standardError(),
                found.truth().interval(LEVEL),
                List.of(found.mean()),
                found.mean() > luck ? 1 : 0));
    }

    private static double gain(Estimate before, Estimate after) {
        return Evenness.of(before).spreadPins() - Evenness.of(after).spreadPins();
    }

    /** The gain under the set in which it is least (pins a game). */
    public double worstPins() {
        return Collections.min(bySet);
    }

    /** The gain that half of the sets reach (pins a game). */
    public double middlePins() {
        List<Double> sorted = bySet.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
