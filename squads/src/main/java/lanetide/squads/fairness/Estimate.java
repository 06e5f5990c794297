package lanetide.squads.fairness;

import java.util.Arrays;
import lanetide.des.stats.Tally;

/**
 * Estimates of the classes of one kind, round by round. Rounds are independent of each other; their mean is the
 * estimate, and their scatter its error.
 *
 * @param byRound pins a game by round, then by class
 */
@SuppressWarnings("ArrayRecordComponent") // never compared
record Estimate(double[][] byRound) {
    int classes() {
        return byRound[0].length;
    }

    int rounds() {
        return byRound.length;
    }

    /** One class over the rounds. */
    Tally tally(int index) {
        Tally tally = new Tally("advantage");
        for (double[] round : byRound) {
            tally.add(round[index]);
        }
        return tally;
    }

    /** The means by class. */
    double[] means() {
        double[] means = new double[classes()];
        for (int c = 0; c < means.length; c++) {
            means[c] = tally(c).mean();
        }
        return means;
    }

    /** The standard errors by class. */
    double[] standardErrors() {
        double[] errors = new double[classes()];
        for (int c = 0; c < errors.length; c++) {
            errors[c] = tally(c).standardError();
        }
        return errors;
    }

    /** One class, round by round. */
    double[] ofClass(int index) {
        return Arrays.stream(byRound).mapToDouble(round -> round[index]).toArray();
    }

    /** The first rounds. */
    Estimate first(int rounds) {
        return new Estimate(Arrays.copyOf(byRound, rounds));
    }

    /** All rounds but one. */
    Estimate without(int round) {
        double[][] others = new double[byRound.length - 1][];
        System.arraycopy(byRound, 0, others, 0, round);
        System.arraycopy(byRound, round + 1, others, round, others.length - round);
        return new Estimate(others);
    }
}
