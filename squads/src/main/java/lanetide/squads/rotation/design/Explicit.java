package lanetide.squads.rotation.design;

import java.util.List;
import java.util.Locale;
import lanetide.squads.rotation.ImpossibleRotationException;
import lanetide.squads.rotation.PlanSize;
import lanetide.squads.rotation.Rotation;
import lanetide.squads.rotation.RotationReport;

/**
 * A rotation written out by hand. It may send two groups to one pair; {@link RotationReport} says so.
 *
 * @param pairByGameAndGroup one row a game, in each row the pair of every group, pairs counted from zero
 */
public record Explicit(List<List<Integer>> pairByGameAndGroup) implements RotationDesign {

    /**
     * A table, copied.
     *
     * @throws ImpossibleRotationException if the table has no row or its rows differ in length
     * @throws NullPointerException if the table, a row or an entry is null
     */
    public Explicit {
        pairByGameAndGroup = pairByGameAndGroup.stream().map(List::copyOf).toList();
        if (pairByGameAndGroup.isEmpty()) {
            throw new ImpossibleRotationException(
                    "number of games in the table", 0, "at least 1", "Write one row for every game.");
        }
        for (int game = 1; game < pairByGameAndGroup.size(); game++) {
            requireWidth(
                    pairByGameAndGroup.get(game),
                    game,
                    pairByGameAndGroup.get(0).size(),
                    "as many as in game 1 (%d)");
        }
    }

    /**
     * Takes the first games of the table.
     *
     * @throws ImpossibleRotationException if {@code groups < 1}, {@code pairs < 1}, {@code games < 1}, {@code groups >
     *     pairs}, {@code games} exceeds the rows, {@code groups} differs from the entries of a row, or an entry is
     *     {@code < 0} or {@code >= pairs}
     */
    @Override
    public Rotation plan(int groups, int pairs, int games) {
        PlanSize.requirePlayable(groups, pairs, games);
        if (games > pairByGameAndGroup.size()) {
            throw new ImpossibleRotationException(
                    "number of games",
                    games,
                    "at most the games written out (" + pairByGameAndGroup.size() + ")",
                    "Write a row for every game.");
        }
        requireWidth(pairByGameAndGroup.get(0), 0, groups, "the number of groups (%d)");
        requirePairsExist(pairs);
        return Rotation.tabulate(
                groups,
                pairs,
                games,
                (game, group) -> pairByGameAndGroup.get(game).get(group));
    }

    private void requirePairsExist(int pairs) {
        for (int game = 0; game < pairByGameAndGroup.size(); game++) {
            List<Integer> row = pairByGameAndGroup.get(game);
            for (int group = 0; group < row.size(); group++) {
                requirePairExists(row.get(group), game, group, pairs);
            }
        }
    }

    private static void requirePairExists(int pair, int game, int group, int pairs) {
        if (pair < 0 || pair >= pairs) {
            throw new ImpossibleRotationException(
                    "pair of group " + (group + 1) + " in game " + (game + 1),
                    pair + 1,
                    "1 to " + pairs + ", a pair of the centre",
                    "Check this entry, or list the missing pair.");
        }
    }

    private static void requireWidth(List<Integer> row, int game, int width, String limit) {
        if (row.size() != width) {
            throw new ImpossibleRotationException(
                    "number of groups written out for game " + (game + 1),
                    row.size(),
                    String.format(Locale.ROOT, limit, width),
                    "Write one pair for every group in every game.");
        }
    }
}
