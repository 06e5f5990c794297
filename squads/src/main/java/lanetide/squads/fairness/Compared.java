package lanetide.squads.fairness;

/** What two events are compared by. */
public enum Compared {
    /** Mean score of all games (pins). */
    MEAN_SCORE,
    /** Mean score of a squad's games (pins). */
    SQUAD_SCORE,
    /** Mean score of the best squad less that of the worst (pins). */
    SQUAD_GAP,
    /** Standard deviation of the bowlers' means (pins). */
    SPREAD,
    /** When a squad is done (min from midnight before the first day). */
    SQUAD_END,
    /** Oil laid by machines (mL). */
    OIL_LAID,
    /** Oil left on a lane at the end (mL). */
    OIL_LEFT,
    /** Oil left at the end where heads are most worn (units). */
    HEAD_OIL,
    /** Oil past the pattern's end on a lane at the end (mL). */
    CARRYDOWN
}
