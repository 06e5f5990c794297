package lanetide.squads.model;

/** What bowlers go by when they choose their lines. The others are there to compare the first one with. */
public enum Knowledge {
    /** What his own balls did, what the balls of others on his pair did, and what he is told of the pair. */
    SEEN_AND_TOLD("seen-and-told"),
    /** What his own balls did alone: where each met the pins, as well as he sees it. */
    OWN_BALLS("own-balls"),
    /** The oil on the lane: the best line within reach, worked out from a film that no bowler can see. */
    EVERYTHING("everything"),
    /** Nothing: everybody stays on the line he brought. */
    NOTHING("nothing");

    private final String id;

    Knowledge(String id) {
        this.id = id;
    }

    /**
     * The name by which a scenario chooses it.
     *
     * @return the name
     */
    public String id() {
        return id;
    }
}
