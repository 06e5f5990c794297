package lanetide.squads.rotation.design;

import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;

/**
 * Everybody moves together, but by another distance after every game (1 left, 2 right, 3 left, ...). With a group on
 * every pair each group bowls once on every pair and follows every other group equally often.
 *
 * <p>Read with pairs as rows and games as columns, the groups form a row-complete Latin square. Source: E. J. Williams,
 * "Experimental designs balanced for the estimation of residual effects of treatments", Australian Journal of
 * Scientific Research A 2 (1949), 149-168. For an even number of pairs one square is enough: as many games as pairs,
 * and each group follows each other once. For an odd number it takes the square and then its mirror image, the games in
 * reverse order: twice as many games as pairs, each pair visited twice, each group following each other twice. Between
 * the two halves everybody stays.
 *
 * <p>With an even number of pairs, fewer games keep every following different. Fewer groups leave gaps; as the oil
 * waits on an empty pair for the next group, some groups then follow the same group more than once.
 */
public record RowComplete() implements RotationDesign {

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        requireAtMost(mostGames(pairs), games, pairs);
        int[] zigZag = CyclicPlan.zigZag(pairs, Math.min(games, pairs));
        int[] leaders = new int[games];
        for (int game = 0; game < games; game++) {
            leaders[game] = zigZag[game < pairs ? game : 2 * pairs - 1 - game];
        }
        return CyclicPlan.of(groups, pairs, leaders);
    }

    private static int mostGames(int pairs) {
        return pairs % 2 == 0 ? pairs : 2 * pairs;
    }

    private static void requireAtMost(int most, int games, int pairs) {
        if (games > most) {
            throw new ImpossibleRotationException(
                    "number of games",
                    games,
                    "at most " + (pairs % 2 == 0 ? "the number of pairs" : "twice the number of pairs") + " (" + most
                            + ") in a row-complete rotation",
                    "Add lane pairs, or split the games into blocks with a rotation each.");
        }
    }
}
