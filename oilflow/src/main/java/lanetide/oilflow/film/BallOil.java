package lanetide.oilflow.film;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.Coverstock;

/**
 * The oil on one ball between shots. It is taken in by the cover as time goes by and wiped off by the bowler; what is
 * left lies on the band of strips that the track has run over. Mutable, one owner.
 */
public final class BallOil {
    /**
     * Share of the oil on a ball that a bowler wipes off before a shot. An assumption: a dry towel is allowed, a
     * cleaner is not, and a bowler wipes until the ball plays like a clean one. With 0.7, ten shots would move a power
     * player's hit by seven boards.
     */
    public static final double DEFAULT_WIPED_SHARE = 0.98;

    private final Coverstock cover;
    private final double wipedShare;
    private double onBallMl;
    private double absorbedMl;
    private double wipedMl;

    /**
     * A clean ball.
     *
     * @param cover its shell
     * @param wipedShare share of the oil that is wiped off before a shot, 0 to 1
     * @throws IllegalArgumentException if {@code wipedShare} lies outside 0 to 1
     */
    public BallOil(Coverstock cover, double wipedShare) {
        this.cover = cover;
        this.wipedShare = Require.inRange(wipedShare, "wiped share", 0, 1);
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
        double wiped = (onBallMl - soaked) * wipedShare;
        wipedMl += wiped;
        onBallMl = onBallMl - soaked - wiped;
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
