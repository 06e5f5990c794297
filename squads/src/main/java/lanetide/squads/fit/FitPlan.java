package lanetide.squads.fit;

import java.util.List;

/**
 * How a fit is made.
 *
 * @param seed master seed of all chance
 * @param threads threads to play on, at least 1
 * @param inflations by what the noise is inflated in each step, at least one step; their inverses add up to one
 * @param checks whether the fitted sets play the days once more, so that readings can be set beside what they say
 */
public record FitPlan(long seed, int threads, List<Double> inflations, boolean checks) {
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
        this(seed, threads, TWO_STEPS, true);
    }

    /**
     * The same without a last look at the readings, in less time; the sets are the same.
     *
     * @return the plan
     */
    public FitPlan withoutChecks() {
        return new FitPlan(seed, threads, inflations, false);
    }

    /**
     * How often every member plays every day.
     *
     * @return playings
     */
    int playings() {
        return 1 + inflations.size() + (checks ? 1 : 0);
    }

    /**
     * A fit in one step, for answers on the day; readings are not set beside it.
     *
     * @param seed master seed of all chance
     * @param threads threads to play on, at least 1
     * @return the plan
     */
    public static FitPlan quick(long seed, int threads) {
        return new FitPlan(seed, threads, ONE_STEP, false);
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
