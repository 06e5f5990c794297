package lanetide.squads.rotation;

/**
 * The bowlers of a group by delivery side.
 *
 * @param right right-handed bowlers, at least 0
 * @param left left-handed bowlers, at least 0
 */
public record Hands(int right, int left) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a number is negative or both are 0
     */
    public Hands {
        if (right < 0 || left < 0 || right + left < 1) {
            throw new IllegalArgumentException("a group has " + right + " right-handed and " + left
                    + " left-handed bowlers, but must have at least 1 bowler and no negative number");
        }
    }

    /**
     * All bowlers of the group.
     *
     * @return at least 1
     */
    public int bowlers() {
        return right + left;
    }
}
