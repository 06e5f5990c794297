package lanetide.squads.model;

import lanetide.oilflow.Require;

/**
 * What a bowler reckons with besides his own balls: that lines go off, that the heads go first, what the balls of those
 * on his pair tell, and what those told who bowled there before. All values are assumptions; a scenario may set them.
 *
 * @param driftBoards how fast a line goes off as the oil changes (boards a game, standard deviation), 0 to 3
 * @param deeperBoards by how much he expects a game to move his line in, because the heads go first (boards a game), 0
 *     to 3
 * @param othersBoards how far another's line may need another move than his, of his hand and with revs like his
 *     (boards, standard deviation), 0 to {@link #NOT_AT_ALL_BOARDS}, from which on he does not look
 * @param toldBoards the same for what is told of the pair by those who bowled there before, 0 to
 *     {@link #NOT_AT_ALL_BOARDS}, from which on he does not listen
 */
public record Reckoning(double driftBoards, double deeperBoards, double othersBoards, double toldBoards) {
    /** So unsure that it teaches nothing (boards). */
    public static final double NOT_AT_ALL_BOARDS = 20;

    /**
     * Checks the ranges above.
     *
     * @throws IllegalArgumentException if a value lies outside its range
     */
    public Reckoning {
        Require.inRange(driftBoards, "expected drift (boards a game)", 0, 3);
        Require.inRange(deeperBoards, "expected move in (boards a game)", 0, 3);
        Require.inRange(othersBoards, "difference to others (boards)", 0, NOT_AT_ALL_BOARDS);
        Require.inRange(toldBoards, "difference to what is told (boards)", 0, NOT_AT_ALL_BOARDS);
    }

    /**
     * By his own balls alone.
     *
     * @param driftBoards as above
     * @return a bowler who neither looks nor listens, nor expects a line to go off one way rather than the other
     */
    public static Reckoning byOwnBalls(double driftBoards) {
        return new Reckoning(driftBoards, 0, NOT_AT_ALL_BOARDS, NOT_AT_ALL_BOARDS);
    }

    /** Whether he looks at others' balls. */
    public boolean looks() {
        return othersBoards < NOT_AT_ALL_BOARDS;
    }

    /** Whether he listens to those who bowled here before. */
    public boolean listens() {
        return toldBoards < NOT_AT_ALL_BOARDS;
    }
}
