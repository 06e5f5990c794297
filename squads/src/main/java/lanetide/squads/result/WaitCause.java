package lanetide.squads.result;

/** Why a lane on which somebody could bowl stood still. */
public enum WaitCause {
    /** A bowler was ready and let a neighbour go first. */
    NEIGHBOUR,
    /** The bowler whose turn it was still bowled on the other lane of his pair. */
    PARTNER,
    /** A group stood at its pair, and the group before it had not left. */
    PREVIOUS_GROUP,
    /** A lane was out of order. */
    FAULT,
    /** The squad before was still there at the planned start. */
    PREVIOUS_SQUAD,
    /** The lane machines were not done at the planned start, for other reasons than the squad before. */
    MACHINES
}
