package lanetide.squads.model;

import lanetide.squads.rotation.Rotation;

/**
 * What is planned for a squad on the lanes.
 *
 * @param rotation which group plays which pair in which game
 * @param patterns what is laid if lanes are oiled before it
 */
public record SquadPlan(Rotation rotation, LanePatterns patterns) {
    /**
     * How many games every group plays.
     *
     * @return games, at least 1
     */
    public int games() {
        return rotation.games();
    }

    /**
     * The same on the same oil by another rotation.
     *
     * @param other which group plays which pair in which game
     * @return the plan
     */
    public SquadPlan withRotation(Rotation other) {
        return new SquadPlan(other, patterns);
    }
}
