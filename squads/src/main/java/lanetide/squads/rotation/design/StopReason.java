package lanetide.squads.rotation.design;

/** Why a search for a rotation ended. */
public enum StopReason {
    /** Nothing can be better under the objective. */
    PERFECT,
    /** A whole round of tries has found nothing better. */
    NO_IMPROVEMENT,
    /** All tries are used. */
    TRIES_USED,
    /** There is nothing to exchange: one group, or one game. */
    NOTHING_TO_CHANGE
}
