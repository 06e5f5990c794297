package lanetide.squads.recondition;

/** Why an interval is the best. */
public enum Basis {
    /** Least cost of oiling all lanes in one go and of the scores that have changed until then. */
    COST,
    /** The same with pairs oiled one by one. */
    COST_LANE_BY_LANE,
    /** The scores have changed by no more than the margin. */
    THRESHOLD,
    /** Age replacement: least cost of oiling in time, and of oiling when a lane has failed. */
    AGE,
    /** Looked at after every game, and oiled when windows have moved by a control limit; the games are their mean. */
    CONDITION
}
