package lanetide.squads.unknown;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Something published that a set of values must not contradict.
 *
 * @param id name in the tables
 * @param published what is published; the middle of a range
 * @param tolerance how far from it still agrees; half a range
 * @param scatter standard deviation of our own number from the luck of its seeds
 * @param allowance what the form of the model leaves out; stated before anything was looked at
 * @param side -1 where only less than published contradicts, 1 where only more does, 0 for both
 * @param heldOut whether nothing was chosen with it in view
 */
record Fact(
        String id, double published, double tolerance, double scatter, double allowance, int side, boolean heldOut) {
    /** What stands for a number that the model cannot give, as no line meets the pocket. */
    static final double NO_NUMBER = 10;

    /** How far ours is from it, in its errors (Craig and others 1997): at least 0. */
    double implausibility(double ours) {
        return implausibility(ours, published);
    }

    /** The same against another published number, for facts of a made truth. */
    double implausibility(double ours, double of) {
        if (Double.isNaN(ours)) {
            return NO_NUMBER;
        }
        double miss = side == 0 ? Math.abs(ours - of) : Math.max(0, side * (ours - of));
        return Math.min(NO_NUMBER, miss / error());
    }

    /** The sum of the squared implausibilities of all facts that may be looked at. */
    static double chiSquare(List<Fact> facts, double[] said) {
        return Arrays.stream(looked(facts, said)).map(miss -> miss * miss).sum();
    }

    /** The second largest implausibility of those facts. */
    static double secondLargest(List<Fact> facts, double[] said) {
        double[] all = looked(facts, said);
        Arrays.sort(all);
        return all[all.length - 2];
    }

    private static double[] looked(List<Fact> facts, double[] said) {
        return IntStream.range(0, said.length)
                .filter(f -> !facts.get(f).heldOut())
                .mapToDouble(f -> facts.get(f).implausibility(said[f]))
                .toArray();
    }

    /** Tolerance, scatter and allowance together. */
    double error() {
        return Math.sqrt(tolerance * tolerance + scatter * scatter + allowance * allowance);
    }
}
