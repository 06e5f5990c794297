package lanetide.squads.fit;

import java.util.List;

/**
 * How a fit is made.
 *
 * @param seed master seed of all chance
 * @param threads threads to play on, at least 1
 */
public record FitPlan(long seed, int threads) {
    /** By what the noise is inflated in each step; their inverses add up to one. */
    static final List<Double> INFLATIONS = List.of(7.0, 3.5, 1.75);

    /**
     * Checks the threads.
     *
     * @throws IllegalArgumentException if {@code threads < 1}
     */
    public FitPlan {
        if (threads < 1) {
            throw new IllegalArgumentException("threads are " + threads + ", but must be at least 1");
        }
    }
}
