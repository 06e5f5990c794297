package lanetide.squads.qualifying;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A person in qualifying.
 *
 * @param blocks his games (pins), with handicap if that counts, in the order of play, for each squad he is entered in;
 *     none if he has not bowled
 */
public record Entrant(List<List<Integer>> blocks) {
    /** Copies the lists. */
    public Entrant {
        blocks = blocks.stream().map(List::copyOf).toList();
    }

    /**
     * Somebody who is entered once.
     *
     * @param games his games in the order of play (pins)
     * @return the person
     */
    public static Entrant of(int... games) {
        return new Entrant(List.of(IntStream.of(games).boxed().toList()));
    }

    /**
     * The same person if he were entered once.
     *
     * @param block which of his squads, from 0
     * @return him with these games alone
     */
    public Entrant only(int block) {
        return new Entrant(List.of(blocks.get(block)));
    }
}
