package lanetide.oilflow.film;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.BallSpec;
import lanetide.oilflow.ball.Coverstock;

/**
 * The oil on one ball between shots. It is taken in by the cover as time goes by and wiped off by the bowler; what is
 * left lies on the band of strips that the track has run over. Mutable, one owner.
 */
public final class BallOil {
    /**
     * Film that a towel leaves on a ball, as a share of the cover's roughness: what lies in the valleys is held fast,
     * as ink in paper (Walker and Fetsko, A concept of ink transfer in printing, TAGA, 1955). The share is fitted: with
     * it urethane carries a published multiple of what reactive balls carry past the end of a pattern.
     */
    public static final double DEFAULT_TOWEL_SHARE = 0.02255;

    /** The share for a ball that nobody wipes. */
    public static final double NO_TOWEL = Double.POSITIVE_INFINITY;

    private final Coverstock cover;
    private final double mostAfterTowelMl;
    private double onBallMl;
    private double absorbedMl;
    private double wipedMl;

    /**
     * What a towel leaves on a ball that has been on oil: what a ball in play carries to every shot but its first.
     *
     * @param ball the ball
     * @param towelShare film that it leaves at most, as a share of the cover's roughness, at least 0
     * @return millilitres
     */
    public static double afterTowelMl(BallSpec ball, double towelShare) {
        // A micrometre on a square metre is a millilitre.
        return towelShare * ball.cover().roughnessUm() * ball.tracksM2();
    }

    /**
     * A clean ball.
     *
     * @param ball the ball
     * @param towelShare film that the towel leaves at most, as a share of the cover's roughness, at least 0
     * @throws IllegalArgumentException if not {@code towelShare >= 0}
     */
    public BallOil(BallSpec ball, double towelShare) {
        if (!(towelShare >= 0)) {
            throw new IllegalArgumentException("film left by the towel is " + towelShare + "; it must be at least 0");
        }
        this.cover = ball.cover();
        this.mostAfterTowelMl = afterTowelMl(ball, towelShare);
    }

    /**
     * Lets time pass, then wipes: what happens to a ball between two shots.
     *
     * @param sinceLastS time since the last shot (s), at least 0
     * @throws IllegalArgumentException if not {@code sinceLastS >= 0}
     */
    public void rest(double sinceLastS) {
        Require.inRange(sinceLastS, "time between shots (s)", 0, Double.MAX_VALUE);
        double soaked = -onBallMl * StrictMath.expm1(-sinceLastS / cover.absorptionS());
        absorbedMl += soaked;
        double left = onBallMl - soaked;
        double wiped = Math.max(0, left - mostAfterTowelMl);
        wipedMl += wiped;
        onBallMl = left - wiped;
    }

    /**
     * Books what a shot brought.
     *
     * @param gainMl oil lifted less oil laid down (mL); the ball cannot lay more than it has
     */
    public void add(double gainMl) {
        onBallMl += gainMl;
    }

    /**
     * Oil on the ball now.
     *
     * @return millilitres
     */
    public double onBallMl() {
        return onBallMl;
    }

    /**
     * This ball's part of the oil account.
     *
     * @return an account with the ball's entries filled
     */
    public OilAccount account() {
        return new OilAccount(0, 0, onBallMl, absorbedMl, wipedMl, 0);
    }
}
