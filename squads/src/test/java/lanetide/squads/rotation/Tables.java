package lanetide.squads.rotation;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lanetide.squads.rotation.design.Explicit;

/** Rotations as the tests write and read them. */
public final class Tables {

    private Tables() {}

    /** The rotation of a square written as in the literature: one word a pair, one letter a game, groups from 1. */
    public static Rotation ofRows(List<String> rows) {
        int size = rows.size();
        Integer[][] pairs = new Integer[size][size];
        for (int pair = 0; pair < size; pair++) {
            for (int game = 0; game < size; game++) {
                pairs[game][Character.digit(rows.get(pair).charAt(game), 10) - 1] = pair;
            }
        }
        return ofGames(
                size,
                IntStream.range(0, size).mapToObj(game -> List.of(pairs[game])).toList());
    }

    public static Rotation ofGames(int pairs, List<List<Integer>> pairByGameAndGroup) {
        return new Explicit(pairByGameAndGroup)
                .plan(pairByGameAndGroup.get(0).size(), pairs, pairByGameAndGroup.size());
    }

    /** Any table at all, most of them full of collisions. */
    public static Rotation random(SplittableRandom random) {
        int pairs = 1 + random.nextInt(9);
        int groups = 1 + random.nextInt(pairs);
        int games = 1 + random.nextInt(9);
        return ofGames(
                pairs,
                IntStream.range(0, games)
                        .mapToObj(game -> random.ints(groups, 0, pairs).boxed().toList())
                        .toList());
    }

    /** The rows of the square: who bowls on each pair, game by game, groups from 1 and a dot where nobody bowls. */
    public static List<String> rows(Rotation rotation) {
        return IntStream.range(0, rotation.pairs())
                .mapToObj(pair -> row(rotation, pair))
                .toList();
    }

    private static String row(Rotation rotation, int pair) {
        StringBuilder row = new StringBuilder();
        for (int game = 0; game < rotation.games(); game++) {
            rotation.groupOn(game, pair).ifPresentOrElse(group -> row.append(group + 1), () -> row.append('.'));
        }
        return row.toString();
    }
}
