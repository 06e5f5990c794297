package lanetide.squads.recondition;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * An interval of oiling.
 *
 * @param basis why it is the best
 * @param games games a pair sees from one oiling to the next
 * @param low lower end of the 90 % interval for what is true: of what is best under each set of values; with the usual
 *     values alone, that for luck
 * @param high upper end
 * @param luckLow lower end of the 90 % interval for luck and the choice of sets (bootstrap over the playings)
 * @param luckHigh upper end
 * @param flat from how many to how many games it costs about the same; empty where the basis knows no cost
 * @param beyond whether the best lies at the oldest oil looked at, so that the true one may be longer
 * @param costPerGame cost of a pair's game in the user's currency, where the basis knows one
 * @param controlBoards control limit (boards), for {@link Basis#CONDITION} alone
 */
public record Interval(
        Basis basis,
        double games,
        double low,
        double high,
        double luckLow,
        double luckHigh,
        Optional<Flat> flat,
        boolean beyond,
        OptionalDouble costPerGame,
        OptionalDouble controlBoards) {
    /** What is not shown to cost so much more than the least counts as the same (share of the least, assumption). */
    public static final double SAME_SHARE = 0.02;

    /**
     * Games that cost about the same: of oiling all lanes at once those that playings do not show to cost more than
     * {@link #SAME_SHARE} more, of other policies those that cost at most so much more on the mean.
     *
     * @param from fewest games
     * @param to most games
     * @param withinCost by how much a game costs more at most on the mean, in the user's currency
     */
    public record Flat(int from, int to, double withinCost) {}
}
