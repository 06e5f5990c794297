package lanetide.squads.rotation.design;

import java.util.IntSummaryStatistics;
import java.util.stream.IntStream;
import lanetide.squads.rotation.CarryOver;
import lanetide.squads.rotation.Move;
import lanetide.squads.rotation.Rotation;

/**
 * What a rotation is to be good at, as one figure to be made small: the sum of four parts, each times its weight.
 *
 * <ul>
 *   <li>repeats: games a group bowls on a pair it has bowled on before, over all groups;
 *   <li>carry-over: how far the carry-over index exceeds its minimum, per group;
 *   <li>wear: games since oiling that the groups find on their pairs: largest less smallest mean of a group;
 *   <li>walking: mean distance of a move in pairs.
 * </ul>
 *
 * @param repeat cost of a repeated pair, at least 0
 * @param carryOver cost of one of the index a group, at least 0
 * @param wear cost of one game since oiling, at least 0
 * @param walk cost of one pair a move, at least 0
 */
public record SearchObjective(double repeat, double carryOver, double wear, double walk) {

    /** The default weights, an assumption: coming back is worst, then uneven oil, and walking breaks ties. */
    public static final SearchObjective DEFAULT = new SearchObjective(10, 1, 1, 0.25);

    /**
     * Checks the weights.
     *
     * @throws IllegalArgumentException if a weight is not {@code >= 0} or not finite
     */
    public SearchObjective {
        for (double weight : new double[] {repeat, carryOver, wear, walk}) {
            if (!(weight >= 0) || Double.isInfinite(weight)) {
                throw new IllegalArgumentException("a weight is " + weight + ", but must be finite and at least 0");
            }
        }
    }

    /**
     * The figure of a rotation.
     *
     * @param rotation a rotation without collisions
     * @return at least 0; smaller is better
     */
    public double cost(Rotation rotation) {
        CarryOver carryOver = CarryOver.of(rotation);
        return cost(
                repeats(rotation),
                carryOver.index() - carryOver.minimum(),
                wearSpread(rotation),
                rotation.graph().edgeSet().stream()
                        .mapToInt(Move::distancePairs)
                        .sum(),
                rotation.groups(),
                rotation.games());
    }

    /** The figure from its counts. */
    double cost(int repeats, int excess, int wearSpread, int walkedPairs, int groups, int games) {
        double moves = Math.max(1, (double) groups * (games - 1));
        return repeat * repeats + carryOver * excess / groups + wear * wearSpread / games + walk * walkedPairs / moves;
    }

    private static int repeats(Rotation rotation) {
        return IntStream.range(0, rotation.groups())
                .map(group -> rotation.games()
                        - (int) IntStream.range(0, rotation.games())
                                .map(game -> rotation.pairOf(game, group))
                                .distinct()
                                .count())
                .sum();
    }

    /** Games since oiling found by a group in all its games together: the most less the fewest. */
    private static int wearSpread(Rotation rotation) {
        int[] found = new int[rotation.groups()];
        int[] age = new int[rotation.pairs()];
        for (int game = 0; game < rotation.games(); game++) {
            for (int group = 0; group < rotation.groups(); group++) {
                found[group] += age[rotation.pairOf(game, group)]++;
            }
        }
        IntSummaryStatistics range = IntStream.of(found).summaryStatistics();
        return range.getMax() - range.getMin();
    }
}
