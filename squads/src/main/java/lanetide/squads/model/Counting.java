package lanetide.squads.model;

/** Which games count for a person who is entered in several squads. */
public enum Counting {
    /** Those of the squad in which he has the highest total; of several such, the one that stands better in a tie. */
    BEST("best"),
    /** Those of all his squads. */
    SUM("sum");

    private final String id;

    Counting(String id) {
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
