package lanetide.squads.model;

/** What a director does with a group whose lane is out of order. */
public enum FaultResponse {
    /** The group waits at its pair until the lane is in order again. */
    WAIT,
    /** The group goes on with its game on a spare pair, if one is free; else it waits. */
    SPARE,
    /**
     * The group is split over other groups that bowl, and each goes on with his game there; if none bowls, it waits.
     */
    SPLIT
}
