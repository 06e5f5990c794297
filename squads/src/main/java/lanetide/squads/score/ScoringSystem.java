package lanetide.squads.score;

import java.util.function.Supplier;

/** The ways a game can be scored. */
@SuppressWarnings("ImmutableEnumChecker") // constructors have no state
public enum ScoringSystem {
    /** As the rule books have it: marks count the balls that follow. */
    TRADITIONAL("traditional", TenpinScore::new),
    /** Every frame counts by itself. */
    CURRENT_FRAME("current-frame", CurrentFrameScore::new);

    private final String id;
    private final Supplier<ScoreCard> card;

    ScoringSystem(String id, Supplier<ScoreCard> card) {
        this.id = id;
        this.card = card;
    }

    /**
     * The name by which a scenario chooses it.
     *
     * @return the name
     */
    public String id() {
        return id;
    }

    /**
     * Takes a new card.
     *
     * @return a card before the first ball
     */
    public ScoreCard newCard() {
        return card.get();
    }
}
