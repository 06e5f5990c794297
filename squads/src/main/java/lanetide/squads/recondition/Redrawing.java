package lanetide.squads.recondition;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.rng.UniformRandomProvider;

/** Draws playings again, to tell what luck and the choice of sets leave open (bootstrap), and reads intervals off. */
final class Redrawing {
    /** How often playings are drawn again. */
    static final int TIMES = 200;

    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;

    private Redrawing() {}

    /** As many playings drawn again with replacement; where they went through sets, whole sets are drawn. */
    static <T> List<T> of(List<T> playings, int sets, UniformRandomProvider stream) {
        if (sets == 1) {
            return IntStream.range(0, playings.size())
                    .mapToObj(r -> playings.get(stream.nextInt(playings.size())))
                    .toList();
        }
        int[] drawnSets =
                IntStream.range(0, sets).map(draw -> stream.nextInt(sets)).toArray();
        List<T> drawn = new ArrayList<>();
        for (int from = 0; from + sets <= playings.size(); from += sets) {
            for (int set : drawnSets) {
                drawn.add(playings.get(from + set));
            }
        }
        return drawn;
    }

    /** Lower and upper end of nine in ten of some values, and of the estimate. */
    static double[] interval(double[] values, double estimate) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int last = sorted.length - 1;
        return new double[] {
            Math.min(estimate, sorted[(int) Math.floor(LOW * last)]),
            Math.max(estimate, sorted[(int) Math.ceil(HIGH * last)])
        };
    }
}
