package lanetide.squads.measured;

import lanetide.oilflow.Require;

/**
 * When something was measured on a lane.
 *
 * @param squad name of a squad
 * @param afterGame after so many games of that squad on the lane's pair, at least 1; 0 stands for the lane as the squad
 *     found it
 */
public record When(String squad, int afterGame) {
    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the squad has no name or {@code afterGame < 0}
     */
    public When {
        Require.named(squad, "squad");
        if (afterGame < 0) {
            throw new IllegalArgumentException("after game " + afterGame + ", which must be at least 0");
        }
    }
}
