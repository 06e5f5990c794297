package lanetide.oilflow.friction;

import lanetide.oilflow.ball.Coverstock;
import lanetide.oilflow.lane.LaneSurface;

/** The friction laws a scenario can choose from. Each takes its values from the cover and the surface. */
public enum FrictionModel {
    /** {@link MixedLubrication}, the usual one. */
    MIXED_LUBRICATION("mixed-lubrication") {
        @Override
        public FrictionLaw between(LaneSurface surface, Coverstock cover, FrictionValues values) {
            return MixedLubrication.between(surface, cover, values);
        }
    },
    /** {@link ExponentialStribeck}. */
    EXPONENTIAL_STRIBECK("exponential-stribeck") {
        @Override
        public FrictionLaw between(LaneSurface surface, Coverstock cover, FrictionValues values) {
            return ExponentialStribeck.between(surface, cover, values);
        }
    };

    /**
     * The thickest film that the laws were held to (units of oil): competitive patterns lay 70 to 120 units on the
     * heads (Thompson, Bowlers Journal, August 2015, p. 17). No friction of a ball on more was found published.
     */
    public static final double MOST_UNITS = 120;

    private final String id;

    FrictionModel(String id) {
        this.id = id;
    }

    /**
     * The name scenarios use.
     *
     * @return the name
     */
    public String id() {
        return id;
    }

    /**
     * The law of a contact.
     *
     * @param surface the lane
     * @param cover the ball
     * @param values the law's values
     * @return the law
     */
    public abstract FrictionLaw between(LaneSurface surface, Coverstock cover, FrictionValues values);

    /**
     * The law of a contact with the usual values.
     *
     * @param surface the lane
     * @param cover the ball
     * @return the law
     */
    public FrictionLaw between(LaneSurface surface, Coverstock cover) {
        return between(surface, cover, FrictionValues.USUAL);
    }
}
