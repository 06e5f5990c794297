package lanetide.squads.fairness;

import java.util.Arrays;
import java.util.stream.IntStream;
import lanetide.des.stats.NestedMean;

/**
 * Estimates of the classes of one kind, round by round. Rounds are independent of each other; their mean is the
 * estimate, and their scatter its error.
 *
 * @param byRound pins a game by round, then by class
 * @param sets sets of values that the rounds went through in turn, 1 to the number of rounds; 1 if all values were as
 *     usual
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Estimate(double[][] byRound, int sets) {
    int classes() {
        return byRound[0].length;
    }

    int rounds() {
        return byRound.length;
    }

    /** One class over the rounds and their sets. */
    NestedMean nested(int index) {
        return NestedMean.of(ofClass(index), sets);
    }

    /** The same, but as one set where luck cannot be told from what is not known. */
    private NestedMean luckKnown(int index) {
        return NestedMean.of(ofClass(index), rounds() > sets ? sets : 1);
    }

    /** The means by class. */
    double[] means() {
        return IntStream.range(0, classes())
                .mapToDouble(index -> nested(index).mean())
                .toArray();
    }

    /** The standard errors of these means by class: luck alone, where it can be told from what is not known. */
    double[] standardErrors() {
        return IntStream.range(0, classes())
                .mapToDouble(index -> luckKnown(index).luck().standardError())
                .toArray();
    }

    /**
     * What is likely to be true under each set, by set, then by class. Luck is taken out twice: of how a class differs
     * from the others over all sets, which all rounds tell, and of how it differs from itself under a set, which its
     * few rounds there tell.
     */
    double[][] likelyBySet(double luckVariance) {
        double[] errors = new double[classes()];
        Arrays.fill(errors, Math.sqrt(luckVariance / rounds()));
        double[] overall = Shrinkage.of(means(), errors, 1).apply(means(), errors);
        double[][] likely = new double[sets][classes()];
        for (int c = 0; c < classes(); c++) {
            double[] off = offMean(NestedMean.groupMeans(ofClass(c), sets));
            double[] errorsOfSets = new double[sets];
            Arrays.fill(errorsOfSets, Math.sqrt(luckVariance * (sets - 1) / rounds()));
            double[] likelyOff = Shrinkage.of(off, errorsOfSets, 1).apply(off, errorsOfSets);
            for (int s = 0; s < sets; s++) {
                likely[s][c] = overall[c] + likelyOff[s];
            }
        }
        return likely;
    }

    private static double[] offMean(double[] values) {
        double mean = Arrays.stream(values).average().orElseThrow();
        return Arrays.stream(values).map(value -> value - mean).toArray();
    }

    /** Variance of a round by luck, as a mean over the classes; with all else where it cannot be told apart. */
    double luckVariance() {
        return IntStream.range(0, classes())
                .mapToDouble(index -> luckKnown(index).within())
                .average()
                .orElseThrow();
    }

    /** One class, round by round. */
    double[] ofClass(int index) {
        return Arrays.stream(byRound).mapToDouble(round -> round[index]).toArray();
    }

    /** The first rounds. */
    Estimate first(int rounds) {
        return new Estimate(Arrays.copyOf(byRound, rounds), Math.min(sets, rounds));
    }

    /** All rounds but one, of a study with the usual values. */
    Estimate without(int round) {
        double[][] others = new double[byRound.length - 1][];
        System.arraycopy(byRound, 0, others, 0, round);
        System.arraycopy(byRound, round + 1, others, round, others.length - round);
        return new Estimate(others, 1);
    }
}
