package lanetide.squads.model;

/**
 * Two adjoining lanes that one group plays in turn.
 *
 * @param left lane number on the left, at least 1
 * @param right lane number on the right, {@code left + 1}
 */
public record LanePair(int left, int right) {
    /**
     * Checks that the lanes adjoin.
     *
     * @throws IllegalArgumentException if {@code left < 1} or {@code right != left + 1}
     */
    public LanePair {
        if (left < 1 || right != left + 1) {
            throw new IllegalArgumentException(
                    "pair " + left + "-" + right + " is not two adjoining lanes, such as 7-8");
        }
    }

    /**
     * Whether a lane is one of the two.
     *
     * @param lane lane number
     * @return true if it is the left or the right one
     */
    public boolean holds(int lane) {
        return lane == left || lane == right;
    }

    /**
     * The pair's name as the trade writes it.
     *
     * @return for example {@code 7-8}
     */
    public String id() {
        return left + "-" + right;
    }
}
