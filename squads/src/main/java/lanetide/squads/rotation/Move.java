package lanetide.squads.rotation;

/**
 * One group going from one game to the next: an arc of the rotation graph.
 *
 * @param group group, counted from zero
 * @param from where it has bowled
 * @param to where it bowls next
 */
public record Move(int group, Visit from, Visit to) {

    /**
     * How far the group carries its equipment along the row of pairs.
     *
     * @return 0 if it stays, 1 to the next pair, and so on
     */
    public int distancePairs() {
        return Math.abs(to.pair() - from.pair());
    }
}
