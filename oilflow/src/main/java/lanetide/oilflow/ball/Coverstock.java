package lanetide.oilflow.ball;

import lanetide.oilflow.Require;

/**
 * The shell of a ball and how its track migrates.
 *
 * @param id name by which scenarios choose it
 * @param frictionFactor dry friction relative to a medium cover, 0.3 to 1.6
 * @param roughnessUm roughness Ra (um), 0.05 to 4. The governing body limits a ball to 1.65 um (65 microinch) when made
 *     (USBC specification in force from April 2009); a ball sanded later may be rougher
 * @param flareOverlap share of a revolution's contact strip that the next revolution runs over again, 0 (full flare) to 1
 *     (none)
 * @param absorptionS time in which the cover takes in 63 % of the oil on it (s), above 0; {@code Double.MAX_VALUE} for
 *     none. The governing body asks for at least 135 s from a drop's laying to its vanishing (USBC, from August 2020)
 * @param source where the values come from, or {@code assumption}
 */
public record Coverstock(
        String id, double frictionFactor, double roughnessUm, double flareOverlap, double absorptionS, String source) {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range or a text is blank
     */
    public Coverstock {
        Require.named(id, "cover");
        Require.inRange(frictionFactor, "friction factor of cover " + id, 0.3, 1.6);
        Require.inRange(roughnessUm, "roughness (um) of cover " + id, 0.05, 4);
        Require.inRange(flareOverlap, "flare overlap of cover " + id, 0, 1);
        Require.positive(absorptionS, "absorption time (s) of cover " + id);
        Require.named(source, "source of cover " + id);
    }
}
