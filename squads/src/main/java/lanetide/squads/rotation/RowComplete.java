package lanetide.squads.rotation;

import java.util.OptionalInt;

/**
 * Everybody moves together, but by another distance after every game (1 left, 2 right, 3 left, ...). With a group on
 * every pair and as many games as pairs, each group bowls once on every pair and follows every other group exactly once.
 *
 * <p>Read with pairs as rows and games as columns, the groups form a row-complete Latin square. Source: E. J. Williams,
 * "Experimental designs balanced for the estimation of residual effects of treatments", Australian Journal of
 * Scientific Research A 2 (1949), 149-168. The construction is for an even number of pairs. Fewer games keep every
 * following different. Fewer groups leave gaps; as the oil waits on an empty pair for the next group, some groups then
 * follow the same group more than once.
 */
public record RowComplete() implements RotationDesign {

    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        requireEven(pairs);
        if (games > pairs) {
            throw new ImpossibleRotationException(
                    "number of games",
                    games,
                    "at most the number of pairs (%d) in a row-complete rotation".formatted(pairs),
                    "Add lane pairs, or split the games into blocks with a rotation each.");
        }
        return Rotation.tabulate(
                groups, pairs, games, (game, group) -> Math.floorMod(group - leaderOnFirstPair(game), pairs));
    }

    @Override
    public String describe() {
        return "Everybody moves together, 1 pair left, then 2 right, 3 left and so on; with a group on every pair nobody"
                + " follows the same group twice.";
    }

    @Override
    public OptionalInt maxGamesWithoutRepeat(int pairs) {
        PlanSize.requirePairs(pairs);
        requireEven(pairs);
        return OptionalInt.of(pairs);
    }

    /** The zig-zag 0, 1, -1, 2, -2, ...: the groups that bowl on the first pair, game by game. */
    private static int leaderOnFirstPair(int game) {
        return game % 2 == 1 ? (game + 1) / 2 : -game / 2;
    }

    private static void requireEven(int pairs) {
        if (pairs % 2 != 0) {
            throw new ImpossibleRotationException(
                    "number of pairs",
                    pairs,
                    "even in a row-complete rotation",
                    "Add a lane pair or leave one out; a pair may be without a group.");
        }
    }
}
