package lanetide.squads.model;

import lanetide.oilflow.Require;
import lanetide.oilflow.ball.ReleaseSpread;

/**
 * How good a bowler is: how far shots scatter and how well he reads a lane.
 *
 * @param id name by which scenarios choose it
 * @param spread scatter of the release
 * @param adaptation reaction to what he saw
 * @param source where the values come from, or {@code assumption}
 */
public record Level(String id, ReleaseSpread spread, Adaptation adaptation, String source) {
    /**
     * Checks the texts.
     *
     * @throws IllegalArgumentException if a text is blank
     */
    public Level {
        Require.named(id, "level");
        Require.named(source, "source of level " + id);
    }
}
