package lanetide.oilflow.ball;

/**
 * What the governing body lets a ball be when it is made. A bowler may sand a ball later; everything else stays with
 * it.
 */
public enum BallLimit {
    /** Diameter (m). */
    DIAMETER(8.500 * BallLimit.INCH_M, 8.595 * BallLimit.INCH_M, "8.500 to 8.595 in", "USBC specification of 2012"),
    /** Mass (kg). */
    WEIGHT(0, 16.00 * BallLimit.POUND_KG, "at most 16.00 lb", "USBC specification of 2012"),
    /** Radius of gyration (m). */
    GYRATION(
            2.46 * BallLimit.INCH_M, 2.80 * BallLimit.INCH_M, "2.46 to 2.80 in", "USBC, balls approved from July 2010"),
    /** Largest difference between radii of gyration about two axes (m). */
    DIFFERENTIAL(0, 0.060 * BallLimit.INCH_M, "at most 0.060 in", "USBC, from February 2005"),
    /** Coefficient of friction on a clean lane. */
    FRICTION(0, 0.32, "at most 0.32", "USBC specification of 2012"),
    /** Roughness Ra of any one ball (um). */
    ROUGHNESS(0, 1.651, "at most 1.65 um (65 microinch)", "USBC, from April 2009"),
    /** Mean roughness Ra of the balls of one model (um). */
    MODEL_ROUGHNESS(0, 1.27, "on average at most 1.27 um (50 microinch)", "USBC, from April 2009"),
    /** Time from laying a drop of oil on the cover to its vanishing (s). */
    ABSORPTION(135, Double.MAX_VALUE, "at least 2 min 15 s", "USBC, from August 2020");

    private static final double INCH_M = 0.0254;
    private static final double POUND_KG = 0.45359237;
    /** The printed limits of diameter and circumference agree to a millionth. */
    private static final double ROUNDING = 1e-6;

    private final double least;
    private final double most;
    private final String words;
    private final String source;

    BallLimit(double least, double most, String words, String source) {
        this.least = least;
        this.most = most;
        this.words = words;
        this.source = source;
    }

    /**
     * Whether a value keeps the limit.
     *
     * @param value in the unit above
     * @return whether it lies within; false for NaN
     */
    public boolean allows(double value) {
        return value >= least * (1 - ROUNDING) && value <= most * (1 + ROUNDING);
    }

    /**
     * Largest value allowed.
     *
     * @return in the unit above
     */
    public double most() {
        return most;
    }

    /**
     * The limit as the trade writes it.
     *
     * @return in words
     */
    public String words() {
        return words;
    }

    /**
     * Who set the limit.
     *
     * @return publisher and date
     */
    public String source() {
        return source;
    }
}
