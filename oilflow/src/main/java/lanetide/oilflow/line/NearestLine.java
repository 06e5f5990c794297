package lanetide.oilflow.line;

/**
 * The line whose average shot comes nearest to the pocket where none meets it.
 *
 * @param line the line
 * @param missBoards by how far it comes in beyond the pocket (boards); below 0 if it stays short of it
 * @param bothSides whether some of the lines looked at come in beyond and others short, with a jump between them
 */
public record NearestLine(Line line, double missBoards, boolean bothSides) {
    /** Why none meets the pocket. */
    public enum Reason {
        /** All stay short of it. */
        TOO_LITTLE_HOOK,
        /** All come in beyond it. */
        TOO_MUCH_HOOK,
        /** From one board to the next they jump across it. */
        NO_ROOM
    }

    /**
     * Why none meets the pocket.
     *
     * @return the reason
     */
    public Reason reason() {
        if (bothSides) {
            return Reason.NO_ROOM;
        }
        return missBoards < 0 ? Reason.TOO_LITTLE_HOOK : Reason.TOO_MUCH_HOOK;
    }
}
