package lanetide.squads.model;

/** What is done to the lanes before a squad. */
public enum Conditioning {
    /** Nothing: the squad plays on what the last one left. */
    NONE,
    /** Clean the lane, then lay the pattern. */
    STRIP_AND_OIL,
    /** Lay the pattern over what is left. */
    OIL_OVER,
    /** Clean the lane past the end of the pattern that was laid last, and lay nothing. */
    CLEAN_ENDS;

    /**
     * Whether a pattern is laid.
     *
     * @return true if the oil begins a new age with it
     */
    public boolean laysOil() {
        return this == STRIP_AND_OIL || this == OIL_OVER;
    }

    /**
     * Whether lanes are cleaned, all of them or their ends.
     *
     * @return true if it takes cleaner
     */
    public boolean cleans() {
        return this == STRIP_AND_OIL || this == CLEAN_ENDS;
    }
}
