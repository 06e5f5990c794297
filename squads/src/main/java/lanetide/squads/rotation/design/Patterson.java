package lanetide.squads.rotation.design;

import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/**
 * Balanced as far as it goes when there are fewer games than pairs: everybody moves together, by another distance after
 * every game, so that with a group on every pair no group follows the same group twice. Where a cyclic difference set
 * of that size is found, any two groups also bowl on equally many common pairs.
 *
 * <p>Source of the type: H. D. Patterson, "The construction of balanced designs for experiments involving sequences of
 * treatments", Journal of the Royal Statistical Society B 13 (1951), 256-271, which turns the blocks of a balanced
 * incomplete block design into sequences. Here the blocks are the translates of one set of pairs, as a rotation must
 * send every group somewhere in every game. The order in which an odd number of pairs is visited is our own; that no
 * distance comes twice in it is checked for every size a centre can have.
 */
public record Patterson() implements RotationDesign {

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        requireFewer(pairs, games);
        return CyclicPlan.of(groups, pairs, leaders(pairs, games));
    }

    private static int[] leaders(int pairs, int games) {
        return DifferenceSets.find(pairs, games)
                .orElseGet(() -> pairs % 2 == 0 ? CyclicPlan.zigZag(pairs, games) : oddZigZag(pairs, games));
    }

    /** A zig-zag that leaves out one distance half-way: from there on it uses the distances not yet used. */
    static int[] oddZigZag(int pairs, int games) {
        int[] leaders = new int[games];
        for (int move = 1; move < games; move++) {
            int distance = move < (pairs + 1) / 2 ? move : move + 1;
            leaders[move] = Math.floorMod(leaders[move - 1] + (move % 2 == 1 ? distance : -distance), pairs);
        }
        return leaders;
    }

    private static int mostGames(int pairs) {
        return pairs % 2 == 0 || pairs == 1 ? pairs : pairs - 1;
    }

    private static void requireFewer(int pairs, int games) {
        if (games > mostGames(pairs)) {
            throw new ImpossibleRotationException(
                    "number of games",
                    games,
                    "at most " + mostGames(pairs) + " with " + pairs
                            + " pairs, so that nobody follows the same group twice",
                    "Add lane pairs, or split the games into blocks with a rotation each.");
        }
    }
}
