package lanetide.squads.recondition;

import java.util.OptionalDouble;

/**
 * An interval of oiling.
 *
 * @param basis why it is the best
 * @param games games a pair sees from one oiling to the next
 * @param low lower end of the 90 % interval of that (bootstrap over the playings)
 * @param high upper end
 * @param beyond whether the best lies at the oldest oil looked at, so that the true one may be longer
 * @param costPerGame cost of a pair's game in the user's currency, where the basis knows one
 * @param controlBoards control limit (boards), for {@link Basis#CONDITION} alone
 */
public record Interval(
        Basis basis,
        double games,
        double low,
        double high,
        boolean beyond,
        OptionalDouble costPerGame,
        OptionalDouble controlBoards) {}
