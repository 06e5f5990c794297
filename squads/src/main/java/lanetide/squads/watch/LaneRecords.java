package lanetide.squads.watch;

/** What is written down of the lanes of a playing, as each squad finds them and after each game. */
public enum LaneRecords {
    /** Nothing: the lanes of the result are empty. */
    NONE,
    /** The oil by place, without exit windows. */
    FILMS,
    /** The oil by place and the exit window of every style, which takes longer than the play itself. */
    WINDOWS
}
