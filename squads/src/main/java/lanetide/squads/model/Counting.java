package lanetide.squads.model;

/** Which games count for a person who is entered in several squads. */
public enum Counting {
    /** Those of the squad in which he has the highest total; of several such, the one that stands better in a tie. */
    BEST,
    /** Those of all his squads. */
    SUM
}
