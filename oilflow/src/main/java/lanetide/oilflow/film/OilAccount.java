package lanetide.oilflow.film;

/**
 * Where the oil is. What was applied must equal what is on lanes, on balls, absorbed, wiped and stripped.
 *
 * @param appliedMl laid by machines (mL)
 * @param onLanesMl on lanes now (mL)
 * @param onBallsMl on balls now (mL)
 * @param absorbedMl taken in by covers (mL)
 * @param wipedMl wiped off balls (mL)
 * @param strippedMl cleaned off lanes (mL)
 */
public record OilAccount(
        double appliedMl, double onLanesMl, double onBallsMl, double absorbedMl, double wipedMl, double strippedMl) {
    /** An account in which nothing has happened yet. */
    public static final OilAccount EMPTY = new OilAccount(0, 0, 0, 0, 0, 0);

    /**
     * Adds another account, such as another lane's or another ball's.
     *
     * @param other what to add
     * @return the sum, entry by entry
     */
    public OilAccount plus(OilAccount other) {
        return new OilAccount(
                appliedMl + other.appliedMl,
                onLanesMl + other.onLanesMl,
                onBallsMl + other.onBallsMl,
                absorbedMl + other.absorbedMl,
                wipedMl + other.wipedMl,
                strippedMl + other.strippedMl);
    }

    /**
     * How far the account is from closing.
     *
     * @return (found - applied) / applied in absolute value; 0 if nothing was applied and nothing found
     */
    public double relativeError() {
        double found = onLanesMl + onBallsMl + absorbedMl + wipedMl + strippedMl;
        return found == appliedMl ? 0 : Math.abs(found - appliedMl) / appliedMl;
    }
}
