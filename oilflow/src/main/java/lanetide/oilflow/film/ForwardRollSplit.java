package lanetide.oilflow.film;

import lanetide.oilflow.Require;

/**
 * The split of forward roll coating: films leave two rolls in the ratio of their surface speeds to the power 0.65.
 *
 * <p>With lane speed 1 and ball surface speed r, the oil that enters is {@code T = h + r hb} and the lane keeps
 * {@code T / (1 + r^1.65)}. Source: Coyle, Macosko and Scriven, Film-splitting flows in forward roll coating, Journal
 * of Fluid Mechanics 171 (1986). A film thinner than the roughness is only partly reached; of the move towards that
 * split the share {@code 1 - exp(-k T)} happens, the coverage term of Walker and Fetsko, A concept of ink transfer in
 * printing, TAGA (1955).
 *
 * <p>Limits: the law is for smooth parallel surfaces with an attached meniscus; an axis at an angle to the travel and
 * films below the roughness lie outside it.
 */
public final class ForwardRollSplit implements FilmSplit {
    /** Coverage constant (1/um) of a usual cover: fitted; films of two units are just reached. */
    public static final double DEFAULT_COVERAGE_PER_UM = 4.037;

    private static final double EXPONENT = 0.65;
    private static final int STEPS = 1024;
    private static final double MAX_RATIO = 2;
    private static final double MAX_COVERAGE = 16;

    private final double coveragePerUm;
    private final double[] laneShare = new double[STEPS + 2];
    private final double[] covered = new double[STEPS + 2];

    /**
     * Tabulates the law.
     *
     * @param coveragePerUm coverage constant k (1/um), above 0 to 1000
     * @throws IllegalArgumentException if {@code coveragePerUm} lies outside its range
     */
    public ForwardRollSplit(double coveragePerUm) {
        this.coveragePerUm =
                Require.inRange(Require.positive(coveragePerUm, "coverage (1/um)"), "coverage (1/um)", 0, 1000);
        for (int i = 0; i < laneShare.length; i++) {
            laneShare[i] = exactLaneShare(MAX_RATIO * i / STEPS);
            covered[i] = -StrictMath.expm1(-MAX_COVERAGE * i / STEPS);
        }
    }

    @Override
    public double laneLeftUm(double laneUm, double broughtUm, double speedRatio) {
        double totalUm = laneUm + broughtUm;
        double splitUm = totalUm * interpolate(laneShare, speedRatio * (STEPS / MAX_RATIO));
        double reached = interpolate(covered, totalUm * coveragePerUm * (STEPS / MAX_COVERAGE));
        return laneUm + reached * (splitUm - laneUm);
    }

    /**
     * Share of the oil in the contact that stays on the lane, without the coverage term.
     *
     * @param speedRatio speed of the ball's surface over speed of the ball, at least 0
     * @return {@code 1 / (1 + r^1.65)}
     */
    public static double exactLaneShare(double speedRatio) {
        return 1 / (1 + StrictMath.pow(speedRatio, 1 + EXPONENT));
    }

    private static double interpolate(double[] table, double position) {
        double inside = position < STEPS ? position : STEPS;
        int i = (int) inside;
        return table[i] + (inside - i) * (table[i + 1] - table[i]);
    }
}
