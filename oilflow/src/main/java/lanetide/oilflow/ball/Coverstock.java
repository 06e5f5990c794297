package lanetide.oilflow.ball;

import lanetide.oilflow.Require;

/**
 * The shell of a ball and how its track migrates.
 *
 * @param id name by which scenarios choose it
 * @param frictionFactor dry friction relative to a medium cover, 0.3 to 1.6
 * @param roughnessUm roughness Ra (um), 0.05 to 4. {@link BallLimit#ROUGHNESS} holds for a ball as it is made; a bowler
 *     may sand it later, and 4 um is what a grain of 100 um leaves, rougher than any pad for balls
 * @param flareOverlap share of a revolution's contact strip that the next revolution runs over again, 0 (full flare) to
 *     1 (none)
 * @param absorptionS time in which the cover takes in 63 % of the oil on it (s), above 0; {@code Double.MAX_VALUE} for
 *     none. See {@link BallLimit#ABSORPTION}
 * @param source where the values come from, or {@code assumption}
 * @param core the ball it is cast on
 */
public record Coverstock(
        String id,
        double frictionFactor,
        double roughnessUm,
        double flareOverlap,
        double absorptionS,
        String source,
        BallCore core) {
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

    /**
     * A cover on a ball of usual size and core.
     *
     * @param id name by which scenarios choose it
     * @param frictionFactor as above
     * @param roughnessUm as above
     * @param flareOverlap as above
     * @param absorptionS as above
     * @param source as above
     */
    public Coverstock(
            String id,
            double frictionFactor,
            double roughnessUm,
            double flareOverlap,
            double absorptionS,
            String source) {
        this(id, frictionFactor, roughnessUm, flareOverlap, absorptionS, source, BallCore.DEFAULT);
    }

    /**
     * Whether the track migrates so far that most of it meets the lane dry, as on reactive balls.
     *
     * @return true if {@code flareOverlap < 0.5}
     */
    public boolean flares() {
        return flareOverlap < 0.5;
    }

    /**
     * The same ball with another finish.
     *
     * @param newId name of the ball so finished
     * @param newRoughnessUm its roughness Ra (um), 0.05 to 4
     * @param newSource where that comes from, beside the ball's own source
     * @return the ball
     */
    public Coverstock finished(String newId, double newRoughnessUm, String newSource) {
        String sources = source.equals(newSource) ? source : source + "; finish: " + newSource;
        return new Coverstock(newId, frictionFactor, newRoughnessUm, flareOverlap, absorptionS, sources, core);
    }
}
