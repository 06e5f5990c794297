package lanetide.squads.recondition;

/**
 * An interval of oiling.
 *
 * @param basis why it is the best
 * @param games games a pair sees from one oiling to the next
 * @param low lower end of the 90 % interval of that (bootstrap over the playings)
 * @param high upper end
 * @param beyond whether the best lies at the oldest oil looked at, so that the true one may be longer
 * @param costPerGame cost of a pair's game in the user's currency; NaN where the basis knows no cost
 * @param controlBoards control limit (boards); NaN for other bases than {@link Basis#CONDITION}
 */
public record Interval(
        Basis basis, double games, double low, double high, boolean beyond, double costPerGame, double controlBoards) {}
