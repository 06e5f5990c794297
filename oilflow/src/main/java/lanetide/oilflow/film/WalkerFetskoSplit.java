package lanetide.oilflow.film;

import lanetide.oilflow.Require;

/**
 * The split of ink transfer: a receiving surface is reached only in part by a thin film, holds some of it fast, and
 * shares the rest.
 *
 * <p>Of a film x the other surface takes up {@code y = (1 - e^-kx) (B + f (x - B))} with {@code B = b (1 - e^-x/b)}: k
 * is the coverage, b the film that the receiver can hold fast, f its share of the free film. Source: Walker and Fetsko,
 * A concept of ink transfer in printing, TAGA (1955); equation from memory. Here the receiver with pores is the ball.
 * With oil on both sides, x is all the oil T in the contact, the lane's share is {@code (1 - f) (T - B)}, and of the
 * move from the lane's film to that share the part {@code 1 - e^-kT} happens. On a dry ball that is the equation above;
 * a wet ball on a dry lane keeps what it holds fast and lays {@code (1 - e^-kT) (1 - f) (T - B)}. What the lane loses,
 * the ball gains, either way. A length of lane meets r times as much of the ball's surface, so b counts r times.
 *
 * <p>Not the usual law: the free split is a constant of the two stocks, measured with both surfaces at one speed, and
 * nobody has published k, b and f for balls. {@link ForwardRollSplit} has no constant to guess there and takes more
 * from the lane the faster a ball spins. This law shows what a cover with open pores would change. Limits: one pass of
 * less than a second, no soaking in between shots (that is the cover's absorption time); exponentials are dear, so
 * shots run slower by more than half.
 *
 * @param coveragePerUm coverage k (1/um), above 0 to 1000
 * @param immobilisedUm film that the ball's surface holds fast b (um), 0 to 20
 * @param freeSplit share of the free film that the ball takes f, 0 to 1
 */
public record WalkerFetskoSplit(double coveragePerUm, double immobilisedUm, double freeSplit) implements FilmSplit {
    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public WalkerFetskoSplit {
        Require.inRange(Require.positive(coveragePerUm, "coverage (1/um)"), "coverage (1/um)", 0, 1000);
        Require.inRange(immobilisedUm, "immobilised film (um)", 0, 20);
        Require.inRange(freeSplit, "free split", 0, 1);
    }

    /**
     * The law with values for a ball on a lane. No constants for such a pair are published, so these are assumptions:
     * nothing held fast, since soaking in is the cover's own; and the free split that forward-roll splitting has where
     * the ball's surface runs half as fast as the ball.
     *
     * @param coveragePerUm coverage k (1/um), as above
     * @return the law
     */
    public static WalkerFetskoSplit covering(double coveragePerUm) {
        return new WalkerFetskoSplit(coveragePerUm, 0, 1 - ForwardRollSplit.exactLaneShare(0.5));
    }

    @Override
    public double laneLeftUm(double laneUm, double broughtUm, double speedRatio) {
        double totalUm = laneUm + broughtUm;
        double laneShareUm = (1 - freeSplit) * (totalUm - heldUm(totalUm, immobilisedUm * speedRatio));
        double reached = -StrictMath.expm1(-coveragePerUm * totalUm);
        return Math.min(totalUm, laneUm + reached * (laneShareUm - laneUm));
    }

    private static double heldUm(double totalUm, double capacityUm) {
        return capacityUm > 0 ? Math.min(totalUm, -capacityUm * StrictMath.expm1(-totalUm / capacityUm)) : 0;
    }
}
