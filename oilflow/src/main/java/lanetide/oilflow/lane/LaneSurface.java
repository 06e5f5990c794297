package lanetide.oilflow.lane;

import lanetide.oilflow.Require;

/**
 * What the lane is made of, as far as the ball feels it.
 *
 * @param id name by which scenarios choose it
 * @param dryFriction coefficient of friction of a medium cover on the clean surface, 0.05 to 0.35
 * @param roughnessUm roughness Ra (um), 0.05 to 3
 * @param source where the two values come from, or {@code assumption}
 */
public record LaneSurface(String id, double dryFriction, double roughnessUm, String source) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range or a text is blank
     */
    public LaneSurface {
        Require.named(id, "surface");
        Require.inRange(dryFriction, "dry friction of surface " + id, 0.05, 0.35);
        Require.inRange(roughnessUm, "roughness (um) of surface " + id, 0.05, 3);
        Require.named(source, "source of surface " + id);
    }
}
