package lanetide.squads.model;

/** What is done to the lanes before a squad. */
public enum Conditioning {
    /** Nothing: the squad plays on what the last one left. */
    NONE,
    /** Clean the lane, then lay the pattern. */
    STRIP_AND_OIL,
    /** Lay the pattern over what is left. */
    OIL_OVER
}
