package lanetide.squads.model;

/** Who goes first of those who have the same qualifying total (common practice, no source). */
public enum TieRule {
    /** Nobody: a roll-off or the lot decides, in which all of them have the same chance. */
    LOT("lot"),
    /** Who has the higher last game; then the one before it, and so on; then the lot. */
    LAST_GAME("last-game"),
    /** Who has the higher best game; then the second best, and so on; then the lot. */
    HIGH_GAME("high-game"),
    /** Nobody: all who have the total of the last place go on, so that it may be more than there are places. */
    ALL("all");

    private final String id;

    TieRule(String id) {
        this.id = id;
    }

    /**
     * The name by which scenarios choose it.
     *
     * @return its name
     */
    public String id() {
        return id;
    }
}
