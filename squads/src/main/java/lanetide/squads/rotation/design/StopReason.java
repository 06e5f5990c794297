package lanetide.squads.rotation.design;

/** Why a search for a rotation ended. */
public enum StopReason {
    /** Nothing can be better under the objective. */
    PERFECT("nothing better exists under this objective"),
    /** A whole round of tries has found nothing better. */
    NO_IMPROVEMENT("a whole round of tries found nothing better; that is no proof that there is none"),
    /** All tries are used. */
    TRIES_USED("all tries are used; more of them might find something better"),
    /** There is nothing to exchange: one group, or one game. */
    NOTHING_TO_CHANGE("there is nothing to exchange");

    private final String words;

    StopReason(String words) {
        this.words = words;
    }

    /**
     * The reason for a director.
     *
     * @return words that follow "The search stopped because"
     */
    public String words() {
        return words;
    }
}
