package lanetide.squads.fit;

import java.util.List;

/**
 * How a fit is made.
 *
 * @param seed master seed of all chance
 * @param threads threads to play on, at least 1
 * @param inflations by what the noise is inflated in each step, at least one step; their inverses add up to one
 */
public record FitPlan(long seed, int threads, List<Double> inflations) {
    private static final List<Double> TWO_STEPS = List.of(3.0, 1.5);
    private static final List<Double> ONE_STEP = List.of(1.0);
    private static final double SUM_ERROR = 1e-9;

    /**
     * A fit in two steps, which follows readings that do not rise evenly with what is not known.
     *
     * @param seed master seed of all chance
     * @param threads threads to play on, at least 1
     */
    public FitPlan(long seed, int threads) {
        this(seed, threads, TWO_STEPS);
    }

    /**
     * A fit in one step, for answers on the day.
     *
     * @param seed master seed of all chance
     * @param threads threads to play on, at least 1
     * @return the plan
     */
    public static FitPlan quick(long seed, int threads) {
        return new FitPlan(seed, threads, ONE_STEP);
    }

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if {@code threads < 1}, or the inverses of the inflations do not add up to one
     */
    public FitPlan {
        inflations = List.copyOf(inflations);
        double sum = inflations.stream().mapToDouble(each -> 1 / each).sum();
        if (!(Math.abs(sum - 1) < SUM_ERROR)) {
            throw new IllegalArgumentException("inverses of inflations " + inflations + " add up to " + sum);
        }
        if (threads < 1) {
            throw new IllegalArgumentException("threads are " + threads + ", but must be at least 1");
        }
    }
}
