package lanetide.squads.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.IntStream;
import lanetide.oilflow.unknown.ValueSet;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Members that may be true, and what each says of the readings. Members of one law of friction are moved by themselves.
 *
 * @param sets the members
 * @param said what each says, with some luck; not written to
 */
record Ensemble(List<ValueSet> sets, List<double[]> said) {
    /** Members of a law for each number that sums up the readings, below which the law's members are not moved. */
    private static final int MEMBERS_A_NUMBER = 3;

    /** The places of the members of a law. */
    List<Integer> ofLaw(boolean other) {
        return IntStream.range(0, sets.size())
                .filter(i -> NormalScores.hasOtherLaw(sets.get(i)) == other)
                .boxed()
                .toList();
    }

    /** Whether a law has members enough for regressions on so many numbers. */
    boolean hasEnough(boolean other, int numbers) {
        return ofLaw(other).size() >= MEMBERS_A_NUMBER * numbers;
    }

    /** What the members of a law say, summed up. */
    List<double[]> along(Directions directions, boolean other) {
        return ofLaw(other).stream().map(i -> directions.along(said.get(i))).toList();
    }

    /** The members after a step, each law by itself. */
    List<ValueSet> moved(Directions directions, double[] observed, RealMatrix noise, DoubleSupplier normal) {
        List<ValueSet> moved = new ArrayList<>(sets);
        double[] readings = directions.along(observed);
        RealMatrix alongNoise = directions.along(noise);
        for (boolean law : new boolean[] {false, true}) {
            List<Integer> at = ofLaw(law);
            if (!hasEnough(law, directions.count())) {
                continue;
            }
            double[][] scores =
                    at.stream().map(i -> NormalScores.of(sets.get(i))).toArray(double[][]::new);
            double[][] ours = along(directions, law).toArray(double[][]::new);
            double[][] next = EnsembleSmoother.step(scores, ours, readings, alongNoise, normal);
            for (int i = 0; i < next.length; i++) {
                moved.set(at.get(i), NormalScores.moved(sets.get(at.get(i)), next[i]));
            }
        }
        return moved;
    }
}
