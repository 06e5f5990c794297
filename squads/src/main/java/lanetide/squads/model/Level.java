package lanetide.squads.model;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.ReleaseSpread;

/**
 * How good a bowler is: how far shots scatter and how well he reads a lane.
 *
 * @param id name by which scenarios choose it
 * @param spread scatter of the release
 * @param adaptation reaction to what he saw
 * @param formShare how much his scatter changes from game to game: standard deviation of its logarithm, 0 to 0.5.
 *     Within a game it stays, so that shots of a game are independent of each other
 * @param source where the values come from, or {@code assumption}
 */
public record Level(String id, ReleaseSpread spread, Adaptation adaptation, double formShare, String source) {
    /**
     * Checks the texts and the range above.
     *
     * @throws IllegalArgumentException if a text is blank or {@code formShare} lies outside its range
     */
    public Level {
        Require.named(id, "level");
        Require.inRange(formShare, "form of level " + id, 0, 0.5);
        Require.named(source, "source of level " + id);
    }
}
