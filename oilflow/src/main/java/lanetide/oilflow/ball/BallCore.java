package lanetide.oilflow.ball;

/**
 * A ball beneath its cover, as the rules measure it.
 *
 * @param radiusM radius (m), half of {@link BallLimit#DIAMETER}
 * @param gyrationRadiusM radius of gyration (m), see {@link BallLimit#GYRATION}
 * @param massKg mass (kg), above 2.5 and up to {@link BallLimit#WEIGHT}; it cancels out of the way to the pins, and
 *     says how far they turn the ball aside
 */
public record BallCore(double radiusM, double gyrationRadiusM, double massKg) {
    /** Lightest ball (kg): 6 lb, the lightest that is usually sold (common practice, no source), less a little. */
    public static final double MIN_MASS_KG = 2.5;

    /**
     * The ball that is meant where nothing is said: 27 in round as in the worked examples, radius of gyration 2.55 in,
     * 15 lb (common practice, no source).
     */
    public static final BallCore DEFAULT = new BallCore(0.1085, 2.55 * 0.0254, 15 * 0.45359237);

    /**
     * Checks the limits.
     *
     * @throws IllegalArgumentException if a value lies outside its limits
     */
    public BallCore {
        keep(BallLimit.DIAMETER, 2 * radiusM, "diameter (m)");
        keep(BallLimit.GYRATION, gyrationRadiusM, "radius of gyration (m)");
        keep(BallLimit.WEIGHT, massKg, "mass (kg)");
        if (massKg < MIN_MASS_KG) {
            throw new IllegalArgumentException(
                    "mass (kg) of a ball is " + massKg + "; it must be at least " + MIN_MASS_KG);
        }
    }

    private static void keep(BallLimit limit, double value, String name) {
        if (!limit.allows(value)) {
            throw new IllegalArgumentException(
                    name + " of a ball is " + value + "; it must be " + limit.words() + " (" + limit.source() + ")");
        }
    }
}
