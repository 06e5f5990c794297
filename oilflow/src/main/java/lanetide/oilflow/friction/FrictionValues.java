package lanetide.oilflow.friction;

import lanetide.oilflow.Require;

/**
 * The values of friction that belong neither to a surface nor to a cover.
 *
 * @param fluid coefficient under a thick film, 0 to 0.05
 * @param loadedShare share of the measured roughness that stands up under the ball's pressure, above 0 to 1
 */
public record FrictionValues(double fluid, double loadedShare) {
    /** The values used where nobody sets others. */
    public static final FrictionValues USUAL =
            new FrictionValues(MixedLubrication.DEFAULT_FLUID, MixedLubrication.LOADED_ROUGHNESS_SHARE);

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public FrictionValues {
        Require.inRange(fluid, "fluid friction", 0, 0.05);
        Require.inRange(Require.positive(loadedShare, "share of the roughness"), "share of the roughness", 0, 1);
    }
}
