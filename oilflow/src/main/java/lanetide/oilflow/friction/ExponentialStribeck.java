package lanetide.oilflow.friction;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.lane.LaneSurface;

/**
 * The exponential passage from dry to fluid friction along a Stribeck curve.
 *
 * <p>{@code mu = mu_fluid + (mu_dry - mu_fluid) exp(-(h / sigma)^n)}. Source: Bo and Pavelescu, The friction-speed
 * relation and its influence on the critical velocity of stick-slip motion, Wear 82 (1982), whose exponent lies between
 * 0.5 and 1, and 2 for a bell curve; reviewed in Andersson, Soderberg and Bjorklund, Friction models for sliding dry,
 * boundary and mixed lubricated contacts, Tribology International 40 (2007); form from memory. They write it over the
 * sliding speed, which carries the film into the contact. A lane is starved: its film is what was laid there, whatever
 * the speed, so the film itself stands in the speed's place. With the exponent 1 it is also the load on peaks whose
 * heights are distributed exponentially (Greenwood and Williamson, Contact of nominally flat surfaces, Proceedings of
 * the Royal Society A 295, 1966).
 *
 * <p>Not the usual law, for two reasons. Its tail is too short: a few roughnesses of oil are as good as any more, so
 * thinned heads would move no ball until they were nearly bare, against the trade's experience;
 * {@link MixedLubrication} falls with a power of the film and keeps a thick film worth something. And exponential
 * heights are a rough picture of real surfaces (Polycarpou and Etsion, Analytical approximations in modeling contacting
 * rough surfaces, Journal of Tribology 121, 1999). It serves to see which results hang on the shape of the passage.
 * Limits: films of a starved contact; it costs an exponential in each row, so shots run slower by more than half.
 *
 * @param dry coefficient on a clean lane, 0.02 to 0.5
 * @param fluid coefficient under a thick film, 0 to {@code dry}
 * @param sigmaUm film at which the passage is 63 % done (um), above 0
 * @param exponent sharpness of the passage n, 0.5 to 2
 */
public record ExponentialStribeck(double dry, double fluid, double sigmaUm, double exponent) implements FrictionLaw {
    /** Share of the measured roughness against which the film is measured (assumption). */
    public static final double ROUGHNESS_SHARE = 0.4;

    /** Exponent for peaks with exponentially distributed heights. */
    public static final double DEFAULT_EXPONENT = 1;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public ExponentialStribeck {
        Require.inRange(dry, "dry friction", 0.02, 0.5);
        Require.inRange(fluid, "fluid friction", 0, dry);
        Require.positive(sigmaUm, "composite roughness (um)");
        Require.inRange(exponent, "exponent of the passage", 0.5, 2);
    }

    /**
     * The law for a cover on a surface, with the ends of the usual law.
     *
     * @param surface the lane
     * @param cover the ball
     * @param values those of the usual law; the share of the roughness is as much above or below
     *     {@link #ROUGHNESS_SHARE} as theirs is above or below its own usual value
     * @return dry and fluid friction as {@link MixedLubrication#between} has them
     */
    public static ExponentialStribeck between(LaneSurface surface, Coverstock cover, FrictionValues values) {
        MixedLubrication usual = MixedLubrication.between(surface, cover, values);
        double share = ROUGHNESS_SHARE * (values.loadedShare() / FrictionValues.USUAL.loadedShare());
        double sigmaUm = share * StrictMath.hypot(surface.roughnessUm(), cover.roughnessUm());
        return new ExponentialStribeck(usual.dry(), usual.fluid(), sigmaUm, DEFAULT_EXPONENT);
    }

    @Override
    public double coefficient(double filmUm) {
        double share = filmUm / sigmaUm;
        // The first power is the number itself, and a power costs more than all the rest of a row.
        return fluid + (dry - fluid) * StrictMath.exp(-(exponent == 1 ? share : StrictMath.pow(share, exponent)));
    }
}
