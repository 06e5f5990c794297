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

    /** The means of the rounds under each set, by set, then by class. */
    double[][] meansBySet() {
        double[][] means = new double[sets][classes()];
        for (int c = 0; c < classes(); c++) {
            double[] ofClass = NestedMean.groupMeans(ofClass(c), sets);
            for (int s = 0; s < sets; s++) {
                means[s][c] = ofClass[s];
            }
        }
        return means;
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

    /** The rounds of one set. */
    Estimate ofSet(int set) {
        return new Estimate(
                IntStream.range(0, byRound.length)
                        .filter(round -> round % sets == set)
                        .mapToObj(round -> byRound[round])
                        .toArray(double[][]::new),
                1);
    }

    /** All rounds but one, of a study with the usual values. */
    Estimate without(int round) {
        double[][] others = new double[byRound.length - 1][];
        System.arraycopy(byRound, 0, others, 0, round);
        System.arraycopy(byRound, round + 1, others, round, others.length - round);
        return new Estimate(others, 1);
    }
}
