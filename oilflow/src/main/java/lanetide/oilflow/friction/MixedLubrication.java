package lanetide.oilflow.friction;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.lane.LaneSurface;

/**
 * Mixed lubrication: the peaks of the roughness carry less of the load as the film grows.
 *
 * <p>{@code mu = mu_fluid + (mu_dry - mu_fluid) / (1 + h / sigma)} with the composite roughness sigma. Source: the
 * load-sharing blend used after Olver and Spikes, Prediction of traction in elastohydrodynamic lubrication (1998), from
 * memory, whose exponent of {@code 1 + h / sigma} is about 2; here it is 1, because thinned heads then move a ball
 * (chosen: see the module's README). Load sharing itself: Johnson, Greenwood and Poon, A simple theory of asperity
 * contact in elastohydrodynamic lubrication, Wear 19 (1972). Coulomb friction was found to describe bowling balls
 * better than a viscous law (UC Davis Sports Biomechanics Laboratory, Bowling dynamics).
 *
 * @param dry coefficient on a clean lane, 0.02 to 0.5
 * @param fluid coefficient under a thick film, 0 to {@code dry}
 * @param sigmaUm composite roughness that the film is measured against (um), above 0
 */
public record MixedLubrication(double dry, double fluid, double sigmaUm) implements FrictionLaw {
    /**
     * Coefficient under a thick film (chosen, with the other values; published oiled values are 0.02 to 0.06 on
     * average).
     */
    public static final double DEFAULT_FLUID = 0.003717;

    /** Share of the measured roughness that stands up under the ball's pressure (chosen, with the other values). */
    public static final double LOADED_ROUGHNESS_SHARE = 0.05411;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public MixedLubrication {
        Require.inRange(dry, "dry friction", 0.02, 0.5);
        Require.inRange(fluid, "fluid friction", 0, dry);
        Require.positive(sigmaUm, "composite roughness (um)");
    }

    /**
     * The law for a cover on a surface.
     *
     * @param surface the lane
     * @param cover the ball
     * @param values friction under a thick film, and how much of the roughness stands up
     * @return dry friction is the surface's times the cover's factor, roughness their root sum of squares
     */
    public static MixedLubrication between(LaneSurface surface, Coverstock cover, FrictionValues values) {
        double roughnessUm = StrictMath.hypot(surface.roughnessUm(), cover.roughnessUm());
        return new MixedLubrication(
                surface.dryFriction() * cover.frictionFactor(), values.fluid(), values.loadedShare() * roughnessUm);
    }

    @Override
    public double coefficient(double filmUm) {
        return fluid + (dry - fluid) * sigmaUm / (sigmaUm + filmUm);
    }
}
