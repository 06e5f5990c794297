package lanetide.squads.qualifying;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import lanetide.squads.model.Counting;
import lanetide.squads.model.Cut;
import lanetide.squads.model.TieRule;

/**
 * What counts of one person.
 *
 * @param total pins
 * @param tieGames games that are looked at one after another where totals are equal (pins)
 */
record Standing(int total, List<Integer> tieGames) implements Comparable<Standing> {
    static Standing of(Entrant person, Cut cut) {
        if (cut.counting() == Counting.SUM) {
            return of(person.blocks().stream().flatMap(List::stream).toList(), cut.ties());
        }
        return person.blocks().stream()
                .map(games -> of(games, cut.ties()))
                .min(Comparator.naturalOrder())
                .orElse(of(List.of(), cut.ties()));
    }

    private static Standing of(List<Integer> games, TieRule ties) {
        int total = games.stream().mapToInt(Integer::intValue).sum();
        List<Integer> inTurn = new ArrayList<>(games);
        switch (ties) {
            case LOT, ALL -> inTurn.clear();
            case LAST_GAME -> Collections.reverse(inTurn);
            case HIGH_GAME -> inTurn.sort(Comparator.reverseOrder());
        }
        return new Standing(total, inTurn);
    }

    /** Who stands better comes first; who has bowled fewer games stands behind where the others are equal. */
    @Override
    public int compareTo(Standing other) {
        int by = Integer.compare(other.total, total);
        for (int i = 0; by == 0 && i < Math.min(tieGames.size(), other.tieGames.size()); i++) {
            by = Integer.compare(other.tieGames.get(i), tieGames.get(i));
        }
        return by == 0 ? Integer.compare(other.tieGames.size(), tieGames.size()) : by;
    }
}
